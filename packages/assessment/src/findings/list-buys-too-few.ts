import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import type { Found } from './found.js';

/** The shopping list does not reach for what the parts need. */
export function listBuysTooFew({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) => {
    const short = result.build.shopping.checks.filter(({ verdict }) => verdict === 'too-few');
    const first = short[0];
    if (first === undefined) return [];
    const amount = (value: number) => decimals(value, Number.isInteger(value) ? 0 : 1);
    const list = short.map(
      ({ items, bought, needed, unit, atLeast }) =>
        `${items.join(' and ')} ${amount(bought)} of ${atLeast ? 'at least ' : ''}${amount(needed)} ${unit === 'm2' || unit === 'm' ? unit : `${unit}s`}`,
    );
    return [
      {
        id: 'list-buys-too-few',
        severity: 'warning' as const,
        range: first.range,
        message: `${booth.name}: the list does not reach: ${joined(list)}`,
        explanation:
          'The parts are cut from true sheets and lengths with the saw cut between them, so waste is in the count. A second trip to the shop costs a day, and boards of another batch may differ.',
        source: 'Parts laid out on sheets and lengths. docs/findings/list-buys-too-few.md',
        fix: 'Buy the counted number, or change the sizes of the panels so that more of them come out of a sheet: `boothwright parts` shows every cut.',
        figures: Object.fromEntries(
          short.flatMap(({ material, bought, needed }) => [
            [`bought ${material}`, bought],
            [`needed ${material}`, needed],
          ]),
        ),
        related: short.slice(1).map(({ range }) => ({ range, message: 'this one too' })),
      },
    ];
  });
}
