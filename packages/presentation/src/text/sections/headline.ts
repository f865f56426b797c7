import type { ResultDocument } from '@boothwright/assessment';
import type { Problem } from '@boothwright/language';
import { printable } from '../printable.js';
import { joinLines } from '../section.js';
import { paint, type TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

const count = (number: number, word: string) => `${number} ${word}${number === 1 ? '' : 's'}`;

/** The verdict in one line, then what else must not be overlooked. */
export function headlineSection(
  result: ResultDocument,
  problems: readonly Problem[],
  style: TextStyle,
  variant: string | undefined,
): string {
  const of = (verdict: string) => result.requirements.filter((requirement) => requirement.verdict === verdict).length;
  const [missed, open, total] = [of('missed'), of('not-assessed'), result.requirements.length];
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  const stops = result.cautions.filter(({ severity }) => severity === 'stop').length;
  const titles = Object.entries(result.booths).map(([name, { title }]) => printable(title ?? name));
  const lost = result.unread.filter(({ part }) => part === 'require').length;
  const verdict = headlineVerdict(result);
  const colour = missed > 0 ? 'red' : open > 0 || errors > 0 ? 'yellow' : 'green';
  return joinLines(
    paint(
      wrapText(
        [printable(result.file), ...titles, ...(variant ? [`variant ${printable(variant)}`] : [])].join(' · '),
        style.width,
        '',
        '  ',
      ),
      'bold',
      style,
    ),
    paint(wrapText(verdict, style.width, '', '  '), colour, style),
    lost > 0 &&
      total > 0 &&
      paint(
        wrapText(
          `${count(lost, 'requirement')} could not be read and ${lost === 1 ? 'is' : 'are'} not among them`,
          style.width,
          '',
          '  ',
        ),
        'red',
        style,
      ),
    errors > 0 &&
      paint(
        wrapText(
          `${count(errors, 'error')} in the text: what could be understood is assessed, the rest is missing below`,
          style.width,
          '',
          '  ',
        ),
        'red',
        style,
      ),
    stops > 0 &&
      paint(
        wrapText(`${count(stops, 'hazard')} to clear before anything is built: see Stop below`, style.width, '', '  '),
        'red',
        style,
      ),
  );
}

/** The verdict on all requirements together, in one line. */
export function headlineVerdict(result: ResultDocument): string {
  const of = (verdict: string) => result.requirements.filter((requirement) => requirement.verdict === verdict).length;
  const [missed, open, met, total] = [of('missed'), of('not-assessed'), of('met'), result.requirements.length];
  const lost = result.unread.filter(({ part }) => part === 'require').length;
  return total === 0 && lost > 0
    ? `NOT ASSESSED: ${lost === 1 ? 'the one requirement' : `the ${lost} requirements`} of the text could not be read`
    : total === 0
      ? 'no requirement is stated, so there is nothing to be met or missed'
      : missed > 0
        ? `MISSED: ${missed} of ${count(total, 'requirement')} missed${met > 0 ? `, ${met} met` : ''}${open > 0 ? `, ${open} not assessed` : ''}`
        : open > 0
          ? `NOT ASSESSED: ${open} of ${count(total, 'requirement')}${met > 0 ? `; the other ${met} met by the prediction` : ''}`
          : `MET: ${total === 1 ? 'the requirement is' : `all ${total} requirements are`} met by the prediction`;
}
