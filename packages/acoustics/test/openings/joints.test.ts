import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { apertureTransmissionLoss } from '../../src/openings/aperture-transmission-loss.js';
import { cableHoleTransmissionLoss } from '../../src/openings/cable-hole-transmission-loss.js';
import { jointTransmissionLoss, jointTransmittingArea } from '../../src/openings/joint-transmission-loss.js';
import { keyholeArea, keyholeTransmissionLoss } from '../../src/openings/keyhole-transmission-loss.js';
import { slitTransmissionLoss } from '../../src/openings/slit-transmission-loss.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const joint = { length: 5, gap: 0.004, depth: 0.04, position: 'mid' } as const;
const frequency = fc.double({ min: 50, max: 5000, noNaN: true });

describe('jointTransmissionLoss(joint, hz, air)', () => {
  it('without seal, with a seal without mass, or with one open all along is the slit', () => {
    const slit = slitTransmissionLoss(joint, 500, air);
    expect(jointTransmissionLoss(joint, 500, air)).toBe(slit);
    for (const seal of [
      { kind: 'compressed', surfaceMass: 0, openShare: 0 },
      { kind: 'compressed', surfaceMass: 20, openShare: 1 },
    ] as const) {
      expect(jointTransmissionLoss({ ...joint, seal }, 500, air)).toBeCloseTo(slit, 9);
    }
  });

  it('of a heavy seal is limited by its open share', () => {
    const at = (openShare: number) =>
      jointTransmissionLoss({ ...joint, seal: { kind: 'compressed', surfaceMass: 1e6, openShare } }, 500, air);
    expect(at(0.01)).toBeCloseTo(slitTransmissionLoss(joint, 500, air) + 20, 3);
    expect(at(0.1)).toBeLessThan(at(0.01));
  });

  it('of a compressed seal gains 6 dB per doubling of its mass once heavy', () => {
    const at = (surfaceMass: number) =>
      jointTransmissionLoss({ ...joint, seal: { kind: 'compressed', surfaceMass, openShare: 0 } }, 1000, air);
    expect(at(40) - at(20)).toBeCloseTo(6.02, 0);
  });

  it('of a contact seal is never better with a wider residual gap, and infinite when it is tight', () => {
    fc.assert(
      fc.property(frequency, fc.double({ min: 1e-5, max: 5e-4, noNaN: true }), (hz, residualGap) => {
        const at = (gap: number) =>
          jointTransmissionLoss({ ...joint, seal: { kind: 'contact', residualGap: gap, contactDepth: 0.01 } }, hz, air);
        expect(at(residualGap * 1.5)).toBeLessThanOrEqual(at(residualGap));
      }),
    );
    const tight = { ...joint, seal: { kind: 'contact', residualGap: 0, contactDepth: 0.01 } } as const;
    expect(jointTransmissionLoss(tight, 500, air)).toBe(Number.POSITIVE_INFINITY);
    expect(jointTransmittingArea(tight, 500, air)).toBe(0);
    expect(() => jointTransmissionLoss({ ...tight, seal: { ...tight.seal, residualGap: 1 } }, 500, air)).toThrow(
      'residual gap of the seal is 1',
    );
  });

  it('passes in proportion to its length', () => {
    expect(
      jointTransmittingArea({ ...joint, length: 10 }, 500, air) / jointTransmittingArea(joint, 500, air),
    ).toBeCloseTo(2, 9);
  });
});

describe('cableHoleTransmissionLoss and keyholeTransmissionLoss', () => {
  it('without cable is the round hole, with a tight cable infinite', () => {
    expect(cableHoleTransmissionLoss({ holeRadius: 0.01, cableRadius: 0, depth: 0.05 }, 500, air)).toBe(
      apertureTransmissionLoss({ radius: 0.01, depth: 0.05 }, 500, air),
    );
    expect(cableHoleTransmissionLoss({ holeRadius: 0.01, cableRadius: 0.01, depth: 0.05 }, 500, air)).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(() => cableHoleTransmissionLoss({ holeRadius: 0.01, cableRadius: 0.02, depth: 0.05 }, 500, air)).toThrow(
      'radius of the cable is 0.02',
    );
  });

  it('passes less power the thicker the cable, and at low frequencies about that of a round hole of the ring area where the ring takes over', () => {
    const power = (cableRadius: number) =>
      (0.01 ** 2 - cableRadius ** 2) *
      10 ** (-cableHoleTransmissionLoss({ holeRadius: 0.01, cableRadius, depth: 0.05 }, 200, air) / 10);
    const radii = [0.002, 0.0049, 0.0055, 0.007, 0.009, 0.0099];
    for (let i = 1; i < radii.length; i++) expect(power(radii[i]!)).toBeLessThan(power(radii[i - 1]!));
    expect(Math.abs(10 * Math.log10(power(0.00499) / power(0.00501)))).toBeLessThan(1.5);
  });

  it('a keyhole is a round hole of its area', () => {
    const keyhole = { diameter: 0.01, slotWidth: 0.004, slotLength: 0.012, depth: 0.04 };
    expect(keyholeArea(keyhole)).toBeCloseTo(Math.PI * 0.25e-4 + 48e-6, 12);
    expect(keyholeTransmissionLoss({ ...keyhole, slotLength: 0 }, 500, air)).toBeCloseTo(
      apertureTransmissionLoss({ radius: 0.005, depth: 0.04 }, 500, air),
      9,
    );
  });
});
