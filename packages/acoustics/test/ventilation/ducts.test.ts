import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { ductBendLoss } from '../../src/ventilation/duct-bend-loss.js';
import { endReflectionLoss } from '../../src/ventilation/end-reflection-loss.js';
import { linedRectangularDuctLoss } from '../../src/ventilation/lined-rectangular-duct-loss.js';
import { linedRoundDuctLoss } from '../../src/ventilation/lined-round-duct-loss.js';
import { octaveLossesToThirds } from '../../src/ventilation/octave-losses-to-thirds.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const booth = { width: 0.15, height: 0.1, length: 1, lining: 0.025 };

describe('octaveLossesToThirds', () => {
  test('keeps the octave values at octave centres and lies between them elsewhere', () => {
    const thirds = octaveLossesToThirds([1, 2, 4, 8, 16, 8, 4, 2]);
    expect(thirds).toHaveLength(21);
    expect([1, 4, 7, 10, 13, 16, 19].map((band) => thirds[band]!.toFixed(9))).toEqual(
      [1, 2, 4, 8, 16, 8, 4].map((value) => value.toFixed(9)),
    );
    expect(thirds[2]).toBeCloseTo(4 / 3, 9);
    expect(thirds[20]).toBeCloseTo(4 - 2 / 3, 9);
  });
  test('the 50 Hz third takes the value of the 63 Hz octave that holds it', () => {
    expect(octaveLossesToThirds([3, 9, 9, 9, 9, 9, 9, 9])[0]).toBe(3);
  });
});

describe('linedRectangularDuctLoss', () => {
  test('grows with length up to 40 dB, the most that it credits', () => {
    const short = linedRectangularDuctLoss(booth).loss;
    const double = linedRectangularDuctLoss({ ...booth, length: 2 }).loss;
    double.forEach((loss, band) => {
      expect(loss).toBeCloseTo(Math.min(2 * short[band]!, 40), 9);
    });
    expect(Math.max(...double)).toBe(40);
  });
  test('is zero without lining or without length, and says nothing of it', () => {
    expect(linedRectangularDuctLoss({ ...booth, lining: 0 })).toEqual({
      loss: Array(21).fill(0),
      validity: { extrapolated: false, notes: [] },
    });
    expect(linedRectangularDuctLoss({ ...booth, length: 0 }).loss).toEqual(Array(21).fill(0));
  });
  test('holds a narrow duct and a thick lining at the end of the published range, and says so', () => {
    const narrow = linedRectangularDuctLoss({ ...booth, width: 0.05, height: 0.05 });
    expect(narrow.validity.extrapolated).toBe(true);
    expect(narrow.loss).toEqual(linedRectangularDuctLoss({ ...booth, width: 0.03, height: 0.03 }).loss);
    const thick = linedRectangularDuctLoss({ ...booth, lining: 0.1 });
    expect(thick.validity.notes[0]).toMatch(/thicker than the tables cover/);
    expect(thick.loss).toEqual(linedRectangularDuctLoss({ ...booth, lining: 0.0508 }).loss);
  });
  test('a thin lining earns its share of 25 mm', () => {
    const thin = linedRectangularDuctLoss({ ...booth, lining: 0.0127 });
    const inch = linedRectangularDuctLoss({ ...booth, lining: 0.0254 });
    expect(thin.validity.extrapolated).toBe(true);
    thin.loss.forEach((loss, band) => {
      expect(loss).toBeCloseTo(inch.loss[band]! / 2, 9);
    });
  });
  test('never takes a lower loss from a thicker lining', () => {
    for (let lining = 0.001; lining < 0.06; lining += 0.001) {
      const less = linedRectangularDuctLoss({ ...booth, lining });
      const more = linedRectangularDuctLoss({ ...booth, lining: lining + 0.001 });
      more.loss.forEach((loss, band) => {
        expect(loss).toBeGreaterThanOrEqual(less.loss[band]! - 1e-9);
      });
    }
  });
  test('names the dimension that cannot be', () => {
    expect(() => linedRectangularDuctLoss({ ...booth, width: 0 })).toThrow('duct width is 0');
    expect(() => linedRectangularDuctLoss({ ...booth, length: -1 })).toThrow('duct length is -1');
  });
});

describe('linedRoundDuctLoss', () => {
  const round = { diameter: 0.2, length: 1, lining: 0.0508 };
  test('holds a narrow duct at 152 mm and a wide one at 610 mm, and says so', () => {
    const narrowest = linedRoundDuctLoss({ ...round, diameter: 0.1524 });
    linedRoundDuctLoss({ ...round, diameter: 0.1 }).loss.forEach((loss, band) => {
      expect(loss).toBeCloseTo(narrowest.loss[band]!, 9);
    });
    expect(linedRoundDuctLoss({ ...round, diameter: 0.1 }).validity.extrapolated).toBe(true);
    expect(linedRoundDuctLoss({ ...round, diameter: 0.8 }).validity.notes[0]).toMatch(/wider than the table/);
    expect(linedRoundDuctLoss(round).validity).toEqual({ extrapolated: false, notes: [] });
  });
  test('says that a thinner lining was not held against a table', () => {
    expect(linedRoundDuctLoss({ ...round, lining: 0.03 }).validity).toMatchObject({ extrapolated: false });
    expect(linedRoundDuctLoss({ ...round, lining: 0.03 }).validity.notes).toHaveLength(1);
    expect(linedRoundDuctLoss({ ...round, lining: 0 }).loss).toEqual(Array(21).fill(0));
  });
  test('is nowhere negative within the range of the table', () => {
    for (let inches = 6; inches <= 24; inches++) {
      for (const lining of [0.0254, 0.0381, 0.0508]) {
        expect(Math.min(...linedRoundDuctLoss({ diameter: inches * 0.0254, length: 1, lining }).loss)).toBeGreaterThan(
          0,
        );
      }
    }
  });
});

describe('ductBendLoss', () => {
  test('the loss at 1 kHz steps at width over wavelength 0.14, 0.28, 0.55, 1.11 and 2.22', () => {
    const at = (ratio: number) =>
      ductBendLoss({ width: (ratio * air.soundSpeed) / 1000, lined: true, form: 'square' }, air).loss[13]!;
    [0.14, 0.28, 0.55, 1.11, 2.22].forEach((limit, column) => {
      const row = [0, 1, 6, 11, 10, 10];
      expect(at(limit - 0.001)).toBeCloseTo(row[column]!, 9);
      expect(at(limit + 0.001)).toBeCloseTo(row[column + 1]!, 9);
    });
  });
  test('a lined round bend takes the unlined figures and says so', () => {
    const lined = ductBendLoss({ width: 0.15, lined: true, form: 'round' }, air);
    expect(lined.loss).toEqual(ductBendLoss({ width: 0.15, lined: false, form: 'round' }, air).loss);
    expect(lined.validity.notes).toEqual(['no figures for a lined round bend, the unlined ones are used']);
  });
  test('names a form that is not known', () => {
    expect(() => ductBendLoss({ width: 0.1, lined: true, form: 'mitred' as 'round' }, air)).toThrow('bend is "mitred"');
  });
});

describe('endReflectionLoss', () => {
  test('falls with frequency and with size, and a free end loses more than a flush one', () => {
    const free = endReflectionLoss({ area: 0.03, termination: 'free' }, air);
    const flush = endReflectionLoss({ area: 0.03, termination: 'flush' }, air);
    expect(free.loss).toEqual([...free.loss].sort((a, b) => b - a));
    free.loss.forEach((loss, band) => {
      expect(loss).toBeGreaterThan(flush.loss[band]!);
    });
    expect(endReflectionLoss({ area: 0.06, termination: 'free' }, air).loss[0]).toBeLessThan(free.loss[0]!);
    expect(free.validity.extrapolated).toBe(false);
  });
  test('stays below the low-frequency limit of theory for narrow ends', () => {
    // A wave in a duct with ka << 1 leaves (ka)^2 of its power through a free end and twice that through a flush one.
    for (const diameter of [0.03, 0.05, 0.1, 0.14]) {
      const area = (Math.PI * diameter ** 2) / 4;
      const limit = 20 * Math.log10(air.soundSpeed / (Math.PI * 50.119 * diameter));
      expect(endReflectionLoss({ area, termination: 'free' }, air).loss[0]).toBeLessThan(limit);
      expect(endReflectionLoss({ area, termination: 'flush' }, air).loss[0]).toBeLessThan(limit - 3.01);
    }
  });
  test('carries a note for an end narrower than 150 mm', () => {
    expect(endReflectionLoss({ area: 0.0079, termination: 'free' }, air).validity.extrapolated).toBe(true);
    expect(() => endReflectionLoss({ area: 0, termination: 'free' }, air)).toThrow('duct area is 0');
  });
});
