import { requireOneOf } from '../errors/require-one-of.js';
import type { MicrophonePattern } from './microphone-pattern.js';
import { randomEnergyEfficiency } from './random-energy-efficiency.js';

/**
 * What a directional microphone takes off room noise against a voice on its axis, dB, never negative.
 *
 * Equation: in a `diffuse` field the directivity index -10 lg(a^2 + b^2/3). In a room of a few modes the least of it and of
 * -10 lg(a^2 + b^2), one standing wave along the axis of the microphone as the mean over the places in it, where half of
 * the energy is in the pressure and half in the motion of the air. In a `closed-box`, small against the wavelength, 0 dB:
 * what a gradient makes of a pressure that is the same everywhere depends on how its low end is built.
 * Units: dB. Source: as `randomEnergyEfficiency`; the other two fields derived, on the cautious side.
 * Valid: for ideal patterns, as `microphonePattern`. Errors: ArgumentError for a field that is not known.
 */
export function patternRejection(pattern: MicrophonePattern, field: 'diffuse' | 'few-modes' | 'closed-box'): number {
  requireOneOf('sound field', field, ['diffuse', 'few-modes', 'closed-box']);
  if (field === 'closed-box') return 0;
  const diffuse = -10 * Math.log10(randomEnergyEfficiency(pattern));
  if (field === 'diffuse') return Math.max(0, diffuse);
  return Math.max(0, Math.min(diffuse, -10 * Math.log10(pattern.pressure ** 2 + pattern.gradient ** 2)));
}
