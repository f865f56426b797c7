import { requireNotNegative } from './require-positive.js';

/**
 * Absorption area that stands for the attenuation of the air in a room.
 *
 * Equation: A = 4 m V with m = alpha / (10 lg e). Units: volume m3, attenuation alpha dB/m; result m2.
 * Source: ISO 354 (common practice; document not opened).
 * Errors: ArgumentError for a negative value or one that is no number.
 */
export function airAbsorptionArea(volume: number, attenuation: number): number {
  requireNotNegative('room volume', volume, 'cubic metres');
  requireNotNegative('attenuation of the air', attenuation, 'dB/m');
  return (4 * volume * attenuation) / (10 * Math.LOG10E);
}
