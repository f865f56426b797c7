import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thirdOctaveBands } from '../../src/bands/bands.js';
import { defaultRimAbsorption } from '../../src/layered/air-gap-fluid.js';
import { bandMeans } from '../../src/layered/band-means.js';
import { gapLosses, transmissionWith } from '../../src/layered/diffuse-transmission-loss.js';
import type { Field, Layer } from '../../src/layered/layer.js';
import { roomAir as air } from './stacks.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const finite: Field = { kind: 'finite', size: { width: 2, height: 1.2 } };
const limited: Field = { kind: 'limited', maximumAngleDeg: 78 };

const board = fc.record({
  kind: fc.constant('plate' as const),
  thickness: between(0.003, 0.02),
  density: between(500, 1200),
  youngsModulus: between(2e9, 5e9),
  poissonRatio: fc.constant(0.3),
  lossFactor: between(0.01, 0.05),
});
const gap = fc.record({ kind: fc.constant('air-gap' as const), thickness: between(0.005, 0.05) });
const sheet = fc.record({ kind: fc.constant('limp-sheet' as const), surfaceMass: between(2, 10) });
const fibre = fc.record({
  kind: fc.constant('porous' as const),
  thickness: between(0.02, 0.1),
  flowResistivity: between(4000, 30000),
  density: between(10, 80),
});
/** Walls as they are built: one or two leaves, with fibre in every cavity. */
const anyWall: fc.Arbitrary<Layer[]> = fc.oneof(
  board.map((leaf) => [leaf]),
  fc.tuple(board, fibre, board).map((layers) => [...layers]),
  fc.tuple(fibre, sheet, gap, board).map((layers) => [...layers]),
  fc.tuple(board, gap, fibre, fc.oneof(board, sheet)).map((layers) => [...layers]),
);

function spectrum(layers: readonly Layer[], field: Field) {
  const losses = gapLosses(layers, field, defaultRimAbsorption, air);
  let asked = 0;
  const paths = (hz: number) => {
    asked++;
    const { coefficient, converged } = transmissionWith(layers, hz, air, field, losses);
    return { values: [coefficient], converged };
  };
  return { paths, asked: () => asked };
}

describe('bandMeans(paths)', () => {
  it('is within 0.2 dB of 64 samples in every band, the first and the last included, for random walls', () => {
    fc.assert(
      fc.property(anyWall, fc.constantFrom(finite, limited), (layers, field) => {
        const { paths } = spectrum(layers, field);
        const [found] = bandMeans(paths);
        const [expected] = bandMeans(paths, { samplesPerBand: 64 });
        found!.forEach((mean, band) => {
          expect(Math.abs(10 * Math.log10(mean / expected![band]!)), `band ${band}`).toBeLessThan(0.2);
        });
      }),
      { numRuns: 12, seed: 4 },
    );
  });

  it('asks at about two frequencies a band for a damped wall', () => {
    const { paths, asked } = spectrum(
      [
        { kind: 'limp-sheet', surfaceMass: 5 },
        { kind: 'porous', thickness: 0.05, flowResistivity: 10000, density: 40 },
        { kind: 'limp-sheet', surfaceMass: 5 },
      ],
      limited,
    );
    bandMeans(paths);
    expect(asked()).toBeGreaterThanOrEqual(thirdOctaveBands.length + 3);
    expect(asked()).toBeLessThan(2.5 * thirdOctaveBands.length);
  });

  it('gives a power of frequency exactly, in every band and for every path', () => {
    // The logarithm is linear in lg f, so the mean over lg f is known: (u^n - l^n)/(n ln(u/l)).
    const powers = [-2, 3];
    const found = bandMeans((hz) => ({ values: powers.map((n) => (hz / 1000) ** n), converged: true }));
    powers.forEach((n, c) => {
      thirdOctaveBands.forEach(({ lower, upper }, band) => {
        const exact = ((upper / 1000) ** n - (lower / 1000) ** n) / (n * Math.log(upper / lower));
        expect(found[c]![band]! / exact).toBeCloseTo(1, 6);
      });
    });
  });

  it('finds a resonance wherever in the range it lies', () => {
    // A power resonance of a damped oscillator, 1/((x - 1/x)^2 + eta^2); its mean by 4096 samples.
    for (const centre of [46, 50, 100, 630, 4600, 5550]) {
      const paths = (hz: number) => {
        const x = hz / centre;
        return { values: [1 / ((x - 1 / x) ** 2 + 0.01)], converged: true };
      };
      const [found] = bandMeans(paths);
      const [expected] = bandMeans(paths, { samplesPerBand: 4096 });
      found!.forEach((mean, band) => {
        expect(Math.abs(10 * Math.log10(mean / expected![band]!)), `${centre} Hz, band ${band}`).toBeLessThan(0.1);
      });
    }
  });

  it('asks at fewer frequencies for a wider tolerance, and errs by little more than that', () => {
    const counted = (bandTolerance?: number) => {
      let asked = 0;
      const paths = (hz: number) => {
        asked += 1;
        const x = hz / 160;
        return { values: [1 / ((x - 1 / x) ** 2 + 0.01)], converged: true };
      };
      return { means: bandMeans(paths, bandTolerance === undefined ? {} : { bandTolerance })[0]!, asked };
    };
    const [close, usual, wide] = [counted(0.0001), counted(), counted(0.03)];
    expect(usual.asked).toBeLessThan(close.asked);
    expect(wide.asked).toBeLessThan(usual.asked);
    wide.means.forEach((mean, band) => {
      expect(Math.abs(10 * Math.log10(mean / close.means[band]!)), `band ${band}`).toBeLessThan(0.3);
    });
  });

  it('refuses a tolerance that is none', () => {
    const paths = () => ({ values: [1], converged: true });
    for (const bandTolerance of [0, 1, -0.1, Number.NaN]) {
      expect(() => bandMeans(paths, { bandTolerance })).toThrow('tolerance of a band is');
    }
  });

  it('gives 0 where nothing comes through', () => {
    expect(bandMeans(() => ({ values: [0], converged: true }))[0]).toEqual(thirdOctaveBands.map(() => 0));
  });

  it('says at which frequency a sum over directions did not converge', () => {
    expect(() => bandMeans(() => ({ values: [1], converged: false }))).toThrow('did not converge at');
    expect(() => bandMeans(() => ({ values: [1], converged: false }), { samplesPerBand: 8 })).toThrow(
      'did not converge at',
    );
  });
});
