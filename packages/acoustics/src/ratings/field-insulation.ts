import { requireBands } from '../bands/require-bands.js';
import { requireNumber } from '../errors/require-number.js';
import { asLevelDifference, type LevelDifference } from '../quantities/level-difference.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';

/** Reference reverberation time of dwellings, s, and reference absorption area, m2: ISO 16283-1. */
export const referenceTime = 0.5;
/** Reference absorption area, m2: ISO 16283-1. */
export const referenceAbsorptionArea = 10;

/**
 * Standardized level difference DnT.
 *
 * Equation: DnT = D + 10 lg(T / 0.5 s).
 * Units: D in dB; reverberation time of the receiving room by band in s; result dB.
 * Source: ISO 16283-1 (common practice; as transcribed).
 * Errors: ArgumentError for lists of different length, or a time not above zero.
 */
export function standardizedLevelDifference(
  levelDifference: LevelDifference,
  times: readonly number[],
): LevelDifference {
  requireInStep('reverberation time', times, levelDifference.length, 'seconds');
  return asLevelDifference(levelDifference.map((value, band) => value + 10 * Math.log10(times[band]! / referenceTime)));
}

/**
 * Normalized level difference Dn.
 *
 * Equation: Dn = D - 10 lg(A / 10 m2).
 * Units: D in dB; absorption area of the receiving room by band in m2; result dB.
 * Source: ISO 16283-1 and ISO 10140-2 (common practice, from memory).
 * Errors: ArgumentError for lists of different length, or an area not above zero.
 */
export function normalizedLevelDifference(levelDifference: LevelDifference, areas: readonly number[]): LevelDifference {
  requireInStep('absorption area', areas, levelDifference.length, 'square metres');
  return asLevelDifference(
    levelDifference.map((value, band) => value - 10 * Math.log10(areas[band]! / referenceAbsorptionArea)),
  );
}

/**
 * Apparent sound reduction index R'.
 *
 * Equation: R' = D + 10 lg(S / A).
 * Units: D in dB; area S of the common element in m2; absorption area A of the receiving room by band in m2; result dB.
 * Source: ISO 16283-1 (common practice; as transcribed).
 * Valid: for diffuse fields on both sides; sound that flanks the element is counted as if it had come through it.
 * Errors: ArgumentError for lists of different length, or an area not above zero.
 */
export function apparentTransmissionLoss(
  levelDifference: LevelDifference,
  elementArea: number,
  areas: readonly number[],
): TransmissionLoss {
  requireNumber('area of the element', elementArea, { above: 0, unit: 'square metres' });
  requireInStep('absorption area', areas, levelDifference.length, 'square metres');
  return asTransmissionLoss(levelDifference.map((value, band) => value + 10 * Math.log10(elementArea / areas[band]!)));
}

/**
 * Absorption area of a receiving room from its reverberation time, as field measurements do.
 *
 * Equation: A = 0.16 V / T.
 * Units: volume m3, time s, result m2.
 * Source: ISO 16283-1 (common practice; as transcribed). The constant is rounded there.
 * Errors: ArgumentError for a volume or a time not above zero.
 */
export function receivingAbsorptionArea(volume: number, time: number): number {
  requireNumber('volume', volume, { above: 0, unit: 'cubic metres' });
  requireNumber('reverberation time', time, { above: 0, unit: 'seconds' });
  return (0.16 * volume) / time;
}

function requireInStep(what: string, values: readonly number[], count: number, unit: string): void {
  requireBands(what, values, [count], {});
  values.forEach((value, index) => {
    requireNumber(`${what} in band ${index + 1} of ${count}`, value, { above: 0, unit });
  });
}
