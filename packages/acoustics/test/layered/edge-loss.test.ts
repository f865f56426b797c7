import { describe, expect, it } from 'vitest';
import { builtIn, edgeLossFactor, leafInPlace } from '../../src/layered/edge-loss.js';
import type { Field, Layer } from '../../src/layered/layer.js';
import { leafAt } from '../../src/layered/leaf.js';
import { roomAir as air, board, hardboard } from './stacks.js';

const finite: Field = { kind: 'finite', size: { width: 2, height: 1.2 } };
const lossOf = (layer: Layer | undefined) => (layer?.kind === 'plate' ? layer.lossFactor : undefined);

describe('edgeLossFactor(surfaceMass, hz)', () => {
  it('is m/(485 sqrt f), worked by hand', () => {
    expect(edgeLossFactor(485, 100)).toBeCloseTo(0.1, 12);
    expect(edgeLossFactor(0, 100)).toBe(0);
  });

  it('doubles with mass up to 800 kg/m2 and stays there; halves with four times the frequency', () => {
    expect(edgeLossFactor(400, 500)).toBeCloseTo(2 * edgeLossFactor(200, 500), 12);
    expect(edgeLossFactor(10_000, 500)).toBe(edgeLossFactor(800, 500));
    expect(edgeLossFactor(400, 2000)).toBeCloseTo(edgeLossFactor(400, 500) / 2, 12);
  });

  it('names what it cannot use', () => {
    expect(() => edgeLossFactor(-1, 500)).toThrow('surface mass is -1');
    expect(() => edgeLossFactor(100, 0)).toThrow('frequency is 0');
  });
});

describe('builtIn(layers, hz, field)', () => {
  const gap = { kind: 'air-gap', thickness: 0.05 } as const;
  const absent = { kind: 'air-gap', thickness: 0 } as const;
  const sheet = { kind: 'limp-sheet', surfaceMass: 5 } as const;

  it('gives each plate the edge loss of its whole leaf, as leafInPlace does, and changes nothing else', () => {
    const layers: Layer[] = [gap, board, absent, board, sheet, gap, hardboard, gap];
    const found = builtIn(layers, 500, finite);
    const outer = leafAt(layers, 1, air);
    expect(lossOf(found[1])).toBeCloseTo(0.0125 + edgeLossFactor(2 * 680 * 0.0125 + 5, 500), 12);
    expect(lossOf(found[3])).toBe(lossOf(found[1]));
    expect(leafInPlace(outer, 500, finite).lossFactor).toBeCloseTo(lossOf(found[1])!, 12);
    expect(lossOf(found[6])).toBeCloseTo(0.02 + edgeLossFactor(900 * 0.0032, 500), 12);
    for (const index of [0, 2, 4, 5, 7]) expect(found[index]).toBe(layers[index]);
  });

  it('leaves an unlimited panel as it is', () => {
    const limited: Field = { kind: 'limited', maximumAngleDeg: 78 };
    expect(builtIn([board], 500, limited)).toEqual([board]);
    expect(leafInPlace(leafAt([board], 0, air), 500, limited).lossFactor).toBe(0.0125);
  });
});
