import type { LoadedTable, TableProblem, TableQuantity } from './loaded-table.js';
import { type TableRecord, tableFromRecords } from './table-from-records.js';

/** Names under which the list of bands and the values beside it are looked for. */
const bandLists = ['bands', 'bandsHz', 'bands_Hz', 'frequencies'];
const valueLists = ['values', 'alpha', 'absorption', 'R', 'transmissionLoss', 'transmission_loss', 'R_dB'];

/**
 * Absorption coefficients out of JSON: a list of objects, or an object that holds one as `rows` or `entries`.
 *
 * Each object has an id and/or name and its values as a list beside a list of bands (`bands` and `values`), as an object by
 * band (`"values": { "125": 0.2 }`), or as fields named by band. Cells are read as in `loadAbsorptionCsv`; other fields
 * are kept as text. Rows count from 1.
 */
export function loadAbsorptionJson(text: string): LoadedTable {
  return loadJson(text, 'absorption');
}

/** Transmission loss in dB out of JSON; see `loadAbsorptionJson`. */
export function loadTransmissionLossJson(text: string): LoadedTable {
  return loadJson(text, 'transmission-loss');
}

function loadJson(text: string, quantity: TableQuantity): LoadedTable {
  const problems: TableProblem[] = [];
  const fail = (message: string) => tableFromRecords([], quantity, [{ severity: 'error', message }]);
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return fail(`table is not JSON: ${error instanceof Error ? error.message : String(error)}`);
  }
  const list = Array.isArray(data) ? data : isObject(data) ? (data.rows ?? data.entries) : undefined;
  if (!Array.isArray(list))
    return fail('table has no list of rows, expected a list, or an object with rows or entries');
  const records = list.map((item: unknown, index): TableRecord => {
    const row = index + 1;
    if (isObject(item)) return { row, cells: cellsOf(item, row, problems) };
    const found = textOf(item);
    problems.push({ severity: 'error', row, found, message: `row ${row}: is ${found}, expected an object` });
    return { row, cells: [['value', found]] };
  });
  return tableFromRecords(records, quantity, problems);
}

function cellsOf(item: Record<string, unknown>, row: number, problems: TableProblem[]): [string, string][] {
  const cells: [string, string][] = [];
  const bandsName = bandLists.find((name) => Array.isArray(item[name]));
  const valuesName = valueLists.find((name) => Array.isArray(item[name]) || isObject(item[name]));
  const values = valuesName === undefined ? undefined : item[valuesName];
  const used = new Set<string>();
  if (valuesName !== undefined && isObject(values)) {
    used.add(valuesName);
    for (const [band, value] of Object.entries(values)) cells.push([band, textOf(value)]);
  } else if (valuesName !== undefined && bandsName !== undefined && Array.isArray(values)) {
    const bands = item[bandsName] as unknown[];
    if (bands.length === values.length) {
      used.add(valuesName).add(bandsName);
      bands.forEach((band, i) => {
        cells.push([textOf(band), textOf(values[i])]);
      });
    } else {
      const message = `row ${row}, column ${valuesName}: ${values.length} values for ${bands.length} bands, expected as many; kept as text`;
      problems.push({ severity: 'error', row, column: valuesName, message });
    }
  } else if (valuesName !== undefined) {
    const message = `row ${row}, column ${valuesName}: a list without bands, expected a list named bands beside it; kept as text`;
    problems.push({ severity: 'error', row, column: valuesName, message });
  }
  for (const [name, value] of Object.entries(item)) if (!used.has(name)) cells.push([name, textOf(value)]);
  return cells;
}

function textOf(value: unknown): string {
  if (value === null || value === undefined) return '';
  return typeof value === 'string' ? value : typeof value === 'object' ? JSON.stringify(value) : String(value);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
