import { airProperties, type Layer, type Plate } from '../../src/index.js';

/** Inputs that the groups share. All figures are invented round numbers. */
export const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

export const board: Plate & { readonly kind: 'plate' } = {
  kind: 'plate',
  thickness: 0.0125,
  density: 700,
  youngsModulus: 2.5e9,
  poissonRatio: 0.2,
  lossFactor: 0.02,
};

export const fibre: Layer = { kind: 'porous', thickness: 0.09, flowResistivity: 8000 };

export const panel = { kind: 'finite', size: { width: 1.2, height: 2.1 } } as const;

/** 21 thirds that rise by 1.5 dB each. */
export const risingLoss = Array.from({ length: 21 }, (_, band) => 20 + 1.5 * band);
