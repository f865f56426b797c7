import { describe, expect, test } from 'vitest';
import { absorberAbsorptionAt } from '../../src/absorption/absorber-absorption.js';
import type { AbsorberLayer } from '../../src/absorption/absorber-layer.js';
import { type Air, airProperties } from '../../src/air/air-properties.js';

const air: Air = {
  ...airProperties({ temperature: 20, relativeHumidity: 0.5 }),
  density: 1.205,
  soundSpeed: 343,
  impedance: 1.205 * 343,
};
const hz = [125, 250, 500, 1000, 2000, 4000];

describe('rigid-backed layers at normal incidence, computed independently from Zs = -j Zc cot(k d)', () => {
  test.each([
    ['miki', 10_000, 0.05, 0, [0.0658, 0.1921, 0.4854, 0.883, 0.9816, 0.9711]],
    ['miki', 10_000, 0.1, 0, [0.2625, 0.621, 0.9366, 0.9474, 0.982, 0.9906]],
    ['miki', 20_000, 0.05, 0, [0.0853, 0.2625, 0.621, 0.9366, 0.9474, 0.982]],
    ['miki', 10_000, 0.05, 0.05, [0.1749, 0.4942, 0.9083, 0.9655, 0.8865, 0.9978]],
    ['delany-bazley', 10_000, 0.05, 0, [0.0341, 0.1726, 0.4968, 0.8856, 0.9862, 0.9735]],
    ['delany-bazley', 10_000, 0.1, 0, [0.2222, 0.6198, 0.9428, 0.9577, 0.9853, 0.9948]],
    ['delany-bazley', 20_000, 0.05, 0, [0.04, 0.2222, 0.6198, 0.9428, 0.9577, 0.9853]],
    ['delany-bazley', 10_000, 0.05, 0.05, [0.1608, 0.5003, 0.9135, 0.9717, 0.8997, 0.9956]],
  ] as const)('%s, %d Pa s/m2, %d m, gap %d m', (model, flowResistivity, thickness, gap, expected) => {
    const layers: AbsorberLayer[] = [
      { kind: 'air-gap', thickness: gap },
      { kind: 'porous', model, thickness, flowResistivity },
    ];
    // The gap carries heat to its walls here, which the comparison leaves out: a few thousandths.
    hz.forEach((frequency, i) => {
      const found = absorberAbsorptionAt(layers, frequency, {
        air,
        backing: 'rigid',
        incidence: { kind: 'plane', angleDeg: 0 },
      });
      expect(Math.abs(found - expected[i]!)).toBeLessThan(gap > 0 ? 3e-3 : 6e-5);
    });
  });
});
