import { describe, expect, test } from 'vitest';
import * as a from '../../src/index.js';
import { air, board, fibre, panel } from '../predictions/reference-inputs.js';

const leaf = a.leafAt([board], 0, air);
const size = panel.size;
const studs = { between: [0, 2], spacing: 0.6 } as const;
const steel = { spacing: 0.6, flangeWidth: 0.035, sheetThickness: 0.0005, screwSpacing: 0.3 };
const layers = [board, fibre, board];
const conditions = { air, field: panel };
const none = undefined as never;
const wallOf = (parts: object) => () => a.wallTransmissionLoss({ layers, connections: [], ...parts }, conditions);
const throughStuds = (connection: a.LineConnection, hz: number) =>
  a.connectionTransmission(connection, leaf, leaf, 1e-6, hz, air, panel);

const calls: readonly (readonly [string, () => unknown])[] = [
  ['number of cavities is 0, expected one less than leaves', () => a.cavityResonances([8, 8], [], air)],
  ['surface mass of leaf 2 is 0', () => a.cavityResonances([8, 0], [{ thickness: 0.1 }], air)],
  ['thickness of cavity 1 is 0', () => a.cavityResonances([8, 8], [{ thickness: 0 }], air)],
  ['thickness of cavity 1 is undefined', () => a.cavityResonances([8, 8], [null as never], air)],
  ['surface masses of the leaves is undefined', () => a.cavityResonances(none, [], air)],
  ['cavities is undefined', () => a.cavityResonances([8], none, air)],
  ['air is undefined', () => a.cavityResonances([8, 8], [{ thickness: 0.1 }], none)],
  ['layer 1: kind is toString', () => a.diffuseAbsorption([{ kind: 'toString' } as never], 500, air, 'rigid')],
  ['air is undefined', () => a.diffuseAbsorption([fibre], 500, none, 'rigid')],
  ['frequency is 0', () => a.diffuseAbsorption([fibre], 0, air, 'rigid')],
  ['backing is "hard"', () => a.diffuseAbsorption([fibre], 500, air, 'hard' as never)],
  ['surroundings of the lining is undefined', () => a.stackAbsorption([fibre], none)],
  ['air is undefined', () => a.stackAbsorption([fibre], { backing: 'rigid' } as never)],
  ['air is undefined', () => a.normalIncidenceAbsorption([fibre], [500], { backing: 'rigid' } as never)],
  ['path of the vibration is "x", expected cross-straight,', () => a.junctionVibrationIndex('x' as never, 200, 200)],
  ['absorption of the rim is 1.5', () => a.rimLossRate(1.5, 1, 2, air)],
  ['absorption of the rim is -0.1', () => a.rimLossRate(-0.1, 1, 2, air)],
  ['width of the cavity is 0', () => a.rimLossRate(0.1, 0, 2, air)],
  ['height of the cavity is -2', () => a.rimLossRate(0.1, 1, -2, air)],
  ['wavenumber is -1', () => a.finiteRadiationFactor(-1, 0.5, size)],
  ['sine of the angle is NaN', () => a.finiteRadiationFactor(5, Number.NaN, size)],
  ['width of the window is 0', () => a.finiteRadiationFactor(5, 0.5, { ...size, width: 0 })],
  ['height of the window is -1', () => a.finiteRadiationFactor(5, 0.5, { ...size, height: -1 })],
  ['width of the window is undefined', () => a.finiteRadiationFactor(5, 0.5, none)],
  ['frequency is 0', () => a.lineImpedance(leaf, 0, 0)],
  ['width of studs is -1', () => a.lineImpedance(leaf, 500, -1)],
  ['surface mass of the leaf is undefined', () => a.lineImpedance(none, 500, 0)],
  ['spacing of studs is 0', () => a.couplingLossFactor(leaf, leaf, { ...studs, spacing: 0 }, 500)],
  ['frequency is -500', () => a.couplingLossFactor(leaf, leaf, studs, -500)],
  ['spacing of studs is -0.6', () => throughStuds({ ...studs, spacing: -0.6 }, 500)],
  ['spacing of studs is undefined', () => throughStuds(none, 500)],
  ['frequency is 0', () => throughStuds(studs, 0)],
  ['spacing of studs is 0', () => a.steelStuds([0, 2], { ...steel, spacing: 0 })],
  ['width of the flange is 0', () => a.steelStuds([0, 2], { ...steel, flangeWidth: 0 })],
  ['thickness of the sheet is 0', () => a.steelStuds([0, 2], { ...steel, sheetThickness: 0 })],
  ['spacing of screws is 0', () => a.steelStuds([0, 2], { ...steel, screwSpacing: 0 })],
  ['stud is undefined', () => a.steelStuds([0, 2], none)],
  ['connection 1 is null', wallOf({ connections: [null] })],
  ['between of connection 2 is undefined', wallOf({ connections: [studs, { spacing: 0.6 }] })],
  ['between of connection 1 is [0]', wallOf({ connections: [{ between: [0], spacing: 0.6 }] })],
  ['separate frames of the wall is 3', wallOf({ separateFrames: 3 })],
  ['separate frame 1 is null', wallOf({ separateFrames: [null] })],
  ['between of separate frame 1 is undefined', wallOf({ separateFrames: [{ spacing: 0.6 }] })],
];

describe('what no wall or lining can be', () => {
  test.each(calls)('%s', (message, run) => {
    expect(run).toThrow(a.ArgumentError);
    expect(run).toThrow(message);
  });

  test('the same calls with right arguments give finite figures', () => {
    const found = [
      ...a.cavityResonances([8, 8], [{ thickness: 0.1 }], air),
      a.diffuseAbsorption([fibre], 500, air, 'rigid'),
      a.junctionVibrationIndex('tee-corner', 200, 200),
      a.rimLossRate(0.1, 1, 2, air),
      a.finiteRadiationFactor(5, 0.5, size),
      a.lineImpedance(leaf, 500, 0).re,
      a.couplingLossFactor(leaf, leaf, studs, 500),
      throughStuds(studs, 500),
      ...wallOf({ connections: [a.steelStuds([0, 2], steel)], separateFrames: [studs] })().total,
    ];
    expect(found.filter((value) => !(Number.isFinite(value) && value > 0))).toEqual([]);
  });
});
