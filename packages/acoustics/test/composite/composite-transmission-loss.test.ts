import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compositeTransmissionLoss } from '../../src/composite/composite-transmission-loss.js';

const anyElement = fc.record({
  area: fc.double({ min: 0.01, max: 50, noNaN: true }),
  transmissionLoss: fc.array(fc.double({ min: 0, max: 80, noNaN: true }), { minLength: 3, maxLength: 3 }),
});

describe('compositeTransmissionLoss(elements)', () => {
  it('of a single part is its own', () => {
    const [found] = compositeTransmissionLoss([{ area: 3, transmissionLoss: [31.5] }]);
    expect(found).toBeCloseTo(31.5, 9);
  });

  it('of two halves of 20 and 40 dB is 22.97 dB', () => {
    const [found] = compositeTransmissionLoss([
      { area: 1, transmissionLoss: [20] },
      { area: 1, transmissionLoss: [40] },
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
            { area, transmissionLoss: before.map((value) => value - worse) },
          ]);
          after.forEach((value, band) => {
            expect(value).toBeLessThanOrEqual(before[band]! + 1e-9);
          });
        },
      ),
    );
  });

  it('takes a part without area as absent and a part that lets nothing through as a wall', () => {
    const wall = { area: 10, transmissionLoss: [30] };
    expect(compositeTransmissionLoss([wall, { area: 0, transmissionLoss: [0] }])[0]).toBeCloseTo(30, 9);
    expect(
      compositeTransmissionLoss([wall, { area: 10, transmissionLoss: [Number.POSITIVE_INFINITY] }])[0],
    ).toBeCloseTo(33.01, 2);
  });

  it('names what does not fit', () => {
    expect(() => compositeTransmissionLoss([])).toThrow('composite wall has no elements');
    expect(() => compositeTransmissionLoss([{ area: -1, transmissionLoss: [3] }])).toThrow('area of an element is -1');
    expect(() => compositeTransmissionLoss([{ area: 0, transmissionLoss: [3] }])).toThrow('composite wall has no area');
    expect(() =>
      compositeTransmissionLoss([
        { area: 1, transmissionLoss: [3] },
        { area: 1, transmissionLoss: [3, 4] },
      ]),
    ).toThrow('an element has 2 bands, expected 1');
  });
});
