import { describe, expect, it } from 'vitest';
import {
  fibreFlowResistivity,
  fibrePorosity,
  stoneWoolFlowResistivity,
} from '../../src/porous/fibre-flow-resistivity.js';

describe('fibreFlowResistivity(density, fibreDiameter)', () => {
  it('is within a factor of two of the law for stone wool along the slab', () => {
    for (const density of [40, 80, 140]) {
      const ratio = fibreFlowResistivity(density, 4.75e-6) / stoneWoolFlowResistivity(density, 4.75e-6, 'longitudinal');
      expect(ratio).toBeGreaterThan(0.5);
      expect(ratio).toBeLessThan(4);
    }
  });

  it('falls with the square of the diameter and rejects fibre of none', () => {
    expect(fibreFlowResistivity(40, 5e-6) / fibreFlowResistivity(40, 10e-6)).toBeCloseTo(4, 9);
    expect(() => fibreFlowResistivity(40, 0)).toThrow('fibre diameter is 0');
    expect(() => fibrePorosity(3000, 2600)).toThrow('density is 3000');
  });
});
