import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import type { Complex } from '../../src/math/complex.js';
import { admittanceOfAbsorption } from '../../src/rooms/admittance-of-absorption.js';
import type { BoxWalls } from '../../src/rooms/box-geometry.js';
import { boxModalTransfer } from '../../src/rooms/box-modal-transfer.js';
import { boxRayDecay } from '../../src/rooms/box-ray-decay.js';
import { boxTransferGrid } from '../../src/rooms/box-transfer-grid.js';
import { dampedModes } from '../../src/rooms/damped-modes.js';
import { decayOfExponentials } from '../../src/rooms/decay-of-exponentials.js';
import { eyringTime } from '../../src/rooms/eyring-time.js';
import { finiteReflector, fresnel } from '../../src/rooms/finite-reflector.js';
import { modesOfBand } from '../../src/rooms/modes-of-band.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const size = [1.8, 1.2, 2.1] as const;
const all = <Value>(value: Value): BoxWalls<Value> => ({
  left: value,
  right: value,
  front: value,
  back: value,
  floor: value,
  ceiling: value,
});
const band = { lower: 111.2, exact: 125.9, upper: 141.3 };
const off: Complex = { re: 0, im: 0 };

describe('boxTransferGrid(size, places, hz, admittances, nepers, air)', () => {
  const walls = { ...all({ re: 0.3, im: 0.2 }), floor: { re: 0.02, im: 0 } };
  const hz = [50, 125, 300, 900];
  test.each([
    [12, 0.001],
    [5, 0.1],
    [4, 0.3],
  ])('with %f nepers is boxModalTransfer to %f dB', (nepers, within) => {
    const xs = [[0.5, 0.55] as const, [0.9, 0.95] as const];
    const ys = [[0.7, 0.5] as const, [0.9, 0.7] as const];
    const zs = [[1.5, 1.45] as const];
    const grid = boxTransferGrid(size, [xs, ys, zs], hz, () => walls, nepers, air);
    xs.forEach((x, i) => {
      ys.forEach((y, j) => {
        const path = { size, source: [x[0], y[0], 1.5], receiver: [x[1], y[1], 1.45] } as const;
        boxModalTransfer(
          path,
          hz,
          () => walls,
          () => 0,
          air,
        ).forEach((value, at) => {
          const level = 10 * Math.log10(value.re ** 2 + value.im ** 2);
          expect(Math.abs(grid[at * 4 + i * 2 + j]! - level)).toBeLessThan(within);
        });
      });
    });
  });
  test('refuses a receiver at the source', () => {
    const same = [[0.5, 0.5]] as const;
    expect(() => boxTransferGrid(size, [same, same, same], hz, () => walls, 5, air)).toThrow('distance of source');
  });
});

describe('modesOfBand(size, source, receiver, band, walls, least, air)', () => {
  const source = [0.5, 0.7, 1.5] as const;
  const receiver = [0.5, 0.5, 1.45] as const;
  test('agrees with dampedModes of the same frozen walls in the band', () => {
    const walls = all({ re: 0.05, im: 0.03 });
    const searched = dampedModes(size, () => walls, 200, air);
    const inside = modesOfBand(size, source, receiver, band, walls, 1e-4, air).filter(
      ({ hz }) => hz > band.lower && hz < band.upper,
    );
    expect(inside.length).toBeGreaterThan(0);
    for (const mode of inside) {
      const other = searched.find(({ order }) => order.join() === mode.order.join());
      expect(Math.abs(mode.damping / other!.damping! - 1)).toBeLessThan(0.1);
      expect(Math.abs(mode.hz / other!.hz! - 1)).toBeLessThan(0.02);
    }
  });
  test('gives every mode a root of its own, also near an admittance of 1', () => {
    for (const beta of [0.5, 0.9, 1, 1.1, 2]) {
      const found = modesOfBand(size, source, receiver, band, all({ re: beta, im: 0.4 }), 0, air);
      expect(found.length).toBeGreaterThan(1);
      const roots = found.map(({ hz, damping }) => `${hz.toFixed(3)} ${damping.toFixed(3)}`);
      expect(new Set(roots).size).toBe(roots.length);
      for (const { damping, hz } of found) expect(damping > 0 && hz > 0).toBe(true);
    }
  });
  test('hears nothing of a mode with its node at the receiver', () => {
    // The mode 0-1-0 of 1.2 m, 143 Hz, vanishes at 0.6 m.
    const modes = modesOfBand(size, [0.5, 0.2, 1.5], [0.5, 0.6, 1.5], band, all(off), 0, air);
    const mode = modes.find(({ order }) => order.join() === '0,1,0');
    expect(mode!.share).toBeLessThan(1e-6);
  });
});

describe('decayOfExponentials(parts)', () => {
  test('is 6 ln 10 / rate for one part', () => {
    const times = decayOfExponentials([{ energy: 3, rate: 40 }])!;
    for (const time of Object.values(times)) expect(time).toBeCloseTo((6 * Math.LN10) / 40, 8);
  });
  test('lies between its parts, early times shorter than late ones', () => {
    const { edt, t20, t30 } = decayOfExponentials([
      { energy: 1, rate: 200 },
      { energy: 0.05, rate: 30 },
    ])!;
    expect(edt).toBeGreaterThan((6 * Math.LN10) / 200);
    expect(t20).toBeGreaterThan(edt);
    expect(t30).toBeGreaterThan(t20);
    expect(t30).toBeLessThan((6 * Math.LN10) / 30);
  });
  test('is null for what never decays', () => {
    expect(decayOfExponentials([{ energy: 1, rate: 0 }])).toBeNull();
    expect(decayOfExponentials([])).toBeNull();
  });
});

describe('boxRayDecay(size, absorption, attenuation, objects, air)', () => {
  const volume = 1.8 * 1.2 * 2.1;
  const surface = 2 * (1.8 * 1.2 + 1.8 * 2.1 + 1.2 * 2.1);
  test('starts as the mixed sound of a cube and ends slower', () => {
    const cube = boxRayDecay([2, 2, 2], all(0.2), 0, 0, air)!;
    const eyring = eyringTime(8, 24, 0.2, 0, air);
    expect(cube.edt / eyring).toBeGreaterThan(0.97);
    expect(cube.edt / eyring).toBeLessThan(1.15);
    expect(cube.t30).toBeGreaterThan(cube.edt);
  });
  test('is far slower than Eyring where two pairs of walls are hard', () => {
    const uneven = { ...all(0.03), left: 0.8, right: 0.8 };
    const mean = (surface * 0.03 + 2 * 1.2 * 2.1 * 0.77) / surface;
    expect(boxRayDecay(size, uneven, 0, 0, air)!.t20).toBeGreaterThan(2 * eyringTime(volume, surface, mean, 0, air));
  });
  test('never gets longer by more absorption', () => {
    let last = Number.POSITIVE_INFINITY;
    for (const alpha of [0.05, 0.1, 0.3, 0.6, 0.9, 1]) {
      const { t20 } = boxRayDecay(size, { ...all(0.2), back: alpha }, 0, 0, air)!;
      expect(t20).toBeLessThanOrEqual(last);
      last = t20;
    }
  });
  test('counts air and objects as Sabine does where nothing else absorbs', () => {
    const { t30 } = boxRayDecay(size, all(0), 0, 0.5, air)!;
    expect(t30).toBeCloseTo(((24 * Math.LN10) / air.soundSpeed) * (volume / 0.5), 6);
    expect(boxRayDecay(size, all(0), 0, 0, air)).toBeNull();
  });
});

describe('admittanceOfAbsorption(absorption)', () => {
  test('is an eighth of a small coefficient', () => {
    expect(admittanceOfAbsorption(0.001) / (0.001 / 8)).toBeCloseTo(1, 2);
    expect(admittanceOfAbsorption(0)).toBeCloseTo(0, 12);
  });
  test('gives back the coefficient by the integral over angles', () => {
    for (const alpha of [0.1, 0.5, 0.9]) {
      const b = admittanceOfAbsorption(alpha);
      let sum = 0;
      const steps = 20000;
      for (let n = 0; n < steps; n++) {
        const cos = (n + 0.5) / steps;
        sum += (2 * ((4 * b * cos) / (cos + b) ** 2) * cos) / steps;
      }
      expect(sum).toBeCloseTo(alpha, 4);
    }
  });
  test('stops at what a real wall can reach', () => {
    expect(admittanceOfAbsorption(1)).toBeCloseTo(0.6379, 4);
  });
});

describe('finiteReflector(edges, distances, wavelength)', () => {
  const square = (half: number) => ({ from: -half, to: half, cosine: 1 });
  test('is 0 dB for a very large plate and -6 dB at the edge of a half plane', () => {
    expect(Math.abs(finiteReflector([square(1e4), square(1e4)], [1, 1], 0.1))).toBeLessThan(0.02);
    const half = { from: 0, to: 1e4, cosine: 1 };
    expect(finiteReflector([half, square(1e4)], [1, 1], 0.1)).toBeCloseTo(-6, 1);
  });
  test('tends to 20 lg(2 S / (lambda a)) for a plate much smaller than the zone', () => {
    // K = (v2 - v1)^2 / 2 each, v2 - v1 = 2 w / sqrt(lambda a): K1 K2 = (2 S / (lambda a))^2, a = 1 m, S = 0.01 m2.
    const level = finiteReflector([square(0.05), square(0.05)], [1, 1], 3);
    expect(level).toBeCloseTo(20 * Math.log10((2 * 0.01) / 3), 2);
  });
  test('falls as the point of reflection leaves the plate', () => {
    const at = (centre: number) =>
      finiteReflector([{ from: centre - 0.2, to: centre + 0.2, cosine: 1 }, square(0.2)], [0.5, 0.5], 0.2);
    expect(at(0)).toBeGreaterThan(at(0.3));
    expect(at(0.3)).toBeGreaterThan(at(0.8));
  });
  // M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, Table 7.7 (from memory): C(1), S(1), C(2), S(2).
  test('fresnel(x) has the tabled values at 1 and 2 and a limit of a half', () => {
    expect(fresnel(1)[0]).toBeCloseTo(0.7798934, 6);
    expect(fresnel(1)[1]).toBeCloseTo(0.4382591, 6);
    expect(Math.abs(fresnel(2)[0] - 0.4882534)).toBeLessThan(0.002);
    expect(Math.abs(fresnel(2)[1] - 0.3434157)).toBeLessThan(0.002);
    expect(fresnel(-1)[0]).toBeCloseTo(-0.7798934, 6);
    expect(Math.abs(fresnel(100)[0] - 0.5)).toBeLessThan(0.01);
  });
});
