import fc from 'fast-check';
import type { Layer } from '../../src/layered/layer.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** One layer of any kind within the range of building materials. */
export const anyLayer: fc.Arbitrary<Layer> = fc.oneof(
  fc.record({
    kind: fc.constant('plate' as const),
    thickness: between(0.0005, 0.1),
    density: between(100, 8000),
    youngsModulus: between(1e8, 2e11),
    poissonRatio: between(0, 0.45),
    lossFactor: between(0, 0.2),
  }),
  fc.record({ kind: fc.constant('limp-sheet' as const), surfaceMass: between(0.1, 30) }),
  fc.record({ kind: fc.constant('air-gap' as const), thickness: between(0.001, 0.3) }),
  fc.record(
    {
      kind: fc.constant('porous' as const),
      thickness: between(0.005, 0.15),
      flowResistivity: between(1000, 80000),
      density: between(5, 150),
    },
    { requiredKeys: ['kind', 'thickness', 'flowResistivity'] },
  ),
  fc.record(
    {
      kind: fc.constant('screen' as const),
      flowResistance: between(5, 2000),
      surfaceMass: between(0.05, 1),
    },
    { requiredKeys: ['kind', 'flowResistance'] },
  ),
);

/** Layers that turn no sound into heat. */
export const losslessLayer: fc.Arbitrary<Layer> = fc.oneof(
  fc.record({
    kind: fc.constant('plate' as const),
    thickness: between(0.0005, 0.05),
    density: between(100, 8000),
    youngsModulus: between(1e8, 2e11),
    poissonRatio: between(0, 0.45),
    lossFactor: fc.constant(0),
  }),
  fc.record({ kind: fc.constant('limp-sheet' as const), surfaceMass: between(0.1, 30) }),
  fc.record({ kind: fc.constant('air-gap' as const), thickness: between(0.001, 0.3) }),
);

export const anyStack = fc.array(anyLayer, { minLength: 1, maxLength: 7 });
export const losslessStack = fc.array(losslessLayer, { minLength: 1, maxLength: 5 });
export const anyFrequency = between(45, 5600);
export const anySine = between(0, 0.999);
