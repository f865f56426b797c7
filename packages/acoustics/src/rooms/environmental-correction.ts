import { levelOf } from '../levels/level-of.js';
import { requirePositive } from './require-positive.js';

/**
 * Environmental correction K2: how much a room lifts the mean level on a measurement surface round a source.
 *
 * Equation: K2 = 10 lg(1 + 4 S / A). Units: measurement surface S and absorption area A of the room m2; result dB.
 * Source: ISO 3744 and ISO 3746 (from memory; met by the tables of R. C. Payne and D. J. Simmons, NPL report
 * CIRA(EXT) 009, 1996, and F. Heisterkamp, Acoustics 6(1), 2024, as transcribed).
 * Valid: for a diffuse reverberant field; measurement standards reject a room with a larger correction than they state.
 * Errors: ArgumentError for an area that isn't above zero.
 */
export function environmentalCorrection(surface: number, absorptionArea: number): number {
  requirePositive('measurement surface', surface, 'square metres');
  requirePositive('absorption area', absorptionArea, 'square metres');
  return levelOf(1 + (4 * surface) / absorptionArea);
}
