import type { BoothResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { costText, quantityText, shareText } from '../../parts/stock-words.js';
import { printable } from '../printable.js';
import { section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

/** Size, mass and panels, floor, what to buy, money, seams: what a builder asks before the first sheet is bought. */
export function buildSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const { build, geometry } = booth;
  const size = (metres: readonly number[]) => `${metres.map((metre) => formatNumber(metre, 2)).join(' × ')} m`;
  const full = style.detail === 'full';
  const rows: [string, string | undefined][] = [
    [
      'size',
      `outside ${size(geometry.outsideM)}, inside ${size(geometry.insideM)}, usable ${size(geometry.usableM)} (width × depth × height)`,
    ],
    [
      'mass',
      `${formatQuantity(build.massKg, 'kg')} empty, ${formatQuantity(build.loadedMassKg, 'kg')} in use: ${massWords(build, full)}`,
    ],
    ['panels', panelWords(build)],
    ['floor', floorWords(build)],
    ['', build.structure.joistWords ?? undefined],
    ['', build.structure.words],
    ['to buy', buyWords(build, full)],
    ['', problemWords(build)],
    ['cost', costWords(build)],
    ['', full ? groupWords(build) : undefined],
    ['seams', full ? sealWords(build) : undefined],
  ];
  return section(
    `Size, mass, floor, cost${suffix}`,
    textTable(
      [{ head: '' }, { head: '' }],
      rows.flatMap(([label, text]) => (text ? [[label, text]] : [])),
    )
      .split('\n')
      .map((line) => wrapAligned(line, style.width))
      .join('\n'),
    style,
  );
}

type Build = BoothResult['build'];

/** The heaviest parts; all of them in the full report. */
function massWords({ massByPart }: Build, full: boolean): string {
  const parts = [...massByPart].filter(({ kg }) => kg > 0);
  const shown = full ? parts : parts.sort((a, b) => b.kg - a.kg).slice(0, 4);
  const rest = parts.length - shown.length;
  const words = shown.map(({ part, kg }) => `${printable(part)} ${formatQuantity(kg, 'kg')}`).join(', ');
  return rest > 0 ? `${words} and ${rest} more` : words;
}

function panelWords({ panels, panelsWhy, heaviestPanel }: Build): string {
  if (panelsWhy !== null) return `${panelsWhy}: no cut list, no mass of a panel`;
  const worst = panels.find(({ number }) => number === heaviestPanel);
  if (worst === undefined) return 'no face has a build-up';
  const tip = panels.flatMap(({ tipAngleDegrees }) => (tipAngleDegrees === null ? [] : [tipAngleDegrees]));
  const leans =
    tip.length > 0 ? `; a wall panel standing alone falls once it leans ${formatNumber(Math.min(...tip), 1)}°` : '';
  return `${panels.length}, the heaviest ${formatNumber(worst.massKg, 1)} kg (panel ${worst.number}, ${printable(worst.name)})${leans}`;
}

function floorWords({ floorLoadPa, footprintM2, structure }: Build): string {
  const heaviest = structure.lineLoads.reduce<(typeof structure.lineLoads)[number] | undefined>(
    (best, line) => (best === undefined || line.nPerM > best.nPerM ? line : best),
    undefined,
  );
  const [bedroom] = structure.beside;
  return [
    `${formatQuantity(floorLoadPa, 'Pa')} spread over ${formatFigures(footprintM2)} m²`,
    bedroom === undefined
      ? ''
      : `, ${formatNumber(bedroom.ratio, 1)} times the ${formatNumber(bedroom.pa / 1000, 2)} kPa often quoted for ${bedroom.name}`,
    heaviest === undefined ? '' : `; under the ${heaviest.face} wall ${formatNumber(heaviest.nPerM / 1000, 2)} kN/m`,
    structure.perMountN === null ? '' : `; on each mount ${formatNumber(structure.perMountN / 1000, 2)} kN`,
  ].join('');
}

/** Boards and lengths; soft goods in the full report. */
function buyWords({ shopping }: Build, full: boolean): string | undefined {
  const shown = full ? shopping.stock : shopping.stock.filter(({ form }) => form !== 'soft');
  const rest = shopping.stock.length - shown.length;
  const words = shown.map((row) => {
    const waste = row.wasteShare === null ? '' : ` (${shareText(row.wasteShare)} waste)`;
    return `${quantityText(row)} ${printable(row.name)}${waste}`;
  });
  if (rest > 0) words.push(`${rest} soft goods by the m²`);
  return words.length > 0 ? `${words.join(', ')}: \`boothwright parts\` lists every cut` : undefined;
}

/** Pieces that no sheet yields, and items of the budget that buy too little or too much. */
export function problemWords({ shopping, sheetLayouts, lengthLayouts }: Build): string | undefined {
  const tooBig = [
    ...sheetLayouts.flatMap((layout) => layout.tooBig.map((piece) => ({ ...piece, stock: layout.stock }))),
    ...lengthLayouts.flatMap((layout) => layout.tooLong.map((piece) => ({ ...piece, stock: layout.stock }))),
  ];
  const owners = [...new Set(tooBig.map(({ owner }) => owner))];
  const [first] = owners;
  const words = [
    ...(first === undefined
      ? []
      : [
          `${printable(first)}${owners.length > 1 ? ` and ${owners.length - 1} more are` : ' is'} bigger than any sheet or length: split it or buy bigger`,
        ]),
    ...shopping.checks
      .filter(({ verdict }) => verdict !== 'enough')
      .map(({ items, verdict, bought, needed, atLeast, unit }) => {
        const names = items.map(printable).join(' and ');
        if (verdict === 'unused') return `no part uses what ${names} buys`;
        const need = `${atLeast ? 'at least ' : ''}${formatFigures(needed)}`;
        return `${names} buys ${formatFigures(bought)} where ${need} ${unitWords(unit, needed)} are needed${verdict === 'too-many' ? ', more than enough' : ''}`;
      }),
  ];
  return words.length > 0 ? `but ${words.join('; ')}` : undefined;
}

function unitWords(unit: string, count: number): string {
  if (unit === 'm2') return 'm²';
  return (unit === 'sheet' || unit === 'piece') && count !== 1 ? `${unit}s` : unit;
}

export function costWords({ cost, shopping }: Build): string | undefined {
  const { counted, typed, withoutPrice } = shopping;
  if (typed.length === 0 && counted.length === 0) return undefined;
  const words: string[] = [];
  if (cost !== null) {
    words.push(`${costText(cost)} as listed, ${costText({ ...cost, amount: cost.withReserve })} with reserve`);
  } else if (typed.length > 0) {
    words.push(`${typed.map(costText).join(' and ')} as listed, never added`);
  }
  const differs = counted.some(
    (sum) => Math.abs(sum.amount - (typed.find((t) => t.currency === sum.currency)?.amount ?? 0)) > 0.5,
  );
  if (differs) {
    const sums = counted.map((sum) => costText({ ...sum, amount: sum.withReserve })).join(' and ');
    words.push(`with just the quantities counted here, more of some and fewer of others, ${sums} with reserve`);
  }
  if (withoutPrice.length > 0) {
    const [first, second] = withoutPrice;
    const more = withoutPrice.length > 2 ? ` and ${withoutPrice.length - 2} more` : '';
    words.push(
      `not counted, no item is \`for\` them: ${[first, second]
        .filter(Boolean)
        .map((name) => printable(name as string))
        .join(', ')}${more}`,
    );
  }
  return words.join('; ');
}

function groupWords({ shopping }: Build): string | undefined {
  const top = shopping.groups.slice(0, 4).map(({ name, share }) => `${printable(name)} ${shareText(share)}`);
  return top.length > 0 ? `most of it for ${top.join(', ')}` : undefined;
}

function sealWords({ sealing }: Build): string | undefined {
  const words = sealing.totals.map(({ kind, metres }) => `${formatNumber(metres, 1)} m ${kind}`);
  return words.length > 0 ? words.join(', ') : undefined;
}

/** Wraps a `label  text` line so that what follows stays under the text. */
function wrapAligned(line: string, width: number): string {
  const match = /^( {2}(?:to buy|\S+)? +)(.*)$/.exec(line);
  return match ? wrapText(match[2] ?? '', width, match[1], ' '.repeat(match[1]?.length ?? 0)) : line;
}
