import { type Caution, isDeadly, type ResultDocument } from '@boothwright/assessment';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import { paint, type TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/** Hazards to clear before anything is built, each with whom to ask. */
export function stopSection(result: ResultDocument, style: TextStyle): string | undefined {
  const stops = result.cautions.filter(({ severity }) => severity === 'stop');
  return section(paint('Stop', 'red', style), stops.map((caution) => cautionText(caution, style)).join('\n'), style);
}

/** Name of the section, to which the summary points. */
export const deadlyHeading = 'Hazards that can kill';

/** Hazards that can kill and that the booth as written has, high up: nobody may miss them below the figures. */
export function deadlySection(result: ResultDocument, style: TextStyle): string | undefined {
  const entries = deadlyCautions(result);
  const text = style.detail === 'full' ? cautionText : shortText;
  return section(paint(deadlyHeading, 'red', style), entries.map((caution) => text(caution, style)).join('\n'), style);
}

/** Those that do not stand under Stop already. */
export function deadlyCautions(result: ResultDocument): readonly Caution[] {
  return result.cautions.filter((caution) => caution.severity === 'caution' && isDeadly(caution));
}

/**
 * Other hazards to people and buildings, each with whom to ask. Printed whatever else is met. The short report keeps what
 * the facts of this text bring up to hazard, number and whom to ask, and names the rest in one paragraph.
 */
export function cautionsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const of = (wanted: Caution['severity']) => result.cautions.filter(({ severity }) => severity === wanted);
  const [own, notes] = [of('caution').filter((caution) => !isDeadly(caution)), of('note')];
  const heading = deadlyCautions(result).length > 0 ? 'Other cautions' : 'Cautions';
  if (style.detail === 'full') {
    return section(heading, [...own, ...notes].map((entry) => cautionText(entry, style)).join('\n'), style);
  }
  if (own.length + notes.length === 0) return undefined;
  const general = notes.map(({ hazard }) => hazard).join('; ');
  return section(
    heading,
    joinLines(
      ...own.map((entry) => shortText(entry, style)),
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

function shortText(caution: Caution, style: TextStyle): string {
  return joinLines(
    wrapText(printable(hazardText(caution)), style.width, '  ! ', '    '),
    wrapText(printable(`→ ${caution.ask}`), style.width, '    ', '      '),
  );
}

function cautionText(caution: Caution, style: TextStyle): string {
  return joinLines(
    wrapText(printable(hazardText(caution)), style.width, '  ! ', '    '),
    wrapText(printable(caution.why), style.width, '    ', '    '),
    wrapText(printable(`→ ${caution.ask}`), style.width, '    ', '    '),
  );
}

export function hazardText({ hazard, number }: Caution): string {
  return number ? `${hazard} (${number})` : hazard;
}
