/**
 * Attenuation of a second-order Butterworth high-pass, dB, positive.
 *
 * Equation: 10 lg(1 + (f_c / f)^4). Units: Hz. Source: filter theory (common practice).
 * Valid: for a filter that is stated as second order (12 dB per octave); 5.6 dB at 63 Hz for 80 Hz.
 */
export function highPassAttenuation(hz: number, cutoff: number): number {
  return 10 * Math.log10(1 + (cutoff / hz) ** 4);
}
