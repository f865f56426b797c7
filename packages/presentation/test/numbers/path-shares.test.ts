import { expect, test } from 'vitest';
import { pathShares } from '../../src/numbers/path-shares.js';
import { nominalHz, totals } from '../fixtures/sample-basics.js';
import { alcove } from '../fixtures/sample-booth.js';

const [tram] = alcove.noise.bySource;
const by = (level: readonly number[]) => level.flatMap((share) => [share, share, share]);

test('pathShares(booth, source, bands) orders paths by their A-weighted share', () => {
  expect(pathShares(alcove, tram!, nominalHz).map(({ id }) => id)).toEqual([
    'face:front',
    'door:entry',
    'door:entry:perimeter',
  ]);
});

test('pathShares(...) gives shares of all paths that add up to 1, overall and by octave', () => {
  const shares = pathShares(alcove, tram!, nominalHz);
  expect(shares.reduce((sum, { overall }) => sum + overall!, 0)).toBeCloseTo(1, 10);
  expect(shares.reduce((sum, { byOctave }) => sum + byOctave[4]!, 0)).toBeCloseTo(1, 10);
});

test('pathShares(...) weighs the overall share as hearing does: a path that only brings 63 Hz weighs less than one at 1 kHz', () => {
  const source = {
    ...tram!,
    inside: totals([40, 0, 0, 0, 40, 0, 0], 40, 43, 'NC 30'),
    shares: [by([1, 0, 0, 0, 0, 0, 0]), by([0, 1, 1, 1, 1, 1, 1]), by([0, 0, 0, 0, 0, 0, 0])],
  };
  const [first, second] = pathShares(alcove, source, nominalHz);
  expect([first!.id, second!.id]).toEqual(['door:entry', 'face:front']);
  // A-weighting takes 26.2 dB at 63 Hz; over the three thirds of the octave 50 to 80 Hz that leaves about a quarter of a per cent.
  expect(second!.overall).toBeGreaterThan(0.001);
  expect(second!.overall).toBeLessThan(0.005);
});

test('pathShares(...) leaves an octave open where a third is not assessed', () => {
  expect(pathShares(alcove, tram!, nominalHz)[0]!.byOctave[6]).toBeNull();
});

test('pathShares(...) works the shares of a source out once, and anew for another booth or grid', () => {
  const first = pathShares(alcove, tram!, nominalHz);
  expect(pathShares(alcove, tram!, nominalHz)).toBe(first);
  const fewer = { ...alcove, paths: alcove.paths.slice(0, 1) };
  expect(pathShares(fewer, tram!, nominalHz)).toHaveLength(1);
  expect(pathShares(alcove, tram!, nominalHz)).toEqual(first);
});
