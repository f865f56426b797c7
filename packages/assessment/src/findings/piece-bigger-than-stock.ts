import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Pieces that come out of no sheet and off no length of the size that the material is sold in. */
export function pieceBiggerThanStock({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }): Found[] => {
    const { sheetLayouts, lengthLayouts } = result.build;
    const mm = (metres: number) => decimals(metres * 1000, 0);
    const boards = sheetLayouts
      .filter(({ tooBig }) => tooBig.length > 0)
      .map(({ stock, tooBig, sheetWidthM, sheetHeightM }) => {
        const largest = tooBig.reduce((best, piece) =>
          piece.widthM * piece.lengthM > best.widthM * best.lengthM ? piece : best,
        );
        return {
          count: tooBig.length,
          words: `${tooBig.length} of ${stock}, the largest ${largest.mark} with ${mm(largest.widthM)} x ${mm(largest.lengthM)} mm for ${largest.owner}, on sheets of ${mm(sheetWidthM)} x ${mm(sheetHeightM)} mm`,
        };
      });
    const sticks = lengthLayouts
      .filter(({ tooLong }) => tooLong.length > 0)
      .map(({ stock, tooLong, stockLengthM }) => {
        const longest = Math.max(...tooLong.map(({ lengthM }) => lengthM));
        return {
          count: tooLong.length,
          words: `${tooLong.length} of ${stock}, up to ${mm(longest)} mm, off lengths of ${mm(stockLengthM)} mm`,
        };
      });
    const all = [...boards, ...sticks];
    if (all.length === 0) return [];
    const count = all.reduce((sum, entry) => sum + entry.count, 0);
    return [
      {
        id: 'piece-bigger-than-stock',
        severity: 'warning',
        range: textRange(booth.panels?.range ?? booth.nameRange),
        message: `${booth.name}: ${count} ${count === 1 ? 'piece is' : 'pieces are'} bigger than what the material is sold in`,
        explanation: `${joined(all.map(({ words }) => words))}. They are in no count of sheets and lengths, and their material is in no sum of money.`,
        source: 'Parts laid out on sheets and lengths. docs/findings/piece-bigger-than-stock.md',
        fix: 'Cut the faces into smaller panels with `panels { width …; split … }`, or say in what bigger `sheet` or `stock` the material is sold.',
        figures: { pieces: count },
        related: [],
      },
    ];
  });
}
