import type { Caution, ResultDocument } from '@boothwright/assessment';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import { paint, type TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/** Hazards to clear before anything is built, each with whom to ask. */
export function stopSection(result: ResultDocument, style: TextStyle): string | undefined {
  const stops = result.cautions.filter(({ severity }) => severity === 'stop');
  return section(paint('Stop', 'red', style), stops.map((caution) => cautionText(caution, style)).join('\n'), style);
}

/**
 * Other hazards to people and buildings, each with whom to ask. Printed whatever else is met. The short report keeps what
 * the facts of this text bring up to hazard, number and whom to ask, and names the rest in one paragraph.
 */
export function cautionsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const of = (wanted: Caution['severity']) => result.cautions.filter(({ severity }) => severity === wanted);
  const [own, notes] = [of('caution'), of('note')];
  if (style.detail === 'full') {
    return section('Cautions', [...own, ...notes].map((entry) => cautionText(entry, style)).join('\n'), style);
  }
  const general = notes.map(({ hazard }) => hazard).join('; ');
  return section(
    'Cautions',
    joinLines(
      ...own.map((entry) =>
        joinLines(
          wrapText(printable(hazardText(entry)), style.width, '  ! ', '    '),
          wrapText(printable(`→ ${entry.ask}`), style.width, '    ', '      '),
        ),
      ),
      general && wrapText(printable(`With any booth: ${general}.`), style.width, '  ! ', '    '),
      wrapText(
        'None of this replaces local codes and licensed practice; ask before you build.',
        style.width,
        '  ',
        '  ',
      ),
    ),
    style,
  );
}

function cautionText(caution: Caution, style: TextStyle): string {
  return joinLines(
    wrapText(printable(hazardText(caution)), style.width, '  ! ', '    '),
    wrapText(printable(caution.why), style.width, '    ', '    '),
    wrapText(printable(`→ ${caution.ask}`), style.width, '    ', '    '),
  );
}

function hazardText({ hazard, number }: Caution): string {
  return number ? `${hazard} (${number})` : hazard;
}
