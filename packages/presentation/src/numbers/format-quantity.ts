import { formatFigures, formatNumber } from './format-number.js';
import { isImperial } from './shown.js';
import { imperialPer } from './trade-units.js';

interface UnitForm {
  readonly factor: number;
  readonly decimals: number;
  readonly before?: string;
  readonly after?: string;
}

/** How a figure of the result document is written for a reader. Units that are not listed get three figures. */
const forms: Readonly<Record<string, UnitForm>> = {
  dB: { factor: 1, decimals: 0, after: 'dB' },
  dBA: { factor: 1, decimals: 0, after: 'dBA' },
  dBZ: { factor: 1, decimals: 0, after: 'dB' },
  dBFS: { factor: 1, decimals: 0, after: 'dBFS' },
  NC: { factor: 1, decimals: 0, before: 'NC' },
  STC: { factor: 1, decimals: 0, before: 'STC' },
  Rw: { factor: 1, decimals: 0, before: 'Rw' },
  s: { factor: 1, decimals: 2, after: 's' },
  min: { factor: 1, decimals: 0, after: 'min' },
  ppm: { factor: 1, decimals: 0, after: 'ppm' },
  kg: { factor: 1, decimals: 0, after: 'kg' },
  Pa: { factor: 1e-3, decimals: 1, after: 'kPa' },
  kPa: { factor: 1, decimals: 1, after: 'kPa' },
  m: { factor: 1, decimals: 3, after: 'm' },
  'kg/m2': { factor: 1, decimals: 1, after: 'kg/m²' },
  Hz: { factor: 1, decimals: 0, after: 'Hz' },
  K: { factor: 1, decimals: 1, after: 'K' },
  EUR: { factor: 1, decimals: 0, after: 'EUR' },
  USD: { factor: 1, decimals: 0, after: 'USD' },
  GBP: { factor: 1, decimals: 0, after: 'GBP' },
};

/** Those that have another unit for a reader who thinks in feet and pounds; levels, ratings and times have none. */
const imperialForms: Readonly<Record<string, UnitForm>> = {
  kg: { factor: imperialPer.pounds, decimals: 0, after: 'lb' },
  Pa: { factor: imperialPer.psf, decimals: 0, after: 'lb/ft²' },
  kPa: { factor: 1000 * imperialPer.psf, decimals: 0, after: 'lb/ft²' },
  m: { factor: imperialPer.feet, decimals: 2, after: 'ft' },
  mm: { factor: imperialPer.inches / 1000, decimals: 2, after: 'in' },
  m2: { factor: imperialPer.squareFeet, decimals: 1, after: 'ft²' },
  'm²': { factor: imperialPer.squareFeet, decimals: 1, after: 'ft²' },
  'kg/m2': { factor: imperialPer.poundsPerSquareFoot, decimals: 2, after: 'lb/ft²' },
  'kg/m²': { factor: imperialPer.poundsPerSquareFoot, decimals: 2, after: 'lb/ft²' },
  'L/s': { factor: imperialPer.cfm / 1000, decimals: 1, after: 'cfm' },
  'm/s': { factor: imperialPer.feetPerMinute, decimals: 0, after: 'ft/min' },
  K: { factor: 1.8, decimals: 1, after: '°F' },
};

/** Whether a figure in this unit is told in another one now. */
export function isConverted(unit: string): boolean {
  return isImperial() && imperialForms[unit] !== undefined;
}

/** The unit in which figures of this one are told now, and what one of it is in that. */
export function shownUnit(unit: string): { readonly factor: number; readonly unit: string } {
  const form = isImperial() ? imperialForms[unit] : undefined;
  return form?.after === undefined ? { factor: 1, unit } : { factor: form.factor, unit: form.after };
}

function formOf(unit: string): UnitForm | undefined {
  return (isImperial() ? imperialForms[unit] : undefined) ?? forms[unit];
}

function write(number: string, form: UnitForm): string {
  return [form.before, number, form.after].filter(Boolean).join(' ');
}

/** `value` in `unit` as a reader expects it, e.g. `NC 19`, `2.6 kPa`, `−57 dBFS`; `extraDecimals` when rounding would hide a difference. */
export function formatQuantity(value: number, unit: string, extraDecimals = 0): string {
  const form = formOf(unit);
  if (form) return write(formatNumber(value * form.factor, form.decimals + extraDecimals), form);
  return `${extraDecimals > 0 ? formatFigures(value, 3 + extraDecimals) : formatFigures(value)} ${unit}`.trim();
}

/**
 * Decimals to add so that `value` and `limit` do not look equal when they are not, and so that a difference that is
 * printed in tenths of a decibel follows from the two; at most two.
 */
export function decimalsToTell(value: number, limit: number, unit: string): number {
  if (value === limit || (Number.isInteger(value) && Number.isInteger(limit))) return 0;
  if (unit.startsWith('dB') && Math.abs(value - limit) < 1.95 && Math.abs(value - limit) >= 0.05) return 1;
  for (const extra of [0, 1, 2])
    if (formatQuantity(value, unit, extra) !== formatQuantity(limit, unit, extra)) return extra;
  return 2;
}

/** `low to high`, with the unit once. */
export function formatRange(low: number, high: number, unit: string, extraDecimals = 0): string {
  const form = formOf(unit);
  const bare = (value: number) =>
    form ? formatNumber(value * form.factor, form.decimals + extraDecimals) : formatFigures(value, 3 + extraDecimals);
  return `${bare(low)} to ${bare(high)}`;
}

/** A difference without a sign, e.g. for `missed by 7 dB`. Levels are compared in dB whatever their weighting. */
export function formatDifference(difference: number, unit: string): string {
  const size = Math.abs(difference);
  if (unit === 'NC' || unit === 'STC' || unit === 'Rw') {
    const points = formatNumber(size, size < 1 && size > 0 ? 1 : 0);
    return `${points} ${points === '1' ? 'point' : 'points'}`;
  }
  const differenceUnit = unit.startsWith('dB') ? 'dB' : unit;
  if (differenceUnit === 'dB') return formatQuantity(size, 'dB', size < 1.95 && size > 0 ? 1 : 0);
  const shown = formatQuantity(size, differenceUnit);
  return size > 0 && Number.parseFloat(shown) === 0 ? formatQuantity(size, differenceUnit, 1) : shown;
}
