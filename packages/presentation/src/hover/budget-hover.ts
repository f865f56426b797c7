import type { BoothResult, ItemCheck } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../numbers/format-number.js';
import { costText, quantityText, shareText } from '../parts/stock-words.js';
import { bullets, escapeMarkdown, paragraphs, table } from './markdown.js';

const mostGroups = 8;

/** What everything costs, where the money goes, and what no price stands behind. Undefined without prices. */
export function budgetHover(boothName: string, { build }: BoothResult): string | undefined {
  const { counted, typed, groups, withoutPrice, checks, leavesOut } = build.shopping;
  if (typed.length === 0 && counted.length === 0) return undefined;
  const sums = (typed.length > 0 ? typed : counted).map(
    (sum) => `**${costText(sum)}**, ${costText({ ...sum, amount: sum.withReserve })} with reserve`,
  );
  const shown = groups.slice(0, mostGroups);
  const rest = groups.slice(mostGroups);
  const wrong = checks.filter(({ verdict }) => verdict !== 'enough');
  return paragraphs(
    `${sums.join(' and ')} for ${escapeMarkdown(boothName)}`,
    typed.length > 0 &&
      counted.length > 0 &&
      `With the quantities that the parts need: ${counted
        .map((sum) => `${costText(sum)}, ${costText({ ...sum, amount: sum.withReserve })} with reserve`)
        .join(' and ')}`,
    wrong.length > 0 &&
      bullets(wrong.map((check) => `**${check.items.map(escapeMarkdown).join(', ')}**: ${checkText(check)}`)),
    table(
      ['most of it for', 'cost', 'share'],
      shown.map(({ name, currency, amount, share }) => [
        escapeMarkdown(name),
        costText({ amount, currency }),
        shareText(share),
      ]),
    ),
    rest.length > 0 && `and ${rest.length} more`,
    withoutPrice.length > 0 && `Needed, and no price known: ${withoutPrice.map(escapeMarkdown).join(', ')}`,
    bullets(leavesOut.map(escapeMarkdown)),
  );
}

/** What an item of the budget buys against what the parts need. Undefined for an item that is not known. */
export function itemHover(item: string, title: string | undefined, { build }: BoothResult): string | undefined {
  const { checks, stock, groups } = build.shopping;
  const check = checks.find(({ items }) => items.includes(item));
  const rows = stock.filter(({ items }) => items.includes(item));
  const group = groups.find(({ name }) => name === (title ?? item));
  if (check === undefined && group === undefined) return undefined;
  return paragraphs(
    check === undefined
      ? `**Taken as typed**: it names no material, so it is not counted against the parts`
      : `**${checkText(check)}**${
          check.items.length > 1
            ? `, together with ${check.items
                .filter((each) => each !== item)
                .map(escapeMarkdown)
                .join(', ')}`
            : ''
        }`,
    group && `${costText(group)}, ${shareText(group.share)} of the budget`,
    ...rows.map((row) => {
      const waste = row.wasteShare === null ? '' : `, ${shareText(row.wasteShare)} waste`;
      const cost = row.cost === null ? '' : `: ${costText(row.cost)}`;
      return `The parts need ${quantityText(row)} ${escapeMarkdown(row.name)}${waste}${cost}`;
    }),
  );
}

const verdictWords = { enough: 'enough', 'too-few': 'too few', 'too-many': 'more than needed', unused: '' } as const;

function checkText({ verdict, bought, needed, atLeast, unit }: ItemCheck): string {
  if (verdict === 'unused') return 'no part uses it';
  const of = unit === 'm2' ? ' m²' : unit === 'm' ? ' m' : '';
  return `${verdictWords[verdict]}: ${formatFigures(bought)}${of} bought, ${atLeast ? 'at least ' : ''}${unit === 'm2' || unit === 'm' ? formatNumber(needed, 1) : formatFigures(needed)}${of} needed`;
}
