import type { BandTable, Level, Price, Sourced } from '@boothwright/language';
import { hertz } from '../../text/hertz.js';
import { isObject, isSourced } from './leaf.js';

/** A number with its unit as it was typed, no name and no sum: what a reader finds again in the text. */
const plainFigure = /^[-+−]?[\d.,/\- ]+\s*[^\d\s+*()]*$/;

/** A value as its text has it where that says the value itself, otherwise worked out. */
export function shownValue(value: unknown, unit: string | undefined): string {
  if (!isSourced(value)) return shownPlain(value, unit);
  const assumed = value.origin.kind === 'default' ? ' (assumed)' : '';
  return `${ownText(value) ?? shownPlain(value.value, unit)}${assumed}`;
}

function ownText({ text, value }: Sourced<unknown>): string | undefined {
  if (text === undefined) return undefined;
  return typeof value === 'number' && !plainFigure.test(text.trim()) ? undefined : text.trim();
}

/** `63 Hz 58 dB, 125 Hz 52 dB`, of the bands that are asked for. */
export function shownBands(table: BandTable, unit: string | undefined, only?: ReadonlySet<number>): string {
  return table.values
    .filter(({ hz }) => only === undefined || only.has(hz))
    .map(({ hz, value }) => `${hertz(hz)} ${shownNumber(value, unit)}`)
    .join(', ');
}

export function isBandTable(value: unknown): value is BandTable {
  return isObject(value) && 'grid' in value && 'values' in value;
}

export function shownPlain(value: unknown, unit: string | undefined): string {
  if (typeof value === 'number') return shownNumber(value, unit);
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (isBandTable(value)) return shownBands(value, unit);
  if (Array.isArray(value)) return value.map((entry) => shownValue(entry, unit)).join(', ');
  if (!isObject(value)) return '';
  if ('decibels' in value) return shownLevel(value as Level);
  if ('amount' in value) return shownPrice(value as Price);
  if ('from' in value && 'to' in value) return `${clock(value.from as number)} to ${clock(value.to as number)}`;
  return Object.values(value)
    .map((entry) => shownValue(entry, unit))
    .join(' ');
}

function shownLevel({ decibels, weighting }: Level): string {
  if (weighting === 'NC') return `NC ${figure(decibels)}`;
  return `${figure(decibels)} dB${weighting === 'none' || weighting === 'Z' ? '' : weighting}`;
}

function shownPrice({ amount, currency, per }: Price): string {
  return `${amount.toFixed(2)} ${currency}${per === undefined ? '' : ` per ${per}`}`;
}

/** The unit in which a reader expects it, for each unit of the model. */
function shownNumber(value: number, unit: string | undefined): string {
  if (unit === undefined) return figure(value);
  if (unit === 'clock') return clock(value);
  if (unit === 'm') return Math.abs(value) < 1 ? `${figure(value * 1000)} mm` : `${figure(value)} m`;
  if (unit === 's') return value >= 60 ? `${figure(value / 60)} min` : `${figure(value)} s`;
  if (unit === 'm3/s') return `${figure(value * 1000)} L/s`;
  if (unit === 'Pa') return Math.abs(value) < 1000 ? `${figure(value)} Pa` : pascals(value);
  return `${figure(value)} ${unit}`;
}

function pascals(value: number): string {
  if (value >= 1e9) return `${figure(value / 1e9)} GPa`;
  return value >= 1e6 ? `${figure(value / 1e6)} MPa` : `${figure(value / 1e3)} kPa`;
}

/** Six figures, without zeros at the end. */
function figure(value: number): string {
  return String(Number(value.toPrecision(6)));
}

function clock(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
