import { octaveBands, thirdOctaveBands, thirdsOfOctave } from '@boothwright/acoustics';
import type { BandTable } from '@boothwright/language';
import type { ByBand } from '../result/result-document.js';
import { isBand } from './level-table.js';

/**
 * Band values that are not levels (insertion loss, absorption) on the third-octave grid: an octave value holds in each
 * of its three thirds. A band that the text leaves out stays null.
 */
export function valuesOnGrid(table: BandTable): ByBand {
  const onGrid: (number | null)[] = thirdOctaveBands.map(() => null);
  if (table.grid === 'third') {
    return thirdOctaveBands.map((band) => table.values.find((entry) => isBand(entry.hz, band))?.value ?? null);
  }
  octaveBands.forEach((band, octave) => {
    const entry = table.values.find((candidate) => isBand(candidate.hz, band));
    if (entry !== undefined) for (const third of thirdsOfOctave(octave)) onGrid[third] = entry.value;
  });
  return onGrid;
}

/**
 * The same with every gap filled by the nearest stated band, for quantities that must be known everywhere, such as
 * absorption tables that start at 125 Hz. Undefined when the table has no band of the grid.
 */
export function valuesOnGridHeld(table: BandTable): number[] | undefined {
  const known = valuesOnGrid(table);
  if (known.every((value) => value === null)) return undefined;
  return known.map((value, index) => value ?? nearestKnown(known, index));
}

function nearestKnown(values: ByBand, index: number): number {
  for (let step = 1; step < values.length; step += 1) {
    const found = values[index - step] ?? values[index + step];
    if (found !== null && found !== undefined) return found;
  }
  return Number.NaN;
}
