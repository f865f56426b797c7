import type { BoothResult, MovingCard, MovingResult, PanelWay } from '@boothwright/assessment';
import { cardGroups } from '../moving/card-groups.js';
import { groupText } from '../moving/group-text.js';
import { panelNumbers } from '../moving/panel-numbers.js';
import { formatQuantity } from '../numbers/format-quantity.js';
import { isImperial } from '../numbers/shown.js';
import { millimetresText, missingText, roomLeftText, roomLengthText } from '../numbers/trade-units.js';
import { bullets, escapeMarkdown, paragraphs, table } from './markdown.js';

/** How many pieces the booth comes in, what they weigh, whether they go in, and in what order they go up. */
export function panelsHover(boothName: string, booth: BoothResult): string {
  const { build, moving } = booth;
  const name = escapeMarkdown(boothName);
  if (build.panelsWhy !== null) return `**No panels** of ${name}: ${escapeMarkdown(build.panelsWhy)}`;
  const heaviest = build.panels.find(({ number }) => number === build.heaviestPanel);
  if (heaviest === undefined) return `**No panels** of ${name}: no face has a build-up`;
  const stuck = stuckCards(moving);
  return paragraphs(
    `**${build.panels.length} panels, the heaviest ${formatQuantity(heaviest.massKg, 'kg')}** (${heaviest.number}, ${escapeMarkdown(heaviest.name)}) of ${name}${heavierLeaf(moving, heaviest.massKg)}${
      moving && moving.ways.length > 0
        ? stuck.length === 0
          ? ' · every piece goes in'
          : ` · **${stuck.length} ${stuck.length === 1 ? 'piece does' : 'pieces do'} not go in**`
        : ''
    }`,
    moving && bullets(cardGroups(moving.cards).map((group) => escapeMarkdown(groupText(group)))),
    moving && problemLines(moving),
    moving && orderText(moving),
    'Common practice says how many people carry; masses from the densities, a tenth either way. Not in it:',
    bullets([...build.panelNotes, ...(moving?.leavesOut ?? [])].map(escapeMarkdown)),
  );
}

/** A leaf of a door is carried like a panel. */
function heavierLeaf(moving: MovingResult | null, massKg: number): string {
  const leaves = moving?.cards.filter((card) => card.panel === null && card.massKg > massKg) ?? [];
  return leaves.map((card) => ` · ${escapeMarkdown(card.name)} ${formatQuantity(card.massKg, 'kg')}`).join('');
}

function stuckCards(moving: MovingResult | null): MovingCard[] {
  return moving?.cards.filter(({ ways }) => ways.some(({ passes }) => passes === 'does-not-go')) ?? [];
}

/** That no order exists is told with its reasons below. */
function problemLines({ problems, assembly }: MovingResult): string | undefined {
  return bullets(
    problems
      .filter(({ id }) => id !== 'no-order' || assembly === null)
      .map(({ text, fix }) => `**${escapeMarkdown(text)}** → ${escapeMarkdown(fix)}`),
  );
}

function orderText({ assembly }: MovingResult): string | undefined {
  if (assembly === null) return undefined;
  if (!assembly.possible) {
    return `**No order of work exists**: ${assembly.blockedBy.map(escapeMarkdown).join('; ')}`;
  }
  const steps = assembly.steps.map(({ step, what, panels }) => {
    const numbers = panels.length > 0 ? ` (${panelNumbers(panels)})` : '';
    return `${step}. ${escapeMarkdown(what)}${numbers}`;
  });
  const assumes = assembly.assumes.length > 0 ? `, if ${assembly.assumes.map(escapeMarkdown).join(' and ')}` : '';
  return paragraphs(`Order of work${assumes}:`, steps.join('\n'));
}

/** Whether every piece passes a place on its way, and what is left there. Undefined for a place that is not known. */
export function wayHover(way: string, boothName: string, { moving }: BoothResult): string | undefined {
  const found = moving?.ways.find(({ name }) => name === way);
  if (!moving || found === undefined) return undefined;
  const rows = moving.cards.flatMap((card) =>
    card.ways.filter((each) => each.way === way).map((each) => ({ card, each })),
  );
  if (rows.length === 0) return undefined;
  const stuck = rows.filter(({ each }) => each.passes === 'does-not-go');
  const tightest = rows.toSorted((a, b) => a.each.leftM - b.each.leftM);
  const least = tightest[0]!;
  const name = escapeMarkdown(boothName);
  const longest = least.each.longestM;
  return paragraphs(
    stuck.length > 0
      ? `**${stuck.length} of ${rows.length} pieces of ${name} do not go through**, ${missingText(-least.each.leftM)} missing`
      : `**Every piece of ${name} goes through**, ${roomLeftText(least.each.leftM)} left for the tightest`,
    table(
      isImperial() ? ['piece', 'width × height', '', 'left'] : ['piece', 'width × height, mm', '', 'left, mm'],
      alike(tightest).slice(0, mostKinds),
    ),
    `The tightest: ${escapeMarkdown(least.each.text)}`,
    stuck.length > 0 && longest !== null && `A panel of this width may be ${roomLengthText(longest)} long`,
    bullets(moving.leavesOut.map(escapeMarkdown)),
  );
}

const mostKinds = 6;
const passesWords = { goes: 'goes', tight: 'only just', 'does-not-go': '**does not go**' } as const;

/** Pieces of one size that pass alike share a row. */
function alike(rows: readonly { readonly card: MovingCard; readonly each: PanelWay }[]): string[][] {
  const kinds = new Map<string, { numbers: number[]; names: string[]; cells: string[] }>();
  for (const { card, each } of rows) {
    const cells = isImperial()
      ? [
          `${millimetresText(card.widthM)} × ${millimetresText(card.heightM)}`,
          passesWords[each.passes],
          roomLeftText(each.leftM),
        ]
      : [
          `${Math.round(card.widthM * 1000)} × ${Math.round(card.heightM * 1000)}`,
          passesWords[each.passes],
          String(Math.floor(each.leftM * 1000 + 1e-6)),
        ];
    const kind = kinds.get(cells.join(' ')) ?? { numbers: [], names: [], cells };
    if (card.panel === null) kind.names.push(escapeMarkdown(card.name));
    else kind.numbers.push(card.panel);
    kinds.set(cells.join(' '), kind);
  }
  return [...kinds.values()].map(({ numbers, names, cells }) => [
    [...(numbers.length > 0 ? [panelNumbers(numbers)] : []), ...names].join(', '),
    ...cells,
  ]);
}
