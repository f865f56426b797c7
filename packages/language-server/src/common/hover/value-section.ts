import { type DimensionName, defaults, type Sourced, type ValueEntry, valueAt } from '@boothwright/language';
import {
  code,
  defaultHover,
  escapeMarkdown,
  evidenceText,
  formatFigures,
  shownUnit,
  temperatureText,
  tradeForm,
} from '@boothwright/presentation';
import type { View } from '../view.js';

/** The trade's way of writing a dimension, where there is one. */
const tradeDimensions = {
  length: 'length',
  'mass-per-area': 'surface-mass',
  density: 'density',
  resistivity: 'resistivity',
  'flow-resistance': 'flow-resistance',
  flow: 'flow',
  mass: 'mass',
  time: 'time',
} as const satisfies Partial<Record<DimensionName, string>>;

const otherUnits: Partial<Record<DimensionName, string>> = {
  volume: 'm³',
  frequency: 'Hz',
  power: 'W',
  concentration: 'ppm',
  stiffness: 'N/m',
  angle: '°',
};

/** Those that are told in another unit where the reader asked for it. */
const inOwnWords: Partial<Record<DimensionName, (value: number) => string>> = {
  area: (value) => inUnit(value, 'm²'),
  speed: (value) => inUnit(value, 'm/s'),
  pressure: (value) => inUnit(value, 'Pa'),
  temperature: (value) => (shownUnit('K').unit === 'K' ? inUnit(value, '°C') : temperatureText(value)),
  'temperature-difference': (value) => inUnit(value, 'K'),
};

function inUnit(value: number, unit: string): string {
  const shown = shownUnit(unit);
  return `${formatFigures(value * shown.factor)} ${shown.unit}`;
}

/** One value of the text: what it is, as typed and as understood, and where it came from. */
export function valueSection(entry: ValueEntry): string {
  const { value, label } = entry;
  const understood = understoodAs(entry);
  const typed = value.text === undefined ? '' : ` ${code(value.text)}`;
  const equals = understood === undefined || sameFigure(understood, value.text) ? '' : ` = ${understood}`;
  return `**${escapeMarkdown(label)}**${typed}${equals} (${origin(value)})`;
}

/** What was assumed in the block on whose header a place is. */
export function defaultsSection(view: View, offset: number): string | undefined {
  const assumed = valueAt(view.checked.values, view.file, offset).filter(
    ({ value }) => value.origin.kind === 'default',
  );
  if (assumed.length === 0) return undefined;
  if (assumed.length === 1) {
    const entry = assumedDefault(assumed[0]!);
    return entry && `**${escapeMarkdown(assumed[0]!.label)}**\n\n${defaultHover(entry)}`;
  }
  const lines = assumed.flatMap((entry) => {
    const known = assumedDefault(entry);
    if (known === undefined) return [];
    const backing = `${evidenceText(known.evidence)}: ${escapeMarkdown(known.source)}`;
    return [`- ${escapeMarkdown(entry.label)}: **${escapeMarkdown(known.text)}** (${backing})`];
  });
  return `Not given, and so assumed; write the fact to replace it:\n\n${lines.join('\n')}`;
}

export function assumedDefault({ value }: ValueEntry) {
  const { origin } = value;
  if (origin.kind !== 'default') return undefined;
  return defaults.find(({ name }) => name === origin.name);
}

function origin({ origin }: Sourced<unknown>): string {
  if (origin.kind === 'given') return 'given here';
  const backing = `${evidenceText(origin.evidence)}: ${escapeMarkdown(origin.source)}`;
  return origin.kind === 'catalogue' ? `catalogue, ${backing}` : `assumed, ${backing}`;
}

function understoodAs({ value, dimension }: ValueEntry): string | undefined {
  if (typeof value.value !== 'number') return undefined;
  const figure = value as Sourced<number>;
  const converted = dimension === 'text' ? undefined : inOwnWords[dimension];
  if (converted !== undefined) return converted(figure.value);
  if (dimension in tradeDimensions)
    return tradeForm(figure, tradeDimensions[dimension as keyof typeof tradeDimensions]);
  const unit = dimension === 'text' ? undefined : otherUnits[dimension];
  return unit && `${formatFigures(figure.value)} ${unit}`;
}

/** `50 mm` typed and `50 mm` understood need not be said twice. */
function sameFigure(understood: string, typed: string | undefined): boolean {
  const plain = (text: string) => text.replace(/²/g, '2').replace(/³/g, '3').replace(/·/g, '.').replace(/\s+/g, ' ');
  return typed !== undefined && plain(typed).startsWith(plain(understood));
}
