import { bandHeading } from './band-heading.js';
import type { LoadedRow, LoadedTable, LoadedValue, TableProblem, TableQuantity } from './loaded-table.js';
import { readCell } from './read-cell.js';

/** One row before its cells are understood: headings and texts in the order they stood. */
export type TableRecord = {
  readonly row: number;
  readonly cells: readonly (readonly [column: string, text: string])[];
  /** True where cells and headings don't belong together, so that the texts are kept and no value is taken. */
  readonly shifted?: boolean;
};

/** Told of a table none of whose headings is a band. */
export const noBand = 'no band column found, expected columns named by frequency such as 125 or 1 kHz';

const idColumn = /^(?:id|key|code)$/i;
const nameColumn = /^(?:name|title|material|description|element)$/i;

/** Turns the records of a table into rows and tells what could not be understood; `problems` found so far come first. */
export function tableFromRecords(
  records: readonly TableRecord[],
  quantity: TableQuantity,
  problems: readonly TableProblem[],
): LoadedTable {
  const found: TableProblem[] = [...problems];
  const unknownColumns = new Set<string>();
  const firstRowOf = new Map<string, number>();
  let bands = 0;
  const rows = records.map(({ row, cells, shifted }): LoadedRow => {
    const values = new Map<number, LoadedValue>();
    const other = new Map<string, string>();
    let id: string | undefined;
    let name: string | undefined;
    for (const [column, text] of cells) {
      const heading = bandHeading(column);
      if (heading.kind === 'band' && !values.has(heading.hz)) {
        bands++;
        if (shifted === true) {
          values.set(heading.hz, { hz: heading.hz, value: null, text });
          continue;
        }
        const cell = readCell(text, quantity, heading.percent);
        values.set(heading.hz, { hz: heading.hz, value: cell.kind === 'value' ? cell.value : null, text });
        const at = { row, column, found: text };
        if (cell.kind === 'missing') {
          found.push({ ...at, severity: 'note', message: `row ${row}, column ${column}: no value` });
        } else if (cell.kind === 'bad') {
          const message = `row ${row}, column ${column}: value is ${text.trim()}, expected ${cell.expected}`;
          found.push({ ...at, severity: 'error', message });
        } else if (cell.note !== undefined) {
          const message = `row ${row}, column ${column}: ${text.trim()} read as ${cell.value} (${cell.note})`;
          found.push({ ...at, severity: 'note', message });
        }
        continue;
      }
      if (heading.kind !== 'word' && !unknownColumns.has(column)) {
        unknownColumns.add(column);
        const why =
          heading.kind === 'band' ? 'a second column of the same band' : 'a frequency that is no nominal band';
        const message = `column ${column}: ${why}, expected each third-octave or octave centre once; kept as text`;
        found.push({ severity: 'error', column, message });
      }
      if (id === undefined && idColumn.test(column.trim()) && text.trim() !== '') id = text.trim();
      else if (name === undefined && nameColumn.test(column.trim()) && text.trim() !== '') name = text.trim();
      else other.set(freeName(column, other), text);
    }
    if (id === undefined && name === undefined) {
      found.push({
        severity: 'error',
        row,
        message: `row ${row}: no id or name, expected a column id or name with a text`,
      });
    }
    const known = id ?? name ?? `row ${row}`;
    const first = firstRowOf.get(known);
    if (first === undefined) firstRowOf.set(known, row);
    else {
      const message = `row ${row}, column id: ${known} is the id of row ${first} too, expected a different one; both are kept`;
      found.push({ severity: 'error', row, column: 'id', found: known, message });
    }
    const sorted = [...values.values()].sort((a, b) => a.hz - b.hz);
    return {
      id: known,
      ...(name === undefined ? {} : { name }),
      row,
      values: sorted,
      other: Object.fromEntries(other),
    };
  });
  if (records.length > 0 && bands === 0) {
    found.push({
      severity: 'error',
      message: noBand,
    });
  }
  return { quantity, rows, problems: found };
}

/** The heading, or with a number behind it where a column of that heading was kept already. */
function freeName(column: string, kept: ReadonlyMap<string, string>): string {
  let name = column;
  for (let count = 2; kept.has(name); count++) name = `${column} (${count})`;
  return name;
}
