import { expect, it } from 'vitest';
import { netFaceArea, openingArea } from '../../src/booth/face-areas.js';
import { booth, given, place, shell, vent } from '../fixtures/spec-builder.js';

it('netFaceArea(booth, face) takes door, window, vent, slit and hole off their own face', () => {
  const named = { nameRange: place(), range: place(), face: 'left' as const, faceRange: place() };
  const left = booth(shell, {
    vents: [vent('intake')],
    windows: [
      { ...named, name: 'view', size: { width: given(0.4), height: given(0.5) }, offset: undefined, pane: shell },
    ],
    slits: [{ ...named, name: 'joint', length: given(10), gap: given(0.001), depth: given(0.09) }],
    holes: [{ ...named, name: 'cable', diameter: given(0.02), depth: given(0.09) }],
  });
  const openings = (Math.PI / 4) * 0.125 ** 2 + 0.2 + 0.01 + (Math.PI / 4) * 0.02 ** 2;
  expect(openingArea(left, 'left')).toBeCloseTo(openings, 9);
  expect(netFaceArea(left, 'left')).toBeCloseTo(2.7 - openings, 9);
  expect(netFaceArea(left, 'front')).toBeCloseTo(2.3 - 0.66 * 1.9, 9);
});

it('netFaceArea(booth, face) is never below zero', () => {
  const wide = booth();
  const tooBig = {
    ...wide,
    doors: wide.doors.map((door) => ({ ...door, size: { width: given(3), height: given(3) } })),
  };
  expect(netFaceArea(tooBig, 'front')).toBe(0);
});
