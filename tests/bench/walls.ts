import { airProperties, fieldIncidenceAngleDeg, type Layer } from '@boothwright/acoustics';

export const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
export const field = { kind: 'limited', maximumAngleDeg: fieldIncidenceAngleDeg } as const;
export const rule = { samplesPerBand: 8, angles: 64 } as const;
export const wallCount = 200;

/** A screen, wadding, an absorber, a limp sheet, a narrow gap and hardboard; all values invented but ordinary. */
export function benchWalls(count: number): Layer[][] {
  let seed = 20;
  // A linear congruential generator of 32 bits: the same walls everywhere.
  const between = (low: number, high: number) => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return low + ((high - low) * seed) / 2 ** 32;
  };
  return Array.from({ length: count }, () => [
    { kind: 'screen', flowResistance: between(50, 400), surfaceMass: between(0.1, 0.4) },
    {
      kind: 'porous',
      thickness: between(0.02, 0.03),
      flowResistivity: between(3000, 8000),
      density: between(10, 25),
    },
    {
      kind: 'porous',
      thickness: between(0.045, 0.054),
      flowResistivity: between(8000, 25000),
      density: between(30, 80),
    },
    { kind: 'limp-sheet', surfaceMass: between(3, 7) },
    { kind: 'air-gap', thickness: between(0.003, 0.0125) },
    {
      kind: 'plate',
      thickness: 0.0032,
      density: between(850, 1000),
      youngsModulus: between(3e9, 5e9),
      poissonRatio: 0.3,
      lossFactor: between(0.01, 0.03),
    },
  ]);
}

/** The numbers of one wall in the order in which the other programs read them. */
export function wallNumbers(layers: readonly Layer[]): number[] {
  const numbers = layers.flatMap((layer) => {
    switch (layer.kind) {
      case 'screen':
        return [layer.flowResistance, layer.surfaceMass ?? 0];
      case 'porous':
        return [layer.thickness, layer.flowResistivity, layer.density ?? 0];
      case 'limp-sheet':
        return [layer.surfaceMass];
      case 'air-gap':
        return [layer.thickness];
      case 'plate':
        return [layer.thickness, layer.density, layer.youngsModulus, layer.poissonRatio, layer.lossFactor];
      default:
        throw new Error('a wall of the benchmark holds a layer that the other programs do not know');
    }
  });
  return [...numbers, 0];
}
