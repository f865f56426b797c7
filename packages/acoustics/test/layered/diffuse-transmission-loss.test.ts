import { describe, expect, it } from 'vitest';
import { defaultRimAbsorption, type GapLosses, losslessGaps } from '../../src/layered/air-gap-fluid.js';
import {
  diffuseTransmission,
  diffuseTransmissionLoss,
  expectConverged,
  gapLosses,
  transmissionWith,
} from '../../src/layered/diffuse-transmission-loss.js';
import { builtIn } from '../../src/layered/edge-loss.js';
import { finiteRadiationFactor } from '../../src/layered/finite-radiation-factor.js';
import { waveBlock } from '../../src/layered/kernel-in-use.js';
import { byLateralMotion } from '../../src/layered/lateral-motion.js';
import { type Field, fieldIncidenceAngleDeg, type Layer } from '../../src/layered/layer.js';
import { prepareStack } from '../../src/layered/prepared-stack.js';
import { lookUpRadiation, radiationTable } from '../../src/layered/radiation-table.js';
import { followTransmittedBlock, transmittedShares } from '../../src/layered/transmission-coefficient.js';
import { blockSize } from '../../src/layered/wave-block.js';
import { massLawNormal } from '../../src/panels/mass-law.js';
import { roomAir as air, board, stacks } from './stacks.js';

const finite: Field = { kind: 'finite', size: { width: 2, height: 1.2 } };
const limited: Field = { kind: 'limited', maximumAngleDeg: fieldIncidenceAngleDeg };

/** Midpoint rule over cos(theta) with so many points that no peak of the stacks below falls between two of them. */
function bruteForce(layers: readonly Layer[], hz: number, field: Field, losses: GapLosses, count: number): number {
  const limit = field.kind === 'limited' ? (field.maximumAngleDeg * Math.PI) / 180 : Math.PI / 2;
  const from = Math.cos(limit);
  const block = waveBlock();
  const shares = new Float64Array(blockSize);
  let sum = 0;
  for (const motion of byLateralMotion(losses, hz, air)) {
    const stack = prepareStack(builtIn(layers, hz, field), hz, air, motion.losses);
    const table = field.kind === 'finite' ? radiationTable(stack.wavenumber, field.size) : undefined;
    for (let start = 0; start < count; start += blockSize) {
      const length = Math.min(blockSize, count - start);
      for (let i = 0; i < length; i++) block.cosine[i] = from + ((1 - from) * (start + i + 0.5)) / count;
      followTransmittedBlock(stack, length);
      transmittedShares(stack, length, shares);
      for (let i = 0; i < length; i++) {
        const q = block.cosine[i]!;
        const radiated = table === undefined ? 1 / Math.sin(limit) ** 2 : q * lookUpRadiation(table, q);
        sum += motion.weight * shares[i]! * 2 * q * radiated;
      }
    }
  }
  return (sum * (1 - from)) / count;
}

describe('diffuseTransmission(layers, hz, { air, field })', () => {
  for (const [name, layers] of Object.entries(stacks)) {
    it(`is within 0.1 dB of 200 000 directions for ${name}`, () => {
      const losses = gapLosses(layers, finite, defaultRimAbsorption, air);
      for (const field of [finite, limited] as const) {
        for (const hz of [55, 333, 700, 1234, 2500, 5000]) {
          const found = transmissionWith(layers, hz, air, field, losses);
          const expected = bruteForce(layers, hz, field, losses, 200_000);
          expect(found.converged).toBe(true);
          expect(Math.abs(10 * Math.log10(found.coefficient / expected)), `${hz} Hz`).toBeLessThan(0.1);
        }
      }
    });

    // Without any loss the sharpest peaks are too narrow for 200 000 equally spaced points.
    it(`is within 0.1 dB of 2 000 000 directions for ${name} with gaps that lose nothing`, () => {
      for (const hz of [700, 2500, 5000]) {
        const found = transmissionWith(layers, hz, air, finite, losslessGaps);
        const expected = bruteForce(layers, hz, finite, losslessGaps, 2_000_000);
        expect(found.converged).toBe(true);
        expect(Math.abs(10 * Math.log10(found.coefficient / expected)), `${hz} Hz`).toBeLessThan(0.1);
      }
    });
  }

  it('finds peaks that a fixed rule of 64 points misses by more than 1 dB', () => {
    const layers = stacks['light plates on a deep empty cavity']!;
    let worst = 0;
    for (const hz of [700, 1234, 2500, 5000]) {
      const coarse = bruteForce(layers, hz, finite, losslessGaps, 64);
      const found = transmissionWith(layers, hz, air, finite, losslessGaps).coefficient;
      worst = Math.max(worst, Math.abs(10 * Math.log10(coarse / found)));
    }
    expect(worst).toBeGreaterThan(1);
  });

  it('needs a few hundred evaluations, far from its limit', () => {
    for (const layers of Object.values(stacks)) {
      for (const hz of [100, 1000, 5000]) {
        expect(diffuseTransmission(layers, hz, { air, field: finite }).evaluations).toBeLessThan(3000);
      }
    }
  });

  it('does not depend on the side from which the sound comes', () => {
    for (const layers of Object.values(stacks)) {
      const there = diffuseTransmission(layers, 800, { air, field: finite }).coefficient;
      const back = diffuseTransmission(layers.toReversed(), 800, { air, field: finite }).coefficient;
      expect(Math.abs(10 * Math.log10(there / back))).toBeLessThan(0.05);
    }
  });

  it('lets nearly all through when there is nothing, less the edges of the opening', () => {
    // A bare opening many wavelengths wide transmits all of it.
    const nothing: Layer[] = [{ kind: 'air-gap', thickness: 0 }];
    const open = diffuseTransmission(nothing, 4000, { air, field: { kind: 'finite', size: { width: 4, height: 3 } } });
    expect(open.coefficient).toBeCloseTo(1, 1);
    expect(diffuseTransmission(nothing, 500, { air, field: limited }).coefficient).toBeCloseTo(1, 6);
  });
});

describe('diffuseTransmissionLoss(layers, hz, { air, field })', () => {
  it('of a limp mass up to 78 degrees is about 5 dB below normal incidence', () => {
    const [found] = diffuseTransmissionLoss([{ kind: 'limp-sheet', surfaceMass: 10 }], [1000], { air, field: limited });
    expect(massLawNormal(1000, 10, air) - found!).toBeGreaterThan(4.5);
    expect(massLawNormal(1000, 10, air) - found!).toBeLessThan(5.5);
  });

  it('of a limp mass over all directions of an infinite panel is R0 - 10 lg(0.23 R0)', () => {
    // The integral over all angles has the closed form tau = ln(1 + a^2)/a^2, a = omega m/(2 rho c); 0.23 R0 = ln(1 + a^2).
    const a = (Math.PI * 1000 * 10) / air.impedance;
    const [found] = diffuseTransmissionLoss([{ kind: 'limp-sheet', surfaceMass: 10 }], [1000], {
      air,
      field: { kind: 'limited', maximumAngleDeg: 90 },
    });
    expect(found).toBeCloseTo(-10 * Math.log10(Math.log(1 + a * a) / (a * a)), 2);
  });

  it('of a finite limp mass is the mass-law share times the mean of the radiation factor', () => {
    // For omega m >> rho c the mass gives tau = (2 rho c/(omega m cos))^2, so tau_d is an integral of sigma alone.
    const hz = 500;
    const k = (2 * Math.PI * hz) / air.soundSpeed;
    let mean = 0;
    for (let i = 0; i < 400; i++) {
      const q = (i + 0.5) / 400;
      mean += (2 * finiteRadiationFactor(k, Math.sqrt(1 - q * q), { width: 2, height: 1.2 })) / 400;
    }
    const expected = mean * ((2 * air.impedance) / (2 * Math.PI * hz * 1000)) ** 2;
    const [found] = diffuseTransmissionLoss([{ kind: 'limp-sheet', surfaceMass: 1000 }], [hz], { air, field: finite });
    expect(found).toBeCloseTo(-10 * Math.log10(expected), 1);
  });

  it('of a small panel is higher at low frequencies than that of a large one', () => {
    const small = diffuseTransmissionLoss([board], [63], {
      air,
      field: { kind: 'finite', size: { width: 0.4, height: 0.5 } },
    });
    const large = diffuseTransmissionLoss([board], [63], {
      air,
      field: { kind: 'finite', size: { width: 4, height: 3 } },
    });
    expect(small[0]! - large[0]!).toBeGreaterThan(5);
  });

  it('of a cavity with an absorbing rim is higher than with a hard one', () => {
    const layers = stacks['light plates on a deep empty cavity']!;
    const [hard] = diffuseTransmissionLoss(layers, [500], { air, field: finite, rimAbsorption: 0 });
    const [soft] = diffuseTransmissionLoss(layers, [500], { air, field: finite, rimAbsorption: 0.5 });
    expect(soft! - hard!).toBeGreaterThan(3);
  });

  it('names what is wrong with its conditions', () => {
    expect(() =>
      diffuseTransmissionLoss([board], [100], { air, field: { kind: 'limited', maximumAngleDeg: 95 } }),
    ).toThrow('limiting angle is 95, expected a number of degrees above 0 and up to 90');
    const flat = { kind: 'finite', size: { width: 0, height: 1 } } as const;
    expect(() => diffuseTransmissionLoss([board], [100], { air, field: flat })).toThrow('panel width is 0');
    expect(() => diffuseTransmissionLoss([board], [100], { air, field: finite, rimAbsorption: 2 })).toThrow(
      'absorption of the rim is 2',
    );
  });

  it('stays a number behind metres of dense fibre', () => {
    const fibre: Layer = { kind: 'porous', thickness: 1, flowResistivity: 1e6 };
    const result = diffuseTransmission([fibre, board, fibre, fibre], 5000, { air, field: finite });
    expect(result.converged).toBe(true);
    expect(result.coefficient).toBeGreaterThanOrEqual(0);
    expect(result.coefficient).toBeLessThan(1e-100);
  });

  it('says so when the sum over directions does not converge', () => {
    expect(() => expectConverged(false, 500)).toThrow('sum over directions did not converge at 500 Hz');
  });
});
