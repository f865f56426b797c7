import type { ResultDocument } from '@boothwright/assessment';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';
import { pairsText, variantEffects } from './variant-effects.js';

const mostAdvice = 6;
const order = { error: 0, warning: 1, information: 2 } as const;

export interface Advice {
  readonly what: string;
  readonly how?: string;
}

/**
 * What to do, in this order: clear hazards, then the floor, then the fixes of findings from grave to light, then which of the variants
 * that the text already holds meets what the base misses. Only computed or stated advice; nothing is invented here.
 */
export function changeFirstSection(result: ResultDocument, style: TextStyle): string | undefined {
  const advice = adviceOf(result);
  return section(
    'What to change first',
    advice.length > 0 ? advice.map((entry, index) => adviceText(entry, index + 1, style)).join('\n') : undefined,
    style,
  );
}

/** The same without a layout. */
export function adviceOf(result: ResultDocument): readonly Advice[] {
  const stops = result.cautions
    .filter(({ severity }) => severity === 'stop')
    .map(({ hazard, ask }) => ({ what: hazard, how: ask }));
  const fixes = result.findings
    .filter(({ fix, severity }) => fix !== '' && severity !== 'information')
    .toSorted((a, b) => order[a.severity] - order[b.severity])
    .map(({ fix, message }) => ({ what: message, how: fix }));
  // A floor can end the whole plan, so it comes before what makes the plan better.
  const floor = result.findings
    .filter(({ id }) => id === 'floor-load-over-limit')
    .map(({ fix, message }) => ({ what: message, how: fix }));
  const all: readonly Advice[] = [...stops, ...floor, ...variantAdvice(result), ...fixes];
  return all.filter(({ what }, index) => all.findIndex((entry) => entry.what === what) === index).slice(0, mostAdvice);
}

/** One sentence per variant that meets a requirement which the base misses, with what it costs elsewhere. */
function variantAdvice(result: ResultDocument): readonly Advice[] {
  return Object.entries(result.variants).flatMap(([name, variant]) => {
    const { gained, lost, nearer, farther, costs } = variantEffects(result, variant);
    if (gained.length === 0) return [];
    const title = variant.title ? ` "${variant.title}"` : '';
    return [
      {
        what: `variant ${name}${title} meets ${pairsText(gained)}${lost.length > 0 ? ` but then misses ${pairsText(lost)}` : ''}`,
        how: [
          nearer.length > 0 && `nearer: ${pairsText(nearer)}`,
          farther.length > 0 && `farther: ${pairsText(farther)}`,
          costs.join(', '),
        ]
          .filter(Boolean)
          .join('; '),
      },
    ];
  });
}

function adviceText({ what, how }: Advice, number: number, style: TextStyle): string {
  const first = wrapText(printable(what), style.width, `  ${number}. `, '     ');
  return how ? joinLines(first, wrapText(printable(how), style.width, '     → ', '       ')) : first;
}
