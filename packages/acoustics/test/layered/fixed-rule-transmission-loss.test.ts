import { describe, expect, it } from 'vitest';
import { bandTransmissionLoss } from '../../src/layered/band-transmission-loss.js';
import { fixedRuleTransmissionLoss } from '../../src/layered/fixed-rule-transmission-loss.js';
import type { Field, Layer } from '../../src/layered/layer.js';
import { roomAir as air, batt, board, hardboard } from './stacks.js';

const finite: Field = { kind: 'finite', size: { width: 2, height: 1.2 } };
const limited: Field = { kind: 'limited', maximumAngleDeg: 78 };
const sheet: Layer = { kind: 'limp-sheet', surfaceMass: 5 };
const damped: Layer[] = [board, batt, { kind: 'air-gap', thickness: 0.013 }, sheet, batt, hardboard];

const largest = (a: readonly number[], b: readonly number[]) =>
  a.reduce((worst, value, band) => Math.max(worst, Math.abs(value - b[band]!)), 0);

describe('fixedRuleTransmissionLoss(layers, conditions, { samplesPerBand, angles })', () => {
  it('is within 0.15 dB of the rule with error control for a damped wall and enough points', () => {
    for (const field of [finite, limited]) {
      const fixed = fixedRuleTransmissionLoss(damped, { air, field }, { samplesPerBand: 24, angles: 192 });
      expect(largest(fixed, bandTransmissionLoss(damped, { air, field }))).toBeLessThan(0.15);
    }
  });

  it('of a limp sheet up to 78 degrees has the closed form of its mass law at one frequency a band', () => {
    // tau = Integral dx/(1 + a^2 (1 - x)) over x = sin^2 from 0 to s, over s; a = omega m/(2 rho c).
    const loss = fixedRuleTransmissionLoss([sheet], { air, field: limited }, { samplesPerBand: 1, angles: 64 });
    const s = Math.sin((78 * Math.PI) / 180) ** 2;
    const a = (Math.PI * 1000 * 5) / air.impedance;
    const tau = Math.log((1 + a * a) / (1 + a * a * (1 - s))) / (a * a * s);
    expect(loss[13]).toBeCloseTo(-10 * Math.log10(tau), 6);
  });

  it('does not depend on how its angles fall into blocks', () => {
    const [few, many] = [63, 65].map((angles) =>
      fixedRuleTransmissionLoss([sheet], { air, field: limited }, { samplesPerBand: 2, angles }),
    );
    expect(largest(few!, many!)).toBeLessThan(1e-3);
  });

  it('names a count that cannot be', () => {
    for (const angles of [0, -1, 2.5, Number.NaN]) {
      expect(() => fixedRuleTransmissionLoss(damped, { air, field: limited }, { samplesPerBand: 8, angles })).toThrow(
        `number of angles is ${angles}, expected a whole number above 0`,
      );
    }
    expect(() => fixedRuleTransmissionLoss(damped, { air, field: limited }, { samplesPerBand: 0, angles: 8 })).toThrow(
      'samples per band',
    );
  });
});
