import { frequencyWeighting } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { exactHz, perBand } from '../../src/bands/grid.js';
import { limitingOverall, limitingOverallSentence } from '../../src/noise/limiting-overall.js';
import { fanSound } from '../../src/noise/own-sounds.js';
import type { PathResult } from '../../src/result/result-document.js';
import { booth } from '../fixtures/spec-builder.js';

const path = (id: string, kind: PathResult['kind'], name: string): PathResult => ({
  id,
  kind,
  name,
  range: { file: 'test.booth', from: 0, to: 1 },
  areaM2: 1,
  transmissionLossDb: perBand(() => 30),
  notes: [],
});
const paths = [path('hole:a', 'hole', 'a'), path('slit:b', 'slit', 'b')];
/** Levels that are the same in every band once they are A-weighted, with one band 4 dB louder. */
const even = perBand((band) => 40 - frequencyWeighting('A', exactHz[band] as number) + (band === 10 ? 4 : 0));
/** The hole brings all of the loudest band and nothing else. */
const shares = [perBand((band) => (band === 10 ? 1 : 0)), perBand((band) => (band === 10 ? 0 : 1))];

it('limitingOverall(...) takes the share of all bands, not the loudest band', () => {
  const limiting = limitingOverall(booth(), paths, [{ source: 'street', levels: even, shares }]);
  expect(limiting).toMatchObject({ id: 'slit:b', source: 'street' });
  // Twenty bands of 1 against one of 10^0.4 = 2.51.
  expect(limiting?.share).toBeCloseTo(20 / 22.51, 3);
  expect(limiting?.band).not.toBe(10);
});

it('limitingOverall(...) adds the sounds that come the same way and names the strongest of them', () => {
  const sounds = [
    { source: 'street', levels: even, shares },
    { source: 'boiler', levels: even.map((level) => level + 10), shares },
  ];
  expect(limitingOverall(booth(), paths, sounds)).toMatchObject({ id: 'slit:b', source: 'boiler' });
});

it('limitingOverall(...) names a fan that brings more than any path, and nothing without any sound', () => {
  const fan = limitingOverall(booth(), paths, [{ source: 'street', levels: even, shares }], [fanSound(even)]);
  expect(fan).toMatchObject({ id: 'fan' });
  expect(limitingOverallSentence(fan, 'inside')).toContain('the fan through its duct');
  expect(limitingOverall(booth(), paths, [])).toBeNull();
  expect(limitingOverallSentence(null, 'inside')).toBe('');
});
