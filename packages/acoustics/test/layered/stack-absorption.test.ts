import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layer } from '../../src/layered/layer.js';
import { diffuseAbsorption, normalIncidenceAbsorption, stackAbsorption } from '../../src/layered/stack-absorption.js';
import { anyFrequency, anyStack } from './layer-arbitraries.js';
import { roomAir as air, batt, board, stacks } from './stacks.js';

describe('stackAbsorption(layers, { air, backing })', () => {
  it('is between 0 and 1 for any stack and backing', () => {
    fc.assert(
      fc.property(anyStack, anyFrequency, fc.constantFrom('rigid' as const, 'open' as const), (layers, hz, backing) => {
        const found = diffuseAbsorption(layers, hz, air, backing);
        expect(found).toBeGreaterThanOrEqual(0);
        expect(found).toBeLessThanOrEqual(1);
      }),
      { numRuns: 200 },
    );
  });

  it('of nothing is 1 towards the open and 0 before a hard wall', () => {
    stackAbsorption([], { air, backing: 'open' }).forEach((value) => {
      expect(value).toBeCloseTo(1, 9);
    });
    stackAbsorption([], { air, backing: 'rigid' }).forEach((value) => {
      expect(value).toBe(0);
    });
  });

  it('looks at the stack from its last layer', () => {
    const lined: Layer[] = [board, batt];
    const bare: Layer[] = [batt, board];
    expect(stackAbsorption(lined, { air, backing: 'rigid' })[15]!).toBeGreaterThan(0.7);
    expect(stackAbsorption(bare, { air, backing: 'rigid' })[15]!).toBeLessThan(0.1);
  });

  it('grows with the thickness of a porous layer at low frequencies', () => {
    const thin = stackAbsorption([{ ...batt, thickness: 0.025 }], { air, backing: 'rigid' });
    const thick = stackAbsorption([{ ...batt, thickness: 0.1 }], { air, backing: 'rigid' });
    expect(thick[5]! - thin[5]!).toBeGreaterThan(0.2);
  });

  it('of a cloth of resistance rho c before a quarter-wave gap is 1 at normal incidence', () => {
    // The friction of the gap itself changes this by less than a thousandth.
    const layers: Layer[] = [
      { kind: 'air-gap', thickness: air.soundSpeed / 500 / 4 },
      { kind: 'screen', flowResistance: air.impedance },
    ];
    expect(normalIncidenceAbsorption(layers, [500], { air, backing: 'rigid' })[0]).toBeCloseTo(1, 3);
  });

  it('of a limp sheet over a gap peaks at (1/2 pi) sqrt(rho c^2/(m d))', () => {
    const layers: Layer[] = [
      { kind: 'porous', thickness: 0.05, flowResistivity: 3000 },
      { kind: 'limp-sheet', surfaceMass: 4 },
    ];
    const expected = Math.sqrt((air.density * air.soundSpeed ** 2) / (4 * 0.05)) / (2 * Math.PI);
    const hz = Array.from({ length: 200 }, (_, i) => 60 + i);
    const alpha = normalIncidenceAbsorption(layers, hz, { air, backing: 'rigid' });
    const peak = hz[alpha.indexOf(Math.max(...alpha))]!;
    // The fibre makes the spring softer, between adiabatic and isothermal.
    expect(peak).toBeGreaterThan(expected * 0.8);
    expect(peak).toBeLessThan(expected * 1.02);
  });

  it('counts what a wall lets through as absorbed when its backing is open', () => {
    const layers = stacks['single board']!;
    const open = stackAbsorption(layers, { air, backing: 'open' });
    const closed = stackAbsorption(layers, { air, backing: 'rigid' });
    expect(open[0]!).toBeGreaterThan(closed[0]!);
  });
});
