import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asTransmissionLoss } from '../../src/quantities/transmission-loss.js';
import { ductBreakinPower } from '../../src/ventilation/duct-breakin-power.js';
import { ductBreakoutPower } from '../../src/ventilation/duct-breakout-power.js';
import { ductSpeedForRoomCriterion } from '../../src/ventilation/duct-speed-for-room-criterion.js';
import { fanCasingPower } from '../../src/ventilation/fan-casing-power.js';
import { flexibleDuctOctaveLoss } from '../../src/ventilation/flexible-duct-loss.js';
import { grilleSpeedForNoiseCriterion } from '../../src/ventilation/grille-speed-for-noise-criterion.js';
import { rectangularDuctBreakinLoss } from '../../src/ventilation/rectangular-duct-breakin-loss.js';
import { rectangularDuctBreakoutLoss } from '../../src/ventilation/rectangular-duct-breakout-loss.js';

const side = fc.double({ min: 0.05, max: 2, noNaN: true });
const mass = fc.double({ min: 1, max: 20, noNaN: true });
const power = [80, 80, 78, 75, 70, 65, 60, 55];

describe('rectangularDuctBreakoutLoss', () => {
  test('lies from 0 to 45 dB, never falls with mass and is the same for the duct on its side', () => {
    fc.assert(
      fc.property(side, side, mass, (width, height, surfaceMass) => {
        const loss = rectangularDuctBreakoutLoss({ width, height, surfaceMass });
        const heavier = rectangularDuctBreakoutLoss({ width, height, surfaceMass: 2 * surfaceMass });
        const turned = rectangularDuctBreakoutLoss({ width: height, height: width, surfaceMass });
        loss.forEach((value, octave) => {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(45);
          expect(heavier[octave]).toBeGreaterThanOrEqual(value);
          expect(turned[octave]).toBeCloseTo(value, 9);
        });
      }),
    );
  });
  test('names what cannot be', () => {
    expect(() => rectangularDuctBreakoutLoss({ width: 0, height: 1, surfaceMass: 5 })).toThrow('duct width is 0');
    expect(() => rectangularDuctBreakoutLoss({ width: 1, height: 1, surfaceMass: -5 })).toThrow(
      'mass of the duct wall is -5',
    );
  });
});

describe('rectangularDuctBreakinLoss', () => {
  test('is 3 dB below breakout above the first mode, and never below it with a longer duct', () => {
    fc.assert(
      fc.property(side, side, mass, (width, height, surfaceMass) => {
        const out = rectangularDuctBreakoutLoss({ width, height, surfaceMass });
        const inward = rectangularDuctBreakinLoss(out, { width, height, length: 1 });
        const longer = rectangularDuctBreakinLoss(out, { width, height, length: 4 });
        const firstMode = 171.8 / Math.max(width, height);
        [63, 125, 250, 500, 1000, 2000, 4000, 8000].forEach((hz, octave) => {
          if (hz > firstMode * 1.01) expect(inward[octave]).toBeCloseTo(out[octave]! - 3, 9);
          expect(longer[octave]).toBeGreaterThanOrEqual(inward[octave]!);
        });
      }),
    );
  });
  test('names what cannot be', () => {
    const exposed = { width: 0.3, height: 0.3, length: 1 };
    expect(() => rectangularDuctBreakinLoss(asTransmissionLoss([20]), exposed)).toThrow('number of octaves');
    const out = rectangularDuctBreakoutLoss({ width: 0.3, height: 0.3, surfaceMass: 5 });
    expect(() => rectangularDuctBreakinLoss(out, { ...exposed, length: 0 })).toThrow('duct length is 0');
  });
});

describe('sound through duct walls', () => {
  test('never more than half of the power leaves, and a doubled wall lets out 3 dB more until then', () => {
    const loss = asTransmissionLoss([30, 30, 30, 30, 30, 30, 30, 30]);
    const small = ductBreakoutPower(power, loss, { wallArea: 1, section: 0.09 });
    const doubled = ductBreakoutPower(power, loss, { wallArea: 2, section: 0.09 });
    const long = ductBreakoutPower(power, loss, { wallArea: 1e6, section: 0.09 });
    power.forEach((level, octave) => {
      expect(doubled[octave]! - small[octave]!).toBeCloseTo(10 * Math.log10(2), 9);
      expect(long[octave]).toBe(level - 3);
      expect(ductBreakinPower(power, loss)[octave]).toBe(level - 33);
    });
    expect(() => ductBreakoutPower(power, loss, { wallArea: 0, section: 0.09 })).toThrow('wall area of the duct is 0');
    expect(() => ductBreakinPower([80], loss)).toThrow('number of octaves of sound power on the duct is 1');
  });
});

describe('flexibleDuctOctaveLoss', () => {
  test('between the rows it lies between them per metre, says so, and credits nothing at 8 kHz', () => {
    const between = flexibleDuctOctaveLoss({ diameter: 0.125, length: 1 });
    expect(between.validity.extrapolated).toBe(true);
    // 4 in of 3 ft has 8.75 dB/m at 500 Hz, 8 in of 9 ft 9.11 dB/m.
    expect(between.octaves[3]).toBeGreaterThan(8.74);
    expect(between.octaves[3]).toBeLessThan(9.12);
    expect(between.octaves[7]).toBe(0);
  });
  test('never falls with length, and stays finite and not negative for every size', () => {
    const any = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(any, fc.double({ min: 0, max: 20, noNaN: true }), (diameter, length) => {
        const { octaves, validity } = flexibleDuctOctaveLoss({ diameter, length });
        const longer = flexibleDuctOctaveLoss({ diameter, length: length + 1 });
        fc.pre(validity.extrapolated && longer.validity.extrapolated);
        octaves.forEach((loss, octave) => {
          expect(loss).toBeGreaterThanOrEqual(0);
          expect(longer.octaves[octave]).toBeGreaterThanOrEqual(loss);
        });
      }),
    );
    expect(() => flexibleDuctOctaveLoss({ diameter: 0, length: 1 })).toThrow('duct diameter is 0');
  });
});

test('fanCasingPower never adds, and wants 8 octaves', () => {
  fanCasingPower(power).forEach((level, octave) => {
    expect(level).toBeLessThanOrEqual(power[octave]!);
  });
  expect(() => fanCasingPower([80])).toThrow('number of octaves of sound power of the fan is 1');
});

test('speeds of a criterion: a stricter one is slower, and what is not in the table is told', () => {
  expect(grilleSpeedForNoiseCriterion(15, 'supply').to).toBeLessThan(grilleSpeedForNoiseCriterion(20, 'return').to);
  expect(() => grilleSpeedForNoiseCriterion(17 as 15, 'supply')).toThrow('noise criterion is 17');
  expect(() => grilleSpeedForNoiseCriterion(15, 'both' as 'supply')).toThrow('side is "both"');
  const duct = { place: 'in the room', section: 'round', part: 'main' } as const;
  expect(ductSpeedForRoomCriterion(25, duct)).toBeLessThan(ductSpeedForRoomCriterion(35, duct));
  expect(() => ductSpeedForRoomCriterion(30 as 25, duct)).toThrow('room criterion is 30');
  expect(() => ductSpeedForRoomCriterion(25, { ...duct, part: 'stub' as 'main' })).toThrow(
    'part of the duct is "stub"',
  );
  expect(() => ductSpeedForRoomCriterion(25, { ...duct, place: 'outside' as 'in the room' })).toThrow(
    'place of the duct',
  );
});
