import { describe, expect, it } from 'vitest';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { bandTransmissionLoss } from '../../src/layered/band-transmission-loss.js';
import { diffuseTransmission, diffuseTransmissionLoss } from '../../src/layered/diffuse-transmission-loss.js';
import { fixedRuleTransmissionLoss } from '../../src/layered/fixed-rule-transmission-loss.js';
import { checkLayers, type Layer } from '../../src/layered/layer.js';
import { surfaceMass } from '../../src/layered/surface-mass.js';
import { stackMatrix, transferMatrix } from '../../src/layered/transfer-matrix.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { soundTransmissionClass } from '../../src/ratings/sound-transmission-class.js';
import { weightedSoundReduction } from '../../src/ratings/weighted-sound-reduction.js';
import { roomAir as air, batt, board } from './stacks.js';

const field = { kind: 'finite', size: { width: 2, height: 2.5 } } as const;
const conditions = { air, field, samplesPerBand: 1 } as const;
/** What a program without types may hand over. */
const untyped = (value: unknown) => value as never;

const entries = {
  wallTransmissionLoss: (layers: unknown, more: unknown = conditions) =>
    wallTransmissionLoss({ layers: untyped(layers), connections: [] }, untyped(more)),
  bandTransmissionLoss: (layers: unknown, more: unknown = conditions) =>
    bandTransmissionLoss(untyped(layers), untyped(more)),
  fixedRuleTransmissionLoss: (layers: unknown, more: unknown = conditions) =>
    fixedRuleTransmissionLoss(untyped(layers), untyped(more), { samplesPerBand: 1, angles: 16 }),
  diffuseTransmission: (layers: unknown, more: unknown = conditions) =>
    diffuseTransmission(untyped(layers), 500, untyped(more)),
  diffuseTransmissionLoss: (layers: unknown, more: unknown = conditions) =>
    diffuseTransmissionLoss(untyped(layers), [500], untyped(more)),
};

describe.each(Object.entries(entries))('%s', (_name, run) => {
  const expectError = (work: () => unknown, words: string) => {
    expect(work).toThrow(ArgumentError);
    expect(work).toThrow(words);
  };

  it('names a layer of no known kind by its place, with the kinds there are', () => {
    expectError(
      () => run([board, { kind: 'wool', thickness: 0.1 }]),
      'layer 2: kind is wool, expected plate, limp-sheet, air-gap, porous or screen',
    );
    expectError(() => run([board, 'gypsum']), 'layer 2 is gypsum, expected a layer with kind plate, limp-sheet');
    expectError(() => run([undefined, board]), 'layer 1 is undefined, expected a layer with kind plate');
    // biome-ignore lint/suspicious/noSparseArray: a hole in a list is what is tried here.
    expectError(() => run([board, , board]), 'layer 2 is undefined');
    expectError(() => run([{ thickness: 0.1 }]), 'layer 1: kind is undefined');
    expectError(() => run(undefined), 'layers of the wall is undefined, expected a list of layers');
  });

  it('takes no empty list for a wall, and layers of no thickness for one', () => {
    expectError(() => run([]), 'number of layers is 0, expected at least one layer');
    expect(() => run([{ ...board, thickness: 0 }])).not.toThrow();
  });

  it('names air and field that are missing or of no known kind', () => {
    expectError(() => run([board], null), 'surroundings of the wall is null');
    expectError(() => run([board], { field }), 'air is undefined, expected what airProperties gives');
    expectError(() => run([board], { air: {}, field }), 'speed of sound in the air is undefined');
    expectError(() => run([board], { air }), 'field is undefined, expected { kind:');
    expectError(() => run([board], { air, field: 'diffuse' }), 'field is diffuse');
    expectError(() => run([board], { air, field: { kind: 'diffuse' } }), 'kind of the field is diffuse');
    expectError(() => run([board], { air, field: { kind: 'finite' } }), 'size of the panel is undefined');
    expectError(
      () => run([board], { air, field: { kind: 'finite', size: { width: 0, height: 1 } } }),
      'panel width is 0',
    );
  });
});

it('wallTransmissionLoss and bandTransmissionLoss name samples and connections that cannot be', () => {
  for (const samplesPerBand of [0, -1, 1.5, Number.NaN]) {
    const of = { air, field, samplesPerBand };
    expect(() => bandTransmissionLoss([board], of)).toThrow(ArgumentError);
    expect(() => wallTransmissionLoss({ layers: [board], connections: [] }, of)).toThrow(
      `number of samples per band is ${samplesPerBand}, expected a whole number above 0`,
    );
  }
  const bare = untyped({ layers: [board] });
  expect(() => wallTransmissionLoss(bare, conditions)).toThrow(ArgumentError);
  expect(() => wallTransmissionLoss(bare, conditions)).toThrow('connections of the wall is undefined');
  expect(() => wallTransmissionLoss(untyped(undefined), conditions)).toThrow('wall is undefined');
});

it('transferMatrix and stackMatrix name a sine above 1, a frequency of 0 and a layer that is none', () => {
  for (const sine of [1.01, -0.1, Number.NaN]) {
    expect(() => transferMatrix(board, 500, sine, air)).toThrow(ArgumentError);
    expect(() => stackMatrix([board, batt], 500, sine, air)).toThrow(`sine of the angle of incidence is ${sine}`);
  }
  expect(() => transferMatrix(board, 0, 0.5, air)).toThrow('frequency is 0');
  expect(() => transferMatrix(untyped({ kind: 'wool' }), 500, 0.5, air)).toThrow('layer 1: kind is wool');
});

it('checkLayers and surfaceMass take an empty list, which has no mass', () => {
  expect(() => checkLayers([])).not.toThrow();
  expect(surfaceMass([])).toBe(0);
});

describe('a wall that lets nothing through in the range of numbers', () => {
  it.each([
    ['fibre of 1e9 Pa s/m2', [board, { kind: 'porous', thickness: 0.1, flowResistivity: 1e9 }, board]],
    ['1 m of dense wool', [board, { kind: 'porous', thickness: 1, flowResistivity: 1e6 }, board]],
    ['10 t/m2 of concrete', [{ ...board, thickness: 4.3, density: 2330, youngsModulus: 3e10 }]],
  ] as const)('%s has finite figures, which ratings take', (_name, layers) => {
    const found = wallTransmissionLoss({ layers: layers as readonly Layer[], connections: [] }, conditions);
    expect(found.total.every(Number.isFinite)).toBe(true);
    expect(bandTransmissionLoss(layers as readonly Layer[], conditions).every(Number.isFinite)).toBe(true);
    expect(soundTransmissionClass(found.total).stc).toBeGreaterThan(60);
    expect(weightedSoundReduction(found.total).rw).toBeGreaterThan(60);
  });
});
