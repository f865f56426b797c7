import { sumLevels } from '@boothwright/acoustics';
import { perBand } from '../bands/grid.js';
import type { ByBand } from '../result/result-document.js';

/**
 * Energy sum of spectra by band. A band is known when every spectrum knows it: a sum with one part missing would be too
 * low without saying so.
 */
export function summedSpectra(spectra: readonly ByBand[]): ByBand {
  return perBand((band) => {
    const levels = spectra.map((spectrum) => spectrum[band] ?? null);
    if (levels.length === 0 || levels.some((level) => level === null)) return null;
    return sumLevels(levels as number[]);
  });
}

/** Half-width of a sum: that of each part in proportion to its energy. */
export function summedHalfWidth(spectra: readonly ByBand[], halfWidths: readonly (readonly number[])[]): number[] {
  return perBand((band) => {
    let energy = 0;
    let weighted = 0;
    spectra.forEach((spectrum, index) => {
      const level = spectrum[band];
      if (level === null || level === undefined) return;
      const part = 10 ** (level / 10);
      energy += part;
      weighted += part * (halfWidths[index]?.[band] as number);
    });
    return energy > 0 ? weighted / energy : 0;
  });
}
