import { expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { partlyUnknownOctaves, summedHalfWidth, summedSpectra } from '../../src/noise/summed-spectra.js';

const forty = perBand(() => 40);
const partly = perBand((band) => (band < 3 ? null : 40));

it('summedSpectra(spectra) adds energies', () => {
  expect(summedSpectra([forty, forty])[10]).toBeCloseTo(43.01, 2);
});

it('summedSpectra(spectra) sums what is known and stays null where nothing is', () => {
  expect(summedSpectra([forty, partly])[0]).toBe(40);
  expect(summedSpectra([partly, partly])[0]).toBeNull();
  expect(summedSpectra([])[0]).toBeNull();
});

it('partlyUnknownOctaves(spectra) names the octaves in which a sum is only a lower bound', () => {
  expect(partlyUnknownOctaves([forty, partly])).toEqual([63]);
  expect(partlyUnknownOctaves([forty, forty])).toEqual([]);
});

it('summedHalfWidth(spectra, halfWidths) weighs by energy', () => {
  const loud = perBand(() => 50);
  const widths = summedHalfWidth([forty, loud], [perBand(() => 11), perBand(() => 0)]);
  expect(widths[0]).toBeCloseTo(1, 9);
});
