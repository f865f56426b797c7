import type { AssemblyStep, BoothResult, MovingProblem, MovingResult } from '@boothwright/assessment';
import { cardGroups } from '../../moving/card-groups.js';
import { groupText } from '../../moving/group-text.js';
import { panelNumbers } from '../../moving/panel-numbers.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/** For helpers on moving day: what each panel is and how it goes in, what does not go, and the order of work. */
export function movingSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const { moving } = booth;
  if (!moving) return undefined;
  const line = (text: string, first = '  ', rest = '    ') => wrapText(printable(text), style.width, first, rest);
  return section(
    `Moving in and putting up${suffix}`,
    joinLines(
      ...moving.problems.map((problem) => problemLines(problem, line)),
      ...cardGroups(moving.cards).map((group) => line(groupText(group))),
      ...roomLines(moving).map((text) => line(text)),
      ...stepLines(moving, style.detail, line),
      ...(style.detail === 'full' ? moving.leavesOut : []).map((text) => line(`not in it: ${text}`)),
      moving.asks.length > 0 && line(`not known: ${moving.asks.join('; ')}`),
    ),
    style,
  );
}

type Line = (text: string, first?: string, rest?: string) => string;

function problemLines({ text, fix }: MovingProblem, line: Line): string {
  return `${line(`! ${text}`)}\n${line(`→ ${fix}`, '    ', '      ')}`;
}

/** Roof, sides and doors that are no problem: those that are stand above. */
export function roomLines({ roof, sides, doors, obstacles, problems }: MovingResult): string[] {
  const told = new Set(problems.map(({ id }) => id));
  const shortSides = sides?.filter(({ reachable }) => !reachable) ?? [];
  return [
    ...(roof && !told.has('roof-cannot-go-on') ? [`roof: ${roof.text}`] : []),
    ...(sides
      ? [
          `around it: ${sides.map(({ side, freeM, obstacle }) => `${side} ${millimetres(freeM)}${obstacle ? ` to ${obstacle}` : ''}`).join(', ')}${
            shortSides.length > 0
              ? `; ${shortSides.map(({ side }) => side).join(' and ')} too tight to work from outside, which takes 450 to 600 mm (common practice)`
              : ''
          }`,
        ]
      : []),
    ...doors.filter(({ opensDeg }) => opensDeg === 90).map(({ text }) => text),
    ...obstacles
      .filter(({ collides, aboveM, gapM }) => !collides && (aboveM !== null || gapM < near))
      .map(({ text }) => text),
  ];
}

/** m; what stands farther away is not told. */
const near = 0.3;

function stepLines({ assembly, cards }: MovingResult, detail: TextStyle['detail'], line: Line): string[] {
  if (!assembly?.possible) return [];
  const isShort = detail === 'short';
  const assumes = assembly.assumes.length > 0 ? `, if ${assembly.assumes.join(' and ')}` : '';
  return [
    line(`order of work${assumes}:`),
    ...assembly.steps.map((step) => line(stepText(step, isShort, cards.length > 0), `  ${step.step}. `, '     ')),
  ];
}

function stepText({ what, panels, why }: AssemblyStep, isShort: boolean, numbered: boolean): string {
  const numbers = numbered && panels.length > 0 ? ` (${panelNumbers(panels)})` : '';
  return `${what}${numbers}${isShort ? '' : `: ${why}`}`;
}

function millimetres(metres: number): string {
  return metres < 1 ? `${Math.round(metres * 1000)} mm` : `${metres.toFixed(2)} m`;
}
