import { describe, expect, it } from 'vitest';
import { losslessGaps } from '../../src/layered/air-gap-fluid.js';
import { Incidents } from '../../src/layered/angle-peaks.js';
import { putAnglePieces } from '../../src/layered/angle-pieces.js';
import { waveBlock } from '../../src/layered/kernel-in-use.js';
import type { Layer } from '../../src/layered/layer.js';
import { type PreparedStack, prepareStack } from '../../src/layered/prepared-stack.js';
import { followTransmittedBlock, transmissionCoefficient } from '../../src/layered/transmission-coefficient.js';
import { Pieces } from '../../src/math/pieces.js';
import { criticalFrequency } from '../../src/panels/critical-frequency.js';
import { roomAir as air, board, glass } from './stacks.js';

const sheet: Layer = { kind: 'limp-sheet', surfaceMass: 5 };
const gap: Layer = { kind: 'air-gap', thickness: 0.02 };

function shareAt(layers: readonly Layer[], hz: number, cosine: number): number {
  return transmissionCoefficient(layers, hz, Math.sqrt(1 - cosine * cosine), air, losslessGaps);
}

function peaksAmong(stack: PreparedStack, places: readonly number[]) {
  const scan = new Incidents();
  const { cosine } = waveBlock();
  places.forEach((place, i) => {
    cosine[i] = place;
  });
  followTransmittedBlock(stack, places.length);
  scan.note(stack, places.length);
  return scan.unresolvedPeaks(stack, (count) => followTransmittedBlock(stack, count));
}

describe('Incidents.unresolvedPeaks(stack, follow)', () => {
  const places = Array.from({ length: 15 }, (_, i) => (i + 0.5) / 15);

  it('finds the angle at which two sheets let all sound through, and where half of it passes', () => {
    const layers = [sheet, gap, sheet];
    for (const hz of [500, 1000, 3000]) {
      const found = peaksAmong(prepareStack(layers, hz, air, losslessGaps), places);
      expect(found).toHaveLength(1);
      const { place, halfWidth } = found[0]!;
      expect(shareAt(layers, hz, place)).toBeGreaterThan(0.9);
      expect(shareAt(layers, hz, place + halfWidth)).toBeGreaterThan(0.35);
      expect(shareAt(layers, hz, place + halfWidth)).toBeLessThan(0.65);
      expect(shareAt(layers, hz, place - halfWidth)).toBeGreaterThan(0.35);
      expect(shareAt(layers, hz, place - halfWidth)).toBeLessThan(0.65);
    }
  });

  it('finds nothing where the curve is smooth', () => {
    expect(peaksAmong(prepareStack([sheet], 1000, air, losslessGaps), places)).toEqual([]);
    expect(peaksAmong(prepareStack([board], 500, air, losslessGaps), places)).toEqual([]);
  });
});

describe('coincidences of a prepared stack', () => {
  it('tell the place and the width of the peak of a single plate', () => {
    for (const plate of [board, glass]) {
      const hz = 1.6 * criticalFrequency(plate, air);
      const { coincidences } = prepareStack([plate], hz, air, losslessGaps);
      expect(coincidences).toHaveLength(1);
      const { place, halfWidth } = coincidences[0]!;
      const top = shareAt([plate], hz, place);
      expect(shareAt([plate], hz, place + 0.3 * halfWidth)).toBeLessThan(top);
      expect(shareAt([plate], hz, place - 0.3 * halfWidth)).toBeLessThan(top);
      for (const beside of [place - halfWidth, place + halfWidth]) {
        expect(shareAt([plate], hz, beside) / top).toBeGreaterThan(0.3);
        expect(shareAt([plate], hz, beside) / top).toBeLessThan(0.7);
      }
    }
  });

  it('are where the pieces of the integration are stretched', () => {
    const stack = prepareStack([glass, gap, { ...glass, youngsModulus: 6e10 }], 5000, air, losslessGaps);
    const pieces = new Pieces();
    putAnglePieces(pieces, stack, 0, stack.coincidences);
    const places = new Set(pieces.centre.slice(0, pieces.count));
    expect(places).toEqual(new Set(stack.coincidences.map(({ place }) => place)));
    expect(places.size).toBe(2);
  });
});
