import { expect, it } from 'vitest';
import { facePatches } from '../../src/booth/linings.js';
import { booth, lining, sheet, shell, wool } from '../fixtures/spec-builder.js';

it('facePatches(booth, face) appends the lining to the wall on its share and leaves the rest bare', () => {
  const patches = facePatches(booth(shell, { linings: [lining(['left'], 0.8, sheet(wool, 0.05))] }), 'left');
  expect(patches.map((patch) => patch.layers.length)).toEqual([4, 3]);
  expect(patches[0]?.share).toBeCloseTo(0.8, 9);
  expect(patches[1]?.share).toBeCloseTo(0.2, 9);
});

it('facePatches(booth, face) scales linings that cover more than the face', () => {
  const linings = [lining(['left'], 1, sheet(wool, 0.05)), lining(['left'], 1, sheet(wool, 0.1))];
  const patches = facePatches(booth(shell, { linings }), 'left');
  expect(patches.map((patch) => patch.share)).toEqual([0.5, 0.5]);
});
