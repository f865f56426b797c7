import { requireNumber } from '../errors/require-number.js';

/**
 * Attenuation of a second-order Butterworth high-pass, dB, positive.
 *
 * Equation: 10 lg(1 + (f_c / f)^4). Units: Hz. Source: filter theory (common practice).
 * Valid: for a filter that is stated as second order (12 dB per octave); 5.6 dB at 63 Hz for 80 Hz.
 * Errors: ArgumentError for a frequency that isn't above zero.
 */
export function highPassAttenuation(hz: number, cutoff: number): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('cutoff of the high-pass', cutoff, { above: 0, unit: 'Hz' });
  return 10 * Math.log10(1 + (cutoff / hz) ** 4);
}
