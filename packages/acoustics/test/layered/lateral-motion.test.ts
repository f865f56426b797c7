import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frictionOnly, losslessGaps } from '../../src/layered/air-gap-fluid.js';
import { transmissionWith } from '../../src/layered/diffuse-transmission-loss.js';
import { byLateralMotion, lateralMotion } from '../../src/layered/lateral-motion.js';
import type { Field, Layer } from '../../src/layered/layer.js';
import { roomAir as air } from './stacks.js';

const side = fc.double({ min: 0.02, max: 30, noNaN: true });
const frequency = fc.double({ min: 20, max: 6000, noNaN: true });
const shareOf = (parts: ReturnType<typeof lateralMotion>, share: number) =>
  parts.find((part) => part.share === share)?.weight ?? 0;

/** Mean of sinc^2(k u b/2) over the unit circle by plain steps over both coordinates of the trace. */
function uniformByGrid(b: number, hz: number, steps: number): number {
  const x = (Math.PI * hz * b) / air.soundSpeed;
  let sum = 0;
  let inside = 0;
  for (let i = 0; i < steps; i++) {
    const u = (i + 0.5) / steps;
    for (let j = 0; j < steps; j++) {
      if (u * u + ((j + 0.5) / steps) ** 2 > 1) continue;
      inside++;
      sum += (Math.sin(x * u) / (x * u)) ** 2;
    }
  }
  return sum / inside;
}

describe('lateralMotion({ width, height }, hz, air)', () => {
  it('has weights that are positive and add up to 1, and does not mind which side is the width', () => {
    fc.assert(
      fc.property(side, side, frequency, (width, height, hz) => {
        const parts = lateralMotion({ width, height }, hz, air);
        expect(parts.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
        for (const { weight } of parts) expect(weight).toBeGreaterThan(0);
        expect(lateralMotion({ width: height, height: width }, hz, air)).toEqual(parts);
      }),
    );
  });

  it('stays the same when sides grow as the wavelength does', () => {
    fc.assert(
      fc.property(side, side, frequency, fc.double({ min: 0.2, max: 5, noNaN: true }), (width, height, hz, scale) => {
        const small = lateralMotion({ width, height }, hz, air);
        const large = lateralMotion({ width: width * scale, height: height * scale }, hz / scale, air);
        // A part right at the limit below which it counts with its neighbour may go either way.
        for (const share of [0, 0.5, 1]) {
          expect(Math.abs(shareOf(large, share) - shareOf(small, share))).toBeLessThan(0.021);
        }
      }),
    );
  });

  it.each([
    [0.6, 100],
    [0.6, 1000],
    [2.4, 400],
    [0.6, 5000],
  ])('agrees with a grid over the circle of traces for a strip %d m wide at %d Hz', (b, hz) => {
    // A side much shorter than the wavelength leaves the other one to decide alone.
    const found = shareOf(lateralMotion({ width: b, height: 1e-6 }, hz, air), 0);
    expect(found).toBeCloseTo(uniformByGrid(b, hz, 1000), 3);
  });

  it('is continuous where the series for a wide cavity takes over', () => {
    const at = (x: number) => (x * air.soundSpeed) / (Math.PI * 500);
    const [below, above] = [29.999, 30.001].map((x) =>
      shareOf(lateralMotion({ width: at(x), height: 1e-6 }, 500, air), 0),
    );
    expect(Math.abs(below! - above!)).toBeLessThan(3e-5);
  });

  it('runs nowhere in a tiny cavity and everywhere in a huge one', () => {
    expect(shareOf(lateralMotion({ width: 0.01, height: 0.01 }, 50, air), 0)).toBeGreaterThan(0.999);
    expect(lateralMotion({ width: 500, height: 500 }, 5000, air)).toEqual([{ share: 1, weight: 1 }]);
  });
});

describe('byLateralMotion(losses, hz, air)', () => {
  it('is one part, the losses themselves, without bays', () => {
    expect(byLateralMotion(frictionOnly, 500, air)).toEqual([{ losses: frictionOnly, weight: 1 }]);
  });

  it('goes by the narrowest bay', () => {
    const narrow = { width: 0.4, height: 2.5 };
    const found = byLateralMotion({ friction: true, bays: [undefined, { width: 4, height: 2.5 }, narrow] }, 300, air);
    expect(found.map(({ weight }) => weight)).toEqual(lateralMotion(narrow, 300, air).map(({ weight }) => weight));
  });
});

describe('a wall with a cavity of finite size', () => {
  const sheet: Layer = { kind: 'limp-sheet', surfaceMass: 8 };
  const layers: Layer[] = [sheet, { kind: 'air-gap', thickness: 0.08 }, sheet];
  const limited: Field = { kind: 'limited', maximumAngleDeg: 78 };
  const bays = (size: { width: number; height: number }) => [undefined, size, undefined];

  it('tends to the wall of unlimited extent when the cavity is wide', () => {
    const wide = { ...frictionOnly, bays: bays({ width: 2000, height: 2000 }) };
    const found = transmissionWith(layers, 1000, air, limited, wide).coefficient;
    expect(found).toBe(transmissionWith(layers, 1000, air, limited, frictionOnly).coefficient);
  });

  it('with a cavity in which nothing runs has the closed form of a locally reacting spring', () => {
    // Each leaf j omega m; the air between moves straight across: cos kd, j Z0 sin kd, j sin kd/Z0.
    const hz = 600;
    const tiny = { ...losslessGaps, bays: bays({ width: 1e-4, height: 1e-4 }) };
    const k = (2 * Math.PI * hz) / air.soundSpeed;
    const [cos, sin] = [Math.cos(0.08 * k), Math.sin(0.08 * k)];
    const x = (2 * Math.PI * hz * 8) / air.impedance;
    const from = Math.cos((78 * Math.PI) / 180);
    let sum = 0;
    const steps = 20_000;
    for (let i = 0; i < steps; i++) {
      const q = from + ((1 - from) * (i + 0.5)) / steps;
      // A + D + B q/Z0 + C Z0/q of [1, jx][cos, j sin; j sin, cos][1, jx] in units of Z0.
      const re = 2 * (cos - x * sin);
      const im = q * (2 * x * cos + sin - x * x * sin) + sin / q;
      sum += (4 / (re * re + im * im)) * 2 * q;
    }
    const expected = (sum * (1 - from)) / steps / Math.sin((78 * Math.PI) / 180) ** 2;
    const found = transmissionWith(layers, hz, air, limited, tiny).coefficient;
    expect(Math.abs(found / expected - 1)).toBeLessThan(0.005);
  });

  it('is the same from either side', () => {
    const uneven: Layer[] = [sheet, { kind: 'air-gap', thickness: 0.08 }, { kind: 'limp-sheet', surfaceMass: 3 }];
    const losses = { ...frictionOnly, bays: bays({ width: 0.6, height: 2.4 }) };
    for (const hz of [60, 150, 500, 2000]) {
      const there = transmissionWith(uneven, hz, air, limited, losses).coefficient;
      const back = transmissionWith(uneven.toReversed(), hz, air, limited, losses).coefficient;
      expect(Math.abs(there / back - 1)).toBeLessThan(0.01);
    }
  });
});
