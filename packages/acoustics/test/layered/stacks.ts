import { airProperties } from '../../src/air/air-properties.js';
import type { Layer } from '../../src/layered/layer.js';

/** Room air used by the tests of layered walls. */
export const roomAir = airProperties({ temperature: 20, relativeHumidity: 0.5 });

const plate = (thickness: number, density: number, youngsModulus: number, lossFactor: number) =>
  ({ kind: 'plate', thickness, density, youngsModulus, poissonRatio: 0.3, lossFactor }) as const;
const gap = (thickness: number) => ({ kind: 'air-gap', thickness }) as const;

export const hardboard = plate(0.0032, 900, 4e9, 0.02);
export const board = plate(0.0125, 680, 2.5e9, 0.0125);
export const glass = plate(0.004, 2500, 6.7e10, 0.004);
export const batt = { kind: 'porous', thickness: 0.05, flowResistivity: 9000, density: 38 } as const;

/** Walls of very different character; the values are invented but ordinary. */
export const stacks: Readonly<Record<string, readonly Layer[]>> = {
  'single board': [board],
  'light plates on a deep empty cavity': [
    { ...board, lossFactor: 0.005 },
    gap(0.2),
    { ...hardboard, lossFactor: 0.005 },
  ],
  'double glass': [glass, gap(0.012), glass],
  'limp sheet 6 mm off hardboard': [hardboard, gap(0.006), { kind: 'limp-sheet', surfaceMass: 4.9 }],
  'triple leaf': [board, gap(0.1), board, gap(0.1), board],
  'filled double leaf': [board, batt, gap(0.013), board],
  'seven layers': [
    hardboard,
    gap(0.006),
    { kind: 'limp-sheet', surfaceMass: 4.9 },
    gap(0.013),
    batt,
    { kind: 'porous', thickness: 0.012, flowResistivity: 5000 },
    { kind: 'screen', flowResistance: 100, surfaceMass: 0.2 },
  ],
};
