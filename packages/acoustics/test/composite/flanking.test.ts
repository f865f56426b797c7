import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compositeTransmissionLoss } from '../../src/composite/composite-transmission-loss.js';
import {
  flankingTransmissionLoss,
  transmissionLossWithFlanking,
} from '../../src/composite/flanking-transmission-loss.js';
import { junctionVibrationIndex } from '../../src/composite/junction-vibration-index.js';
import { leakRatio, openAreaLimit } from '../../src/composite/leak-ratio.js';
import { plenumLevelDifference } from '../../src/composite/plenum-level-difference.js';
import { smallElementTransmissionLoss } from '../../src/composite/small-element.js';
import { asTransmissionLoss } from '../../src/quantities/transmission-loss.js';

const loss = fc.double({ min: 0, max: 80, noNaN: true });

describe('leakRatio and openAreaLimit', () => {
  it('a bare opening of relative area q limits the whole to -10 lg q (C. Hopkins: Sound Insulation, 2007, Eq. 4.92)', () => {
    expect(openAreaLimit(leakRatio(1, 100))).toBeCloseTo(20, 9);
    expect(openAreaLimit(0)).toBe(Number.POSITIVE_INFINITY);
    expect(openAreaLimit(1)).toBe(0);
    const found = compositeTransmissionLoss([
      { area: 10, transmissionLoss: asTransmissionLoss([40, 50]) },
      { area: 0.1, transmissionLoss: asTransmissionLoss([0, 0]) },
    ]);
    expect(found[1]).toBeCloseTo(20.04, 2);
    expect(Math.abs(found[0]! - 20.04)).toBeLessThan(0.06);
    expect(() => leakRatio(2, 1)).toThrow('open area is 2');
  });
});

describe('smallElementTransmissionLoss(normalisedDifference, area)', () => {
  it('passes the same power whatever area it is given', () => {
    const power = (area: number) => area * 10 ** (-smallElementTransmissionLoss([35], area)[0]! / 10);
    expect(power(0.1) / power(3)).toBeCloseTo(1, 9);
    expect(smallElementTransmissionLoss([35], 10)[0]).toBeCloseTo(35, 9);
  });
});

describe('flanking', () => {
  const path = (into: number, outOf: number) => ({
    into: asTransmissionLoss([into]),
    outOf: asTransmissionLoss([outOf]),
    vibrationIndex: 8.7,
    junctionLength: 2.5,
  });

  it('is the mean of both elements plus junction and 10 lg(S/l), the same in both directions', () => {
    expect(flankingTransmissionLoss(path(50, 40), 10)[0]).toBeCloseTo(45 + 8.7 + 10 * Math.log10(4), 9);
    expect(flankingTransmissionLoss(path(40, 50), 10)).toEqual(flankingTransmissionLoss(path(50, 40), 10));
    const lined = { ...path(50, 40), improvement: [6] };
    expect(flankingTransmissionLoss(lined, 10)[0]! - flankingTransmissionLoss(path(50, 40), 10)[0]!).toBeCloseTo(6, 9);
  });

  it('never helps the direct path', () => {
    fc.assert(
      fc.property(loss, loss, (direct, side) => {
        const [found] = transmissionLossWithFlanking([asTransmissionLoss([direct]), asTransmissionLoss([side])]);
        expect(found!).toBeLessThanOrEqual(Math.min(direct, side) + 1e-9);
        expect(found!).toBeGreaterThanOrEqual(Math.min(direct, side) - 3.02);
      }),
    );
    expect(() => transmissionLossWithFlanking([])).toThrow('number of paths is 0');
  });

  it('junctions of equal masses hold back 8.7 and 5.7 dB, a heavy crossing wall more', () => {
    expect(junctionVibrationIndex('cross-straight', 200, 200)).toBeCloseTo(8.7, 9);
    expect(junctionVibrationIndex('cross-corner', 200, 200)).toBeCloseTo(8.7, 9);
    expect(junctionVibrationIndex('tee-straight', 200, 200)).toBeCloseTo(5.7, 9);
    expect(junctionVibrationIndex('tee-straight', 200, 400)).toBeGreaterThan(5.7);
    expect(junctionVibrationIndex('tee-corner', 200, 400)).toBeCloseTo(
      junctionVibrationIndex('tee-corner', 400, 200),
      9,
    );
  });
});

describe('plenumLevelDifference', () => {
  it('is R1 + R2 + 10 lg(Ap A2/(S1 S2)) for tight ceilings', () => {
    const [found] = plenumLevelDifference(
      { area: 20, transmissionLoss: asTransmissionLoss([60]) },
      { area: 15, transmissionLoss: asTransmissionLoss([55]) },
      [8],
      [10],
    );
    expect(found).toBeCloseTo(115 + 10 * Math.log10(80 / 300), 3);
  });

  it('without any ceiling or absorption keeps the energy: the room hears no more than half of a shared field per m2', () => {
    const open = { area: 10, transmissionLoss: asTransmissionLoss([0]) };
    const [found] = plenumLevelDifference(open, open, [0], [10]);
    expect(found).toBeCloseTo(10 * Math.log10(2), 9);
  });
});
