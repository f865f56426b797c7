import type { JudgedContext } from '../assessment-context.js';
import { betterWidth } from '../build/better-width.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Panels a little too wide to come out of a sheet side by side: a smaller width saves whole sheets. */
export function panelWidthWastesSheet({ booths, spec, memo }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }): Found[] => {
    const better = betterWidth(booth, result.build, spec.budget, memo);
    if (better === null || booth.panels === undefined) return [];
    const { width, widest, boards, sheets, moreLengths, money } = better;
    const mm = (metres: number) => decimals(metres * 1000, 0);
    const saved = money === null ? '' : `, ${decimals(money.amount, 0)} ${money.currency}`;
    const lengths =
      moreLengths === 0
        ? 'the timber stays as it is'
        : `the timber changes by ${moreLengths > 0 ? '+' : '-'}${Math.abs(moreLengths)} lengths`;
    const counts = boards.map(({ name, before, after }) => `${name} ${before} to ${after} sheets`);
    return [
      {
        id: 'panel-width-wastes-sheet',
        severity: 'information',
        range: textRange(booth.panels.width.range),
        message: `${booth.name}: panels of ${mm(widest)} mm waste sheet; ${mm(width)} mm would save ${sheets} sheets${saved}`,
        explanation: `Laid out anew with the saw cut: ${joined(counts)}; ${lengths}${money === null ? '. What it saves in money is not known: not everything that changes has a price in one currency' : ', and is in the sum'}.`,
        source: 'Both widths laid out on sheets and lengths. docs/findings/panel-width-wastes-sheet.md',
        fix: `Write \`width ${mm(width)} mm\`. More panels mean more seams to seal; look at the count of panels and at the seams before you decide.`,
        figures: {
          widthM: widest,
          betterWidthM: width,
          sheetsSaved: sheets,
          moreLengths,
          ...(money === null ? {} : { [`saved ${money.currency}`]: money.amount }),
        },
        related: [],
      },
    ];
  });
}
