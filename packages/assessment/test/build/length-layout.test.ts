import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LaidLengths, layOutLengths } from '../../src/build/length-layout.js';

const stock = 2.4;
const kerf = 0.003;

function problemsOf(laid: LaidLengths, pieces: readonly number[], length = stock, gap = kerf): string[] {
  const problems: string[] = [];
  const cut = laid.patterns.flatMap(({ count, cuts }) => Array.from({ length: count }, () => cuts).flat());
  const rounded = (list: readonly number[]) =>
    list
      .map((one) => one.toFixed(4))
      .sort()
      .join();
  if (rounded([...cut, ...laid.tooLong]) !== rounded(pieces)) problems.push('a stick is lost or doubled');
  for (const { cuts } of laid.patterns) {
    const used = cuts.reduce((sum, one) => sum + one, 0) + gap * (cuts.length - 1);
    if (used > length + 1e-9) problems.push(`${cuts.join(' + ')} is longer than the stock`);
  }
  if (laid.lengths !== laid.patterns.reduce((sum, { count }) => sum + count, 0)) problems.push('miscounted');
  return problems;
}

/** The fewest lengths by trying everything; only for a handful of pieces. */
function fewestByTrying(pieces: readonly number[], length: number, gap: number): number {
  let best = pieces.length;
  const bars: number[] = [];
  const visit = (index: number) => {
    if (bars.length >= best) return;
    if (index === pieces.length) {
      best = bars.length;
      return;
    }
    const size = (pieces[index] as number) + gap;
    for (let bar = 0; bar < bars.length; bar += 1) {
      if ((bars[bar] as number) + size > length + gap + 1e-9) continue;
      bars[bar] = (bars[bar] as number) + size;
      visit(index + 1);
      bars[bar] = (bars[bar] as number) - size;
    }
    bars.push(size);
    visit(index + 1);
    bars.pop();
  };
  visit(0);
  return best;
}

const stick = fc.integer({ min: 30, max: 2600 }).map((mm) => mm / 1000);

describe('layOutLengths(pieces, stock, kerf)', () => {
  it('loses no stick and cuts none out of nothing', () => {
    fc.assert(
      fc.property(fc.array(stick, { minLength: 1, maxLength: 60 }), (pieces) => {
        const laid = layOutLengths(pieces, stock, kerf);
        expect(problemsOf(laid, pieces)).toEqual([]);
        expect(laid.lengths).toBeGreaterThanOrEqual(laid.leastLengths);
      }),
      { numRuns: 120 },
    );
  });

  it('is never below, and its bound never above, what trying everything finds', () => {
    const few = fc.array(
      fc.integer({ min: 4, max: 23 }).map((tenths) => tenths / 10),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(few, (pieces) => {
        const laid = layOutLengths(pieces, stock, kerf);
        const fewest = fewestByTrying(pieces, stock, kerf);
        expect(laid.leastLengths).toBeLessThanOrEqual(fewest);
        expect(laid.lengths).toBe(fewest);
      }),
      { numRuns: 150 },
    );
  });

  it('finds what filling one length after the other misses', () => {
    // The longest first: 11 + 11, 9 + 8 + 5 and 3 alone. In tenths of a metre 11 + 8 + 5 = 24 and 11 + 9 + 3 = 23.
    const pieces = [1.1, 1.1, 0.9, 0.8, 0.5, 0.3];
    const laid = layOutLengths(pieces, stock, 0);
    expect(laid.lengths).toBe(2);
    expect(laid.leastLengths).toBe(2);
    expect(problemsOf(laid, pieces, stock, 0)).toEqual([]);
  });

  it('names what is longer than any length', () => {
    const laid = layOutLengths([2.5, 1], stock, kerf);
    expect(laid.tooLong).toEqual([2.5]);
    expect(laid.lengths).toBe(1);
  });

  it('needs no saw cut beside the last piece', () => {
    expect(layOutLengths([1.2, 1.197], stock, kerf).lengths).toBe(1);
    expect(layOutLengths([1.2, 1.1975], stock, kerf).lengths).toBe(2);
  });
});
