import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AbsorberConditions,
  absorberAbsorption,
  absorberAbsorptionAt,
  absorberSurfaceImpedance,
} from '../../src/absorption/absorber-absorption.js';
import type { AbsorberBacking, AbsorberLayer } from '../../src/absorption/absorber-layer.js';
import { airProperties } from '../../src/air/air-properties.js';
import { diffuseAbsorption, normalIncidenceAbsorption } from '../../src/layered/stack-absorption.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const diffuse: AbsorberConditions = { air, backing: 'rigid', incidence: { kind: 'diffuse' } };
const straight: AbsorberConditions = { air, backing: 'rigid', incidence: { kind: 'plane', angleDeg: 0 } };
const wool = (thickness: number, flowResistivity = 10_000): AbsorberLayer => ({
  kind: 'porous',
  model: 'miki',
  flowResistivity,
  thickness,
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyLayer: fc.Arbitrary<AbsorberLayer> = fc.oneof(
  fc.record({
    kind: fc.constant('plate' as const),
    thickness: number(0, 0.05),
    density: number(100, 8000),
    youngsModulus: number(1e6, 2e11),
    poissonRatio: number(0, 0.4),
    lossFactor: number(0.001, 0.1),
  }),
  fc.record({
    kind: fc.constant('porous' as const),
    model: fc.constant('miki' as const),
    flowResistivity: number(0, 1e5),
    thickness: number(0, 1),
    partitioned: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('porous' as const),
    model: fc.constant('johnson-champoux-allard' as const),
    flowResistivity: number(1000, 1e5),
    porosity: number(0.5, 1),
    tortuosity: number(1, 3),
    viscousLength: number(2e-5, 2e-4),
    thermalLength: number(2e-4, 4e-4),
    thickness: number(0, 1),
    density: number(10, 200),
  }),
  fc.record({
    kind: fc.constant('perforated' as const),
    thickness: number(0, 0.03),
    holeDiameter: number(1e-4, 0.02),
    openArea: number(0.005, 0.7),
    surfaceMass: number(0, 10),
  }),
  fc.record({
    kind: fc.constant('slotted' as const),
    thickness: number(0, 0.03),
    slotWidth: number(1e-4, 0.02),
    openArea: number(0.005, 1),
  }),
  fc.record({ kind: fc.constant('limp-sheet' as const), surfaceMass: number(0, 10_000) }),
  fc.record({ kind: fc.constant('air-gap' as const), thickness: number(0, 1), partitioned: fc.boolean() }),
  fc.record({ kind: fc.constant('screen' as const), flowResistance: number(0, 5000), surfaceMass: number(0.01, 5) }),
);
const anyBacking: fc.Arbitrary<AbsorberBacking> = fc.oneof(
  fc.constantFrom('rigid' as const, 'open' as const),
  fc.record({ kind: fc.constant('limp' as const), surfaceMass: number(0, 100) }),
  fc.record({ kind: fc.constant('wall' as const), layers: fc.array(anyLayer, { maxLength: 3 }) }),
);

describe('absorberAbsorption(layers, conditions)', () => {
  it('of an infinite sample is between 0 and 1 for any layers, backing and angle', () => {
    fc.assert(
      fc.property(
        fc.array(anyLayer, { maxLength: 4 }),
        anyBacking,
        number(50, 5000),
        number(0, 89),
        (layers, backing, hz, angleDeg) => {
          for (const incidence of [{ kind: 'diffuse' as const }, { kind: 'plane' as const, angleDeg }]) {
            const found = absorberAbsorptionAt(layers, hz, { air, backing, incidence });
            expect(found).toBeGreaterThanOrEqual(0);
            expect(found).toBeLessThanOrEqual(1 + 1e-9);
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it('agrees with the layered wall model, which follows the waves in another way', () => {
    const stack = [
      { kind: 'air-gap' as const, thickness: 0.05 },
      { kind: 'porous' as const, thickness: 0.05, flowResistivity: 12_000, density: 40 },
      { kind: 'limp-sheet' as const, surfaceMass: 0.2 },
    ];
    const layers: AbsorberLayer[] = stack.map((layer) =>
      layer.kind === 'porous' ? { ...layer, model: 'miki' } : layer,
    );
    for (const hz of [63, 200, 800, 3150]) {
      for (const backing of ['rigid', 'open'] as const) {
        const incidence = { kind: 'diffuse' as const };
        expect(absorberAbsorptionAt(layers, hz, { air, backing, incidence })).toBeCloseTo(
          diffuseAbsorption(stack, hz, air, backing),
          3,
        );
      }
      expect(absorberAbsorptionAt(layers, hz, straight)).toBeCloseTo(
        normalIncidenceAbsorption(stack, [hz], { air, backing: 'rigid' })[0]!,
        9,
      );
    }
  });

  it('agrees with the layered wall model at the coincidence of its boards and the resonances of an empty cavity', () => {
    const board = {
      kind: 'plate' as const,
      thickness: 0.0125,
      density: 700,
      youngsModulus: 2.5e9,
      poissonRatio: 0.2,
      lossFactor: 0.01,
    };
    const wall = [board, { kind: 'air-gap' as const, thickness: 0.1 }, board];
    for (const hz of [80, 250, 1000, 2500, 3150, 5000]) {
      const conditions: AbsorberConditions = { air, backing: 'open', incidence: { kind: 'diffuse' } };
      const found = absorberAbsorptionAt(wall, hz, conditions);
      expect(Math.abs(found - diffuseAbsorption(wall, hz, air, 'open'))).toBeLessThan(2e-3);
    }
  });

  it('of nothing is 0 before a hard wall and 1 towards the open', () => {
    expect(absorberAbsorptionAt([], 500, diffuse)).toBeCloseTo(0, 12);
    expect(absorberAbsorptionAt([], 500, { ...diffuse, backing: 'open' })).toBeCloseTo(1, 9);
    expect(absorberSurfaceImpedance([], 500, 0, diffuse).re).toBe(Number.POSITIVE_INFINITY);
  });

  it('grows with thickness at low frequencies', () => {
    fc.assert(
      fc.property(number(0.02, 0.1), number(1.1, 2), number(5000, 15_000), (thickness, factor, resistivity) => {
        const thin = absorberAbsorptionAt([wool(thickness, resistivity)], 100, diffuse);
        const thick = absorberAbsorptionAt([wool(thickness * factor, resistivity)], 100, diffuse);
        expect(thick).toBeGreaterThan(thin);
      }),
      { numRuns: 30 },
    );
  });

  it('of a finite sample tends to that of an infinite one as the sample grows, and exceeds it when small', () => {
    const on = (side: number) =>
      absorberAbsorptionAt([wool(0.1)], 500, {
        ...diffuse,
        incidence: { kind: 'diffuse-on-sample', size: { width: side, height: side } },
      });
    const infinite = absorberAbsorptionAt([wool(0.1)], 500, diffuse);
    expect(Math.abs(on(200) - infinite)).toBeLessThan(0.02);
    expect(on(3.3)).toBeGreaterThan(1);
    expect(on(1.5)).toBeGreaterThan(on(3.3));
    expect(on(3.3)).toBeGreaterThan(on(10));
  });

  it('with a limp backing lies between open and rigid at the limits of its mass', () => {
    const at = (backing: AbsorberBacking) => absorberAbsorptionAt([wool(0.05)], 125, { ...diffuse, backing });
    expect(at({ kind: 'limp', surfaceMass: 0 })).toBeCloseTo(at('open'), 9);
    expect(at({ kind: 'limp', surfaceMass: 1e6 })).toBeCloseTo(at('rigid'), 3);
  });

  it('with a wall behind is the same as the wall as further layers', () => {
    const board: AbsorberLayer = {
      kind: 'plate',
      thickness: 0.0125,
      density: 700,
      youngsModulus: 2.5e9,
      poissonRatio: 0.2,
      lossFactor: 0.03,
    };
    const walls = [board, wool(0.08), board];
    const behind = absorberAbsorptionAt([wool(0.05)], 250, { ...diffuse, backing: { kind: 'wall', layers: walls } });
    expect(behind).toBeCloseTo(absorberAbsorptionAt([...walls, wool(0.05)], 250, { ...diffuse, backing: 'open' }), 12);
    expect(behind).toBeGreaterThan(absorberAbsorptionAt([wool(0.05)], 250, diffuse) - 0.2);
  });

  it('of a partitioned gap does not depend on how the angle runs inside it', () => {
    const layers: AbsorberLayer[] = [
      { kind: 'air-gap', thickness: 0.1, partitioned: true },
      { kind: 'screen', flowResistance: air.impedance },
    ];
    const first = absorberSurfaceImpedance(layers, 500, 0, straight);
    const second = absorberSurfaceImpedance(layers, 500, 70, straight);
    expect(second.re).toBeCloseTo(first.re, 9);
    expect(second.im).toBeCloseTo(first.im, 9);
  });

  it('takes a metre of wool and ten tonnes per square metre', () => {
    const found = absorberAbsorption([wool(1, 1e6), { kind: 'limp-sheet', surfaceMass: 10_000 }], diffuse, 1);
    for (const value of found) expect(value).toBeGreaterThanOrEqual(0);
    expect(found).toHaveLength(21);
  });

  it('rejects what cannot be, by its place', () => {
    expect(() => absorberAbsorption([wool(0.1), wool(-1)], diffuse)).toThrow('layer 2: thickness is -1, expected');
    const perforated: AbsorberLayer = { kind: 'perforated', thickness: 0.01, holeDiameter: 0.005, openArea: 0.9 };
    expect(() => absorberAbsorption([perforated], diffuse)).toThrow('layer 1: open area is 0.9');
    expect(() => absorberAbsorption([], { ...diffuse, incidence: { kind: 'plane', angleDeg: 90 } })).toThrow(
      'angle of incidence is 90',
    );
  });

  it('of fibre that touches a perforated sheet damps it more than fibre behind a small gap', () => {
    const sheet: AbsorberLayer = { kind: 'perforated', thickness: 0.012, holeDiameter: 0.008, openArea: 0.05 };
    const gap: AbsorberLayer = { kind: 'air-gap', thickness: 0.005 };
    const touching = absorberSurfaceImpedance([wool(0.05, 20_000), sheet], 300, 0, straight).re;
    const apart = absorberSurfaceImpedance([wool(0.05, 20_000), gap, sheet], 300, 0, straight).re;
    expect(touching).toBeGreaterThan(apart * 1.3);
  });

  it('runs inside a keystroke', () => {
    const layers: AbsorberLayer[] = [
      wool(0.05),
      { kind: 'perforated', thickness: 0.012, holeDiameter: 0.008, openArea: 0.1 },
    ];
    const start = Date.now();
    absorberAbsorption(layers, diffuse);
    const infinite = Date.now();
    absorberAbsorption(layers, {
      ...diffuse,
      incidence: { kind: 'diffuse-on-sample', size: { width: 3.6, height: 3 } },
    });
    const finite = Date.now();
    // Generous, as other tests run at the same time.
    expect(infinite - start).toBeLessThan(1000);
    expect(finite - infinite).toBeLessThan(3000);
  });
});
