import type { RequirementResult } from '@boothwright/assessment';
import { palette } from '../../charts/palette.js';
import { round, svgElement } from '../../charts/svg-element.js';
import { verdictSign } from '../../lens/verdict-sign.js';
import { limiterWords } from '../../numbers/path-words.js';
import { rangeText, requirementName, valueText, verdictText } from '../../numbers/requirement-words.js';
import { figures, html, markButton, type SheetCell, tableHtml } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

const signs = { met: '✓', missed: '✗', 'not-assessed': '?' } as const;

/** Every requirement with what is predicted, and how far on which side of its limit that lies. */
export function askedSection({ results, name }: SheetInput): SheetSection {
  const asked = results.requirements.filter(({ booth }) => booth === null || booth === name);
  const marks = newMarks();
  const rows = asked.map((each): SheetCell[] => [
    {
      html: markButton(
        marks.of(each.range),
        `<span class="sign">${signs[each.verdict]}</span><span>${html(requirementName(each))}</span>`,
      ),
    },
    {
      html: `<b>${html(valueText(each))}</b>${rangeText(each) ? `<span class="ends">${html(rangeText(each) ?? '')}</span>` : ''}`,
    },
    { html: `${marginStrip(each)}<span class="${each.verdict}">${html(verdictText(each))}</span>${limiter(each)}` },
  ]);
  return {
    id: 'asked',
    title: 'What is asked',
    summary: verdictSign(asked),
    html:
      rows.length === 0
        ? '<p class="note">The text requires nothing of this booth. A line such as <code>require room-tone &lt;= NC 15</code> is judged here.</p>'
        : tableHtml({
            caption: 'Requirements, what is predicted, and the margin to the limit',
            columns: [{ head: 'requirement' }, ...figures('predicted'), { head: 'margin' }],
            rows,
          }),
    marks: marks.ranges,
  };
}

function limiter({ verdict, limitedBy, explanation }: RequirementResult): string {
  const words =
    verdict === 'not-assessed'
      ? explanation
      : verdict === 'met' || limitedBy === null
        ? ''
        : `by ${limiterWords(limitedBy)}`;
  return words === '' ? '' : `<span class="quiet why">${html(words)}</span>`;
}

/**
 * The limit as a line in the middle, the prediction as a bar with a tick at its value: on the left what misses it, on the
 * right what meets it. Its scale is its own, so that the worst end of the range reaches the edge.
 */
function marginStrip({ value, limit, margin, verdict }: RequirementResult): string {
  if (value === null || margin === null) return '';
  // The margin says which side of the limit is the good one.
  const sign = margin === 0 ? 1 : Math.sign(margin) * (value.value - limit < 0 ? -1 : 1) || 1;
  const side = (figure: number) => sign * (figure - limit);
  const most = Math.max(Math.abs(side(value.low)), Math.abs(side(value.high)), Math.abs(side(value.value)), 1e-9);
  const x = (figure: number) => 50 + 46 * (side(figure) / most);
  const [left, right] = [Math.min(x(value.low), x(value.high)), Math.max(x(value.low), x(value.high))];
  const colour = verdict === 'met' ? palette.blue : palette.orange;
  return `<svg class="strip" width="100" height="12" viewBox="0 0 100 12" aria-hidden="true">${svgElement('path', { d: 'M2 6H98', stroke: palette.grey, 'stroke-opacity': '0.4' })}${svgElement('rect', { x: round(left), y: 4, width: round(Math.max(1, right - left)), height: 4, fill: colour, 'fill-opacity': '0.5' })}${svgElement('path', { d: 'M50 0V12', stroke: palette.grey, 'stroke-width': 1.5 })}${svgElement('path', { d: `M${round(x(value.value))} 2V10`, stroke: colour, 'stroke-width': 3 })}</svg>`;
}
