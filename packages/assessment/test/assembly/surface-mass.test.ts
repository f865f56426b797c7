import { expect, it } from 'vitest';
import { assemblyMass } from '../../src/assembly/surface-mass.js';
import { airGap, frame, gypsum, plywood, sheet } from '../fixtures/spec-builder.js';

it('assemblyMass(layers) adds sheets, fill and studs', () => {
  // 550 x 0.012 + 700 x 0.0125 + 40 x 0.07 + 0.045 x 0.07 / 0.6 x 480
  const mass = assemblyMass([sheet(plywood, 0.012), frame(0.07, 0.07), sheet(gypsum, 0.0125)]);
  expect(mass).toBeCloseTo(6.6 + 8.75 + 2.8 + 2.52, 9);
});

it('assemblyMass(layers) gives air no weight', () => {
  expect(assemblyMass([airGap(1)])).toBe(0);
});
