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

/** Other hazards to people and buildings, each with whom to ask. Printed whatever else is met. */
export function cautionsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const others = result.cautions.filter(({ severity }) => severity !== 'stop');
  return section('Cautions', others.map((caution) => cautionText(caution, style)).join('\n'), style);
}

function cautionText(caution: Caution, style: TextStyle): string {
  const number = caution.number ? ` (${caution.number})` : '';
  return joinLines(
    wrapText(printable(`${caution.hazard}${number}`), style.width, '  ! ', '    '),
    wrapText(printable(caution.why), style.width, '    ', '    '),
    wrapText(printable(`→ ${caution.ask}`), style.width, '    ', '    '),
  );
}
