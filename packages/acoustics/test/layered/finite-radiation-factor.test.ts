import { describe, expect, it } from 'vitest';
import { finiteRadiationFactor, overlap } from '../../src/layered/finite-radiation-factor.js';
import { lookUpRadiation, radiationTable } from '../../src/layered/radiation-table.js';
import { gaussLegendre } from '../../src/math/gauss-legendre.js';

/** Points of a composite Gauss rule on from .. to. */
function points(from: number, to: number, pieces: number): { x: number; w: number }[] {
  const rule = gaussLegendre(8);
  const half = (to - from) / pieces / 2;
  return Array.from({ length: pieces }, (_, piece) =>
    rule.nodes.map((node, i) => ({ x: from + half * (2 * piece + 1 + node), w: half * rule.weights[i]! })),
  ).flat();
}

/**
 * The radiated power by brute force: sigma = k/(2 pi S) over all pairs of points of sin(k r)/r cos(kx x) cos(ky y). A pair
 * counts only through its shift (x, y), which leaves a double integral over shifts with the number of pairs of each.
 */
function bruteForce(k: number, sine: number, azimuth: number, a: number, b: number): number {
  const kx = k * sine * Math.cos(azimuth);
  const ky = k * sine * Math.sin(azimuth);
  let sum = 0;
  for (const { x, w: wx } of points(0, a, Math.ceil(k * a) + 4)) {
    for (const { x: y, w: wy } of points(0, b, Math.ceil(k * b) + 4)) {
      const r = Math.hypot(x, y);
      sum += 4 * wx * wy * (a - x) * (b - y) * (Math.sin(k * r) / r) * Math.cos(kx * x) * Math.cos(ky * y);
    }
  }
  return (k / (2 * Math.PI * a * b)) * sum;
}

/** The same as a plain fourfold sum over pairs of small cells, for a small window. */
function fourfold(k: number, sine: number, azimuth: number, a: number, b: number, cells: number): number {
  const kx = k * sine * Math.cos(azimuth);
  const ky = k * sine * Math.sin(azimuth);
  let sum = 0;
  for (let x1 = 0; x1 < cells; x1++) {
    for (let y1 = 0; y1 < cells; y1++) {
      for (let x2 = 0; x2 < cells; x2++) {
        for (let y2 = 0; y2 < cells; y2++) {
          const x = ((x1 - x2) * a) / cells;
          const y = ((y1 - y2) * b) / cells;
          const r = Math.hypot(x, y);
          sum += (r === 0 ? k : Math.sin(k * r) / r) * Math.cos(kx * x + ky * y);
        }
      }
    }
  }
  return ((k / (2 * Math.PI)) * a * b * sum) / cells ** 4;
}

describe('finiteRadiationFactor(k, sinTheta, size)', () => {
  it('agrees with the double integral over shifts averaged over 48 azimuths', () => {
    for (const [a, b] of [
      [1.5, 1.25],
      [2, 0.5],
    ] as const) {
      for (const k of [1, 6, 20]) {
        for (const sine of [0, 0.5, 0.9, 1]) {
          let mean = 0;
          for (let i = 0; i < 48; i++) mean += bruteForce(k, sine, ((i + 0.5) * Math.PI) / 96, a, b) / 48;
          expect(finiteRadiationFactor(k, sine, { width: a, height: b }) / mean - 1).toBeCloseTo(0, 5);
        }
      }
    }
  });

  it('agrees within 1 % with the fourfold sum over pairs of points', () => {
    for (const sine of [0, 0.7, 1]) {
      let mean = 0;
      for (let i = 0; i < 8; i++) mean += fourfold(5, sine, ((i + 0.5) * Math.PI) / 16, 1.2, 0.8, 20) / 8;
      expect(Math.abs(finiteRadiationFactor(5, sine, { width: 1.2, height: 0.8 }) / mean - 1)).toBeLessThan(0.01);
    }
  });

  it('tends to 1/cos(theta) for a window of very many wavelengths', () => {
    for (const sine of [0, 0.5, 0.8]) {
      const cosine = Math.sqrt(1 - sine * sine);
      expect(finiteRadiationFactor(100, sine, { width: 8, height: 8 }) * cosine).toBeCloseTo(1, 3);
    }
  });

  it('tends to k^2 S/(2 pi) for a window small against the wavelength, whatever the angle', () => {
    for (const sine of [0, 1]) {
      expect(finiteRadiationFactor(0.05, sine, { width: 0.4, height: 0.3 })).toBeCloseTo(
        (0.05 ** 2 * 0.12) / (2 * Math.PI),
        7,
      );
    }
  });

  it('stays finite at grazing incidence', () => {
    expect(finiteRadiationFactor(50, 1, { width: 2, height: 1 })).toBeGreaterThan(1);
    expect(finiteRadiationFactor(50, 1, { width: 2, height: 1 })).toBeLessThan(20);
  });

  it('does not care which side is called the width', () => {
    expect(finiteRadiationFactor(9, 0.8, { width: 2, height: 0.7 })).toBe(
      finiteRadiationFactor(9, 0.8, { width: 0.7, height: 2 }),
    );
  });
});

describe('overlap(r, short, long)', () => {
  it('is the azimuth average of the overlap of the rectangle with itself in all three ranges', () => {
    const count = 20000;
    for (const r of [0, 0.3, 0.79, 0.81, 1.5, 1.99, 2.01, 2.1, 2.2]) {
      let mean = 0;
      for (let i = 0; i < count; i++) {
        const phi = ((i + 0.5) * Math.PI) / 2 / count;
        const [x, y] = [r * Math.cos(phi), r * Math.sin(phi)];
        mean += (Math.max(0, 1 - x / 2) * Math.max(0, 1 - y / 0.8)) / count;
      }
      expect(overlap(r, 0.8, 2)).toBeCloseTo(mean, 7);
    }
  });
});

describe('lookUpRadiation(radiationTable(k, size), cosine)', () => {
  it('differs by less than 1 % (0.04 dB) from the integral for windows of 0.5 to 4 m at all bands', () => {
    let worst = 0;
    for (const [width, height] of [
      [1, 1],
      [2, 1.2],
      [4, 0.8],
      [0.5, 4],
      [4, 2.5],
    ] as const) {
      for (const k of [0.9, 2, 5, 9, 14, 20, 33, 50, 80, 103]) {
        const table = radiationTable(k, { width, height });
        for (let i = 0; i <= 97; i++) {
          const cosine = i / 97;
          const exact = finiteRadiationFactor(k, Math.sqrt(1 - cosine * cosine), { width, height });
          worst = Math.max(worst, Math.abs(lookUpRadiation(table, cosine) / exact - 1));
        }
      }
    }
    expect(worst).toBeLessThan(0.01);
  });
});
