import { nominalHz } from '../bands/grid.js';
import { speechRange } from './practice.js';

/** Mean of a quantity by third octave over 500 Hz to 2 kHz. */
export function speechAbsorption(byBand: readonly number[]): number {
  const chosen = byBand.filter((_, band) => {
    const hz = nominalHz[band] as number;
    return hz >= speechRange[0] && hz <= speechRange[1];
  });
  return Math.min(1, Math.max(0, chosen.reduce((sum, value) => sum + value, 0) / chosen.length));
}
