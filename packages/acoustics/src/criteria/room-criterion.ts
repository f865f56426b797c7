import { requireBands } from '../bands/require-bands.js';
import { ArgumentError } from '../errors/argument-error.js';
import { octavesByCount } from './octaves-by-count.js';

const lowest = 25;
const highest = 50;
const rumbleAbove = 5;
const hissAbove = 3;

/** A room criterion (RC) and the character of the noise. */
export type RoomCriterion = {
  /** Null when the mean at mid frequencies lies below RC 25 or above RC 50. */
  readonly value: number | null;
  /** N for neutral, R for rumble, H for hiss, RH for both; null without a value. */
  readonly tag: 'N' | 'R' | 'H' | 'RH' | null;
  /** `RC 35(R)`, `below RC 25` or `above RC 50`. */
  readonly text: string;
  /** Nominal Hz of the bands that the two lists follow. */
  readonly bands: readonly number[];
  /** The neutral curve, dB; null without a value. */
  readonly contour: readonly number[] | null;
  /** Level less neutral curve, dB; null without a value. */
  readonly excess: readonly number[] | null;
};

/**
 * A neutral curve of the room criterion, RC Mark II.
 *
 * Equation: L = RC - 5 dB per octave from 1 kHz on, up towards the low and down towards the high octaves; at 31.5 Hz not
 * below 55 dB; at 16 Hz as at 31.5 Hz.
 * Units: RC number in, octave band levels in dB out, 16 Hz to 8 kHz (10 bands).
 * Source: ANSI/ASA S12.2-2019 Table D.1 (as transcribed; the printed page was not opened).
 * Valid: RC 25 to RC 50.
 * Errors: ArgumentError outside RC 25 .. 50.
 */
export function roomCriterionCurve(rc: number): number[] {
  if (!(rc >= lowest && rc <= highest)) throw new ArgumentError('RC', rc, `a number from ${lowest} to ${highest}`);
  const lowEnd = Math.max(55, rc + 25);
  return [lowEnd, lowEnd, ...[20, 15, 10, 5, 0, -5, -10, -15].map((relative) => rc + relative)];
}

/**
 * Room criterion of a background noise, with the tag of its character.
 *
 * Rule: the number is the arithmetic mean of 500 Hz, 1 and 2 kHz, rounded to whole dB; the tag is R when a band up to
 * 500 Hz is more than 5 dB above the neutral curve of that number, H when a band from 1 kHz on is more than 3 dB above.
 * Units: octave band levels in dB: 7 bands from 63 Hz to 4 kHz, or 8, 9 or 10 bands up to 8 kHz from 63, 31.5 or 16 Hz.
 * Source: ANSI/ASA S12.2-2019 Annex D (curves and tags as transcribed); the mean of three bands is from memory.
 * Valid: RC 25 to RC 50. Tags of vibration and the quality assessment index are not offered. A rumble below the lowest band
 * given passes unseen.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function roomCriterion(octaveLevels: readonly number[]): RoomCriterion {
  requireBands('octave band level', octaveLevels, [7, 8, 9, 10], { silence: true });
  const bands = octavesByCount(octaveLevels.length);
  const mid = bands.indexOf(500);
  const rc = Math.floor((octaveLevels[mid]! + octaveLevels[mid + 1]! + octaveLevels[mid + 2]!) / 3 + 0.5 + 1e-9);
  if (rc < lowest || rc > highest) {
    const text = rc < lowest ? `below RC ${lowest}` : `above RC ${highest}`;
    return { value: null, tag: null, text, bands, contour: null, excess: null };
  }
  const first = octavesByCount(10).indexOf(bands[0]!);
  const contour = roomCriterionCurve(rc).slice(first, first + bands.length);
  const excess = octaveLevels.map((level, band) => level - contour[band]!);
  const rumble = excess.some((value, band) => bands[band]! <= 500 && value > rumbleAbove);
  const hiss = excess.some((value, band) => bands[band]! >= 1000 && value > hissAbove);
  const tag = rumble && hiss ? 'RH' : rumble ? 'R' : hiss ? 'H' : 'N';
  return { value: rc, tag, text: `RC ${rc}(${tag})`, bands, contour, excess };
}
