import type { BoothResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

/** Size, mass, floor load, money. */
export function buildSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const { build, geometry } = booth;
  const size = (metres: readonly number[]) => `${metres.map((metre) => formatNumber(metre, 2)).join(' × ')} m`;
  const parts = build.massByPart
    .filter(({ kg }) => kg > 0)
    .map(({ part, kg }) => `${printable(part)} ${formatQuantity(kg, 'kg')}`);
  const rows = [
    [
      'size',
      `outside ${size(geometry.outsideM)}, inside ${size(geometry.insideM)}, usable ${size(geometry.usableM)} (width × depth × height)`,
    ],
    ['mass', `${formatQuantity(build.massKg, 'kg')} empty, ${formatQuantity(build.loadedMassKg, 'kg')} in use`],
    ['floor', `${formatQuantity(build.floorLoadPa, 'Pa')} spread over ${formatFigures(build.footprintM2)} m²`],
    ...(build.cost
      ? [
          [
            'cost',
            `${formatNumber(build.cost.amount)} ${build.cost.currency}, ${formatNumber(build.cost.withReserve)} ${build.cost.currency} with reserve`,
          ],
        ]
      : []),
  ];
  return section(
    `Size, mass, floor, cost${suffix}`,
    joinLines(
      textTable([{ head: '' }, { head: '' }], rows)
        .split('\n')
        .map((line) => wrapAligned(line, style.width))
        .join('\n'),
      parts.length > 0 && wrapText(`mass by part: ${parts.join(', ')}`, style.width, '  ', '    '),
    ),
    style,
  );
}

/** Wraps a `label  text` line so that what follows stays under the text. */
function wrapAligned(line: string, width: number): string {
  const match = /^( {2}\S+ +)(.*)$/.exec(line);
  return match ? wrapText(match[2] ?? '', width, match[1], ' '.repeat(match[1]?.length ?? 0)) : line;
}
