import { type Info, parse } from 'csv-parse/browser/esm/sync';
import { bandHeading } from './band-heading.js';
import type { LoadedTable, TableProblem, TableQuantity } from './loaded-table.js';
import { noBand, type TableRecord, tableFromRecords } from './table-from-records.js';

const lineBreak = /\r\n|\n|\r/;
const delimiters = [';', '\t', ',', '|'];

/**
 * Absorption coefficients out of a text table, one row for each material and one column for each band.
 *
 * The first line holds the headings: id and/or name, bands as "125", "125 Hz", "1k" or "1 kHz", with "(%)" for percent, and
 * any others, which are kept as text. Separated by comma, semicolon, tab or bar, whichever splits the first line
 * most. A decimal comma is read where it cannot be one of thousands, a percent sign anywhere, a byte-order mark skipped.
 * Nothing is lost: what can't be understood is null with its text beside it and a problem that names row (line) and
 * column. See `rowsOrThrow` for the strict variant.
 *
 * @example
 * ```ts
 * import { loadAbsorptionCsv } from '@boothwright/acoustics/loaders';
 *
 * const table = loadAbsorptionCsv('id;125;250 Hz;1k\nfelt;0,1;45 %;x');
 * table.rows[0].values.map(({ value }) => value); // [0.1, 0.45, null]
 * table.problems.filter(({ severity }) => severity === 'error').length; // 1
 * ```
 */
export function loadAbsorptionCsv(text: string): LoadedTable {
  return loadCsv(text, 'absorption');
}

/** Transmission loss in dB out of a text table; see `loadAbsorptionCsv`. Percent is an error here. */
export function loadTransmissionLossCsv(text: string): LoadedTable {
  return loadCsv(text, 'transmission-loss');
}

function loadCsv(text: string, quantity: TableQuantity): LoadedTable {
  const problems: TableProblem[] = [];
  const withoutMark = text.replace(/^\uFEFF/, '');
  const lines = readLines(withoutMark, problems);
  const [heading, ...rest] = lines;
  if (heading === undefined) {
    problems.push({ severity: 'error', message: 'table is empty, expected a line of headings' });
    return tableFromRecords([], quantity, problems);
  }
  if (rest.length === 0) {
    problems.push({ severity: 'error', message: 'table has headings and no row, expected one row or more' });
  }
  const columns = heading.fields.map((column, index) => (column.trim() === '' ? `column ${index + 1}` : column.trim()));
  if (rest.length === 0 && !columns.some((column) => bandHeading(column).kind === 'band')) {
    problems.push({ severity: 'error', message: noBand });
  }
  const records = rest.map(({ line, fields }): TableRecord => {
    const shifted = fields.length > columns.length;
    if (fields.length !== columns.length) {
      const left = shifted ? '; no value of it is taken, as a decimal comma would shift them' : '';
      const message = `row ${line}: ${fields.length} cells, expected ${columns.length} as in the headings${left}`;
      problems.push({ severity: 'error', row: line, message });
    }
    const names = fields.map((_, index) => columns[index] ?? `column ${index + 1}`);
    const absent = columns.slice(fields.length).map((column) => [column, ''] as const);
    return { row: line, shifted, cells: [...fields.map((field, index) => [names[index]!, field] as const), ...absent] };
  });
  return tableFromRecords(records, quantity, problems);
}

function readLines(text: string, problems: TableProblem[]): { line: number; fields: string[] }[] {
  const lines: { line: number; fields: string[] }[] = [];
  const firstLine = text.split(lineBreak).find((line) => line.trim() !== '') ?? '';
  const counts = delimiters.map((delimiter) => firstLine.split(delimiter).length);
  const delimiter = delimiters[counts.indexOf(Math.max(...counts))]!;
  let skipped = false;
  const read = new Set<number>();
  try {
    const parsed = parse(text, {
      delimiter,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      skip_records_with_error: true,
      on_skip: () => {
        skipped = true;
        return undefined;
      },
    }) as unknown as { info: Info; record: string[] }[];
    for (const { info, record } of parsed) {
      const breaks = record.reduce((sum, field) => sum + field.split(lineBreak).length - 1, 0);
      for (let line = info.lines - breaks; line <= info.lines; line++) read.add(line);
      if (record.every((field) => field.trim() === '')) continue;
      lines.push({ line: info.lines, fields: record });
    }
    if (skipped) problems.push(...lostRows(text, read));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    problems.push({ severity: 'error', message: `table cannot be split into rows: ${reason}` });
  }
  return lines;
}

/** Every line with a text that is in no record: an open quotation mark takes all up to the next one, or to the end. */
function lostRows(text: string, read: ReadonlySet<number>): TableProblem[] {
  return text.split(lineBreak).flatMap((content, index): TableProblem[] => {
    const row = index + 1;
    if (content.trim() === '' || read.has(row)) return [];
    const message = `row ${row}: lost, as quotation marks do not pair up, expected them round a whole cell`;
    return [{ severity: 'error', row, found: content, message }];
  });
}
