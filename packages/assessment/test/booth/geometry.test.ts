import { expect, it } from 'vitest';
import { faceSize, geometryOf, insideSize } from '../../src/booth/geometry.js';
import { booth, given, lining, sheet, shell, wool } from '../fixtures/spec-builder.js';

it('geometryOf(booth) adds the build-ups where no outside size is given', () => {
  const { outsideM, volumeM3, footprintM2 } = geometryOf(booth());
  // 94.5 mm of shell on each side and on top, 42 mm of deck below.
  expect(outsideM[0]).toBeCloseTo(1.339, 9);
  expect(outsideM[1]).toBeCloseTo(1.539, 9);
  expect(outsideM[2]).toBeCloseTo(2.1365, 9);
  expect(volumeM3).toBeCloseTo(3.105, 9);
  expect(footprintM2).toBeCloseTo(1.339 * 1.539, 9);
});

it('geometryOf(booth) keeps the outside size that is given', () => {
  const outside = { width: given(1.4), depth: given(1.6), height: given(2.2) };
  expect(geometryOf(booth(shell, { outside })).outsideM).toEqual([1.4, 1.6, 2.2]);
});

it('geometryOf(booth) leaves what the thickest lining of each face leaves', () => {
  const linings = [lining(['left', 'back'], 1, sheet(wool, 0.05)), lining(['back'], 0.3, sheet(wool, 0.1))];
  const { usableM } = geometryOf(booth(shell, { linings }));
  expect(usableM[0]).toBeCloseTo(1.1, 9);
  expect(usableM[1]).toBeCloseTo(1.25, 9);
  expect(usableM[2]).toBeCloseTo(2, 9);
});

it('faceSize(size, face) is width by height for walls and width by depth for the roof', () => {
  const size = insideSize(booth());
  expect(faceSize(size, 'front')).toEqual({ width: 1.15, height: 2 });
  expect(faceSize(size, 'left')).toEqual({ width: 1.35, height: 2 });
  expect(faceSize(size, 'roof')).toEqual({ width: 1.15, height: 1.35 });
});
