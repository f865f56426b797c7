import { requireNumber } from '../errors/require-number.js';

/**
 * Octave sound power of the air itself in a straight duct, dB re 1 pW.
 *
 * Equation: Lw = 7 + 50 lg U + 10 lg S - 2 - 26 lg(1.14 + 0.02 f/U).
 * Units: air speed U m/s, area S m2, octave frequency f Hz.
 * Source: VDI 2081-1 as D. A. Bies, C. H. Hansen and C. Q. Howard, Engineering Noise Control, 5th ed., 2017, equation
 * 8.251 (as transcribed). Valid: smooth straight duct. Errors: ArgumentError for a quantity that can't be.
 */
export function straightDuctFlowNoise(hz: number, speed: number, area: number): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('air speed', speed, { above: 0, unit: 'metres per second' });
  requireNumber('duct area', area, { above: 0, unit: 'square metres' });
  return 5 + 50 * Math.log10(speed) + 10 * Math.log10(area) - 26 * Math.log10(1.14 + (0.02 * hz) / speed);
}
