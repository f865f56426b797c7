import { finiteRadiationFactors } from './finite-radiation-factor.js';
import type { PanelSize } from './layer.js';

/** Radiation factor of one window at one wavenumber as a quick function of cos theta. */
export type RadiationTable = {
  readonly step: number;
  readonly values: Float64Array;
  /** Above this cosine the expansion for large windows serves. */
  readonly tableEnd: number;
  /** 1/(pi k^2 a b) */
  readonly smallness: number;
};

/** Steps of the table; the interpolation error stays below 1 % of the factor (see the tests). */
const tableSteps = 32;
/** k b cos^2 theta beyond which the expansion is good to a small part of a percent; b is the shorter side. */
const expansionFrom = 40;
const mostTables = 4000;
/** Tables by wavenumber, by the longer side, by the shorter one. */
let tables = new Map<number, Map<number, Map<number, RadiationTable>>>();
let made = 0;

/**
 * The table for a window and a wavenumber, made once and kept: many walls share a size, and all bands share the sample
 * frequencies. All are dropped when there are many. The store holds nothing but values of a pure function.
 */
export function radiationTable(k: number, size: PanelSize): RadiationTable {
  const short = Math.min(size.width, size.height);
  const long = Math.max(size.width, size.height);
  const known = tables.get(short)?.get(long)?.get(k);
  if (known !== undefined) return known;
  const tableEnd = Math.min(1, Math.sqrt(expansionFrom / (k * short)));
  const step = tableEnd / tableSteps;
  const sines = Array.from({ length: tableSteps + 1 }, (_, i) => Math.sqrt(Math.max(0, 1 - (i * step) ** 2)));
  const values = Float64Array.from(finiteRadiationFactors(k, sines, size));
  const table = { step, values, tableEnd, smallness: 1 / (Math.PI * k * k * short * long) };
  if (made >= mostTables) {
    tables = new Map();
    made = 0;
  }
  made += 1;
  inner(inner(tables, short), long).set(k, table);
  return table;
}

function inner<T>(maps: Map<number, Map<number, T>>, key: number): Map<number, T> {
  const known = maps.get(key);
  if (known !== undefined) return known;
  const map = new Map<number, T>();
  maps.set(key, map);
  return map;
}

/**
 * Looks the factor up: four-point interpolation in cos theta inside the table (the factor is even in it), beyond it
 * sigma = 1/q (1 - (3 - q^2)/(pi k^2 a b q^4)), the two leading terms of the integral for a window of many wavelengths.
 */
export function lookUpRadiation(table: RadiationTable, cosine: number): number {
  if (cosine >= table.tableEnd && table.tableEnd < 1) {
    const square = cosine * cosine;
    return (1 - (table.smallness * (3 - square)) / (square * square)) / cosine;
  }
  const place = cosine / table.step;
  const last = tableSteps - 2;
  const index = Math.min(last, Math.floor(place));
  const t = place - index;
  const v = table.values;
  const a = v[index === 0 ? 1 : index - 1]!;
  const b = v[index]!;
  const c = v[index + 1]!;
  const d = v[index + 2]!;
  // Lagrange through the points -1, 0, 1, 2.
  return (
    (-t * (t - 1) * (t - 2) * a) / 6 +
    ((t + 1) * (t - 1) * (t - 2) * b) / 2 -
    ((t + 1) * t * (t - 2) * c) / 2 +
    ((t + 1) * t * (t - 1) * d) / 6
  );
}
