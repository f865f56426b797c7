import { sumLevels } from '@boothwright/acoustics';
import { unknownOctaves } from '../bands/band-names.js';
import { perBand } from '../bands/grid.js';
import type { ByBand } from '../result/result-document.js';

/**
 * Energy sum of spectra by band, from the parts that are known; null where none is. Where one part is unknown the sum is
 * a lower bound, which `partlyUnknownOctaves` tells.
 */
export function summedSpectra(spectra: readonly ByBand[]): ByBand {
  return perBand((band) => {
    const levels = spectra.map((spectrum) => spectrum[band] ?? null).filter((level) => level !== null);
    return levels.length === 0 ? null : sumLevels(levels);
  });
}

/** Octaves in which at least one of the spectra is unknown, nominal Hz. */
export function partlyUnknownOctaves(spectra: readonly ByBand[]): number[] {
  return unknownOctaves(perBand((band) => (spectra.some((spectrum) => (spectrum[band] ?? null) === null) ? null : 0)));
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
