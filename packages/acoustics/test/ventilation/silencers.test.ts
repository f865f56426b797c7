import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { asInsertionLoss } from '../../src/quantities/insertion-loss.js';
import { areaChangeLoss } from '../../src/ventilation/area-change-loss.js';
import { expansionChamberLoss } from '../../src/ventilation/expansion-chamber-loss.js';
import { silencerLoss } from '../../src/ventilation/silencer-loss.js';
import { silencerRows } from '../../src/ventilation/silencer-rows.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

describe('silencerLoss', () => {
  // Invented rows that differ in length alone.
  const [measured] = silencerRows;
  const longer = {
    ...measured!,
    length: 1.8,
    insertionLoss: asInsertionLoss(measured!.insertionLoss.map((loss) => loss + 9)),
  };
  const rows = [longer, ...silencerRows];
  const size = { airway: 0.1, splitter: 0.2 };
  test('is the row at the length of a row, and between two rows in proportion', () => {
    for (const row of silencerRows) expect(silencerLoss(silencerRows, row)).toEqual(row.insertionLoss);
    fc.assert(
      fc.property(fc.double({ min: 0.9, max: 1.8, noNaN: true }), (length) => {
        silencerLoss(rows, { ...size, length }).forEach((loss, band) => {
          expect(loss).toBeCloseTo(measured!.insertionLoss[band]! + 10 * (length - 0.9), 9);
        });
      }),
    );
  });
  test('says nothing beyond the rows', () => {
    expect(() => silencerLoss(silencerRows, { ...size, length: 1.2 })).toThrow('length of the silencer is 1.2');
    expect(() => silencerLoss(rows, { ...size, length: 0.5 })).toThrow('length of the silencer is 0.5');
    expect(() => silencerLoss(rows, { ...size, airway: 0.15, length: 0.9 })).toThrow(
      'airway and splitter of the silencer',
    );
    const short = { ...longer, insertionLoss: asInsertionLoss([1]) };
    expect(() => silencerLoss([...silencerRows, short], { ...size, length: 1 })).toThrow(
      'number of bands of the silencer',
    );
  });
  test('every row has 21 bands, a source and a loss above zero; the wider airway takes less everywhere', () => {
    const [narrow, wide] = silencerRows;
    for (const row of silencerRows) {
      expect(row.insertionLoss).toHaveLength(21);
      expect(row.source).toContain('2014');
    }
    narrow!.insertionLoss.forEach((loss, band) => {
      expect(loss).toBeGreaterThan(wide!.insertionLoss[band]!);
    });
  });
});

describe('expansionChamberLoss', () => {
  const chamber = { chamberArea: 0.08, ductArea: 0.01, length: 0.5 };
  const area = fc.double({ min: 1e-3, max: 1, noNaN: true });
  const frequency = fc.double({ min: 10, max: 5000, noNaN: true });
  test('is nothing at half a wavelength, most at a quarter, and never below zero', () => {
    const quarter = air.soundSpeed / (4 * chamber.length);
    expect(expansionChamberLoss(2 * quarter, chamber, air)).toBeCloseTo(0, 9);
    expect(expansionChamberLoss(quarter, chamber, air)).toBeCloseTo(10 * Math.log10(1 + ((8 - 1 / 8) / 2) ** 2), 9);
    fc.assert(
      fc.property(frequency, area, area, (hz, chamberArea, ductArea) => {
        const loss = expansionChamberLoss(hz, { ...chamber, chamberArea, ductArea }, air);
        expect(loss).toBeGreaterThanOrEqual(0);
        // A chamber and a throat of the same ratio take the same.
        const throat = { ...chamber, chamberArea: ductArea, ductArea: chamberArea };
        expect(expansionChamberLoss(hz, throat, air)).toBeCloseTo(loss, 9);
        // Both steps in phase take at most four times the reflection of one.
        expect(loss).toBeLessThanOrEqual(2 * areaChangeLoss(chamberArea, ductArea) + 6.03);
      }),
    );
  });
  test('is nothing without a change of area or without length; names what cannot be', () => {
    expect(expansionChamberLoss(300, { ...chamber, chamberArea: 0.01 }, air)).toBe(0);
    expect(expansionChamberLoss(300, { ...chamber, length: 0 }, air)).toBe(0);
    expect(() => expansionChamberLoss(0, chamber, air)).toThrow('frequency is 0');
    expect(() => expansionChamberLoss(300, { ...chamber, ductArea: 0 }, air)).toThrow('duct area is 0');
  });
});
