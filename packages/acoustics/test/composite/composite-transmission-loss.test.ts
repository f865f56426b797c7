import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compositeTransmissionLoss } from '../../src/composite/composite-transmission-loss.js';
import type { TransmissionLoss } from '../../src/quantities/transmission-loss.js';

/** Numbers taken as R; a tight part has infinity, which `asTransmissionLoss` refuses. */
const loss = (...values: number[]) => values as readonly number[] as TransmissionLoss;

const anyElement = fc.record({
  area: fc.double({ min: 0.01, max: 50, noNaN: true }),
  transmissionLoss: fc
    .array(fc.double({ min: 0, max: 80, noNaN: true }), { minLength: 3, maxLength: 3 })
    .map((values) => loss(...values)),
});

describe('compositeTransmissionLoss(elements)', () => {
  it('of a single part is its own', () => {
    const [found] = compositeTransmissionLoss([{ area: 3, transmissionLoss: loss(31.5) }]);
    expect(found).toBeCloseTo(31.5, 9);
  });

  it('of two halves of 20 and 40 dB is 22.97 dB', () => {
    const [found] = compositeTransmissionLoss([
      { area: 1, transmissionLoss: loss(20) },
      { area: 1, transmissionLoss: loss(40) },
    ]);
    expect(found).toBeCloseTo(-10 * Math.log10((0.01 + 0.0001) / 2), 9);
  });

  it('lies between its worst and its best part', () => {
    fc.assert(
      fc.property(fc.array(anyElement, { minLength: 1, maxLength: 6 }), (elements) => {
        compositeTransmissionLoss(elements).forEach((value, band) => {
          const own = elements.map((element) => element.transmissionLoss[band]!);
          expect(value).toBeGreaterThanOrEqual(Math.min(...own) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(...own) + 1e-9);
        });
      }),
    );
  });

  it('is never helped by a part that is worse than the whole', () => {
    fc.assert(
      fc.property(
        fc.array(anyElement, { minLength: 1, maxLength: 5 }),
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (elements, area, worse) => {
          const before = compositeTransmissionLoss(elements);
          const after = compositeTransmissionLoss([
            ...elements,
            { area, transmissionLoss: loss(...before.map((value) => value - worse)) },
          ]);
          after.forEach((value, band) => {
            expect(value).toBeLessThanOrEqual(before[band]! + 1e-9);
          });
        },
      ),
    );
  });

  it('takes a part without area as absent and a part that lets nothing through as a wall', () => {
    const wall = { area: 10, transmissionLoss: loss(30) };
    expect(compositeTransmissionLoss([wall, { area: 0, transmissionLoss: loss(0) }])[0]).toBeCloseTo(30, 9);
    expect(
      compositeTransmissionLoss([wall, { area: 10, transmissionLoss: loss(Number.POSITIVE_INFINITY) }])[0],
    ).toBeCloseTo(33.01, 2);
  });

  it('names what does not fit', () => {
    expect(() => compositeTransmissionLoss([])).toThrow('number of elements is 0, expected at least one');
    expect(() => compositeTransmissionLoss([{ area: -1, transmissionLoss: loss(3) }])).toThrow(
      'area of an element is -1',
    );
    expect(() => compositeTransmissionLoss([{ area: 0, transmissionLoss: loss(3) }])).toThrow(
      'area of all elements is 0',
    );
    expect(() =>
      compositeTransmissionLoss([
        { area: 1, transmissionLoss: loss(3) },
        { area: 1, transmissionLoss: loss(3, 4) },
      ]),
    ).toThrow('number of bands of an element is 2, expected 1');
  });
});
