import { expect, it } from 'vitest';
import { knownBands, unknownOctaves } from '../../src/bands/band-names.js';
import { perBand } from '../../src/bands/grid.js';

it('knownBands(levels) names the span of what is known', () => {
  expect(knownBands(perBand(() => 40))).toBe('50 Hz to 5 kHz');
  expect(knownBands(perBand((band) => (band < 5 ? null : 40)))).toBe('160 Hz to 5 kHz');
  expect(knownBands(perBand((band) => (band === 8 ? null : 40)))).toBe('50 Hz to 5 kHz with bands left out');
  expect(knownBands(perBand(() => null))).toBe('no band');
  expect(knownBands(perBand((band) => (band === 7 ? 40 : null)))).toBe('250 Hz');
});

it('unknownOctaves(levels) names an octave when any of its thirds is unknown', () => {
  expect(unknownOctaves(perBand((band) => (band === 5 ? null : 40)))).toEqual([125]);
});
