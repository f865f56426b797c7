import { requireOneOf } from '../errors/require-one-of.js';

/** Polar patterns of microphones of first order. */
export type MicrophonePatternName = 'omni' | 'cardioid' | 'supercardioid' | 'hypercardioid' | 'figure-eight';

/** Sensitivity to a plane wave at the angle theta from the axis: `pressure` + `gradient` cos(theta); together 1. */
export type MicrophonePattern = { readonly pressure: number; readonly gradient: number };

const names = ['omni', 'cardioid', 'supercardioid', 'hypercardioid', 'figure-eight'] as const;

/** Share of the pressure at which a pattern takes in most from the front half against the back half. */
const supercardioidShare = (Math.sqrt(3) - 1) / 2;

/**
 * Coefficients of an ideal polar pattern.
 *
 * Equation: s(theta) = a + (1 - a) cos(theta); a = 1 omni, 1/2 cardioid, (sqrt(3) - 1)/2 supercardioid, 1/4
 * hypercardioid, 0 figure-eight. Units: none, sensitivity 1 on the axis.
 * Source: J. Eargle, The Microphone Book, 2nd ed., 2004, Table 6-1 (as transcribed) for all but the supercardioid, whose
 * definition is the largest ratio of front to back (M. A. Gerzon, J. Acoust. Soc. Am. 60, 1976, 278, as quoted).
 * Valid: real microphones come near it at middle frequencies; at high frequencies they narrow, at low ones they widen.
 * Errors: ArgumentError for a name that is not known.
 */
export function microphonePattern(name: MicrophonePatternName): MicrophonePattern {
  requireOneOf('polar pattern', name, names);
  const pressure = {
    omni: 1,
    cardioid: 0.5,
    supercardioid: supercardioidShare,
    hypercardioid: 0.25,
    'figure-eight': 0,
  }[name];
  return { pressure, gradient: 1 - pressure };
}
