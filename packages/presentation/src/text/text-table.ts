import { displayWidth } from './display-width.js';

export interface Column {
  readonly head: string;
  readonly align?: 'left' | 'right';
}

function pad(text: string, width: number, align: 'left' | 'right'): string {
  const blank = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return align === 'right' ? blank + text : text + blank;
}

/** Rows with aligned columns, two blanks apart, indented by two. Columns whose head and cells are all empty are left out. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((column, index) =>
    Math.max(displayWidth(column.head), ...rows.map((row) => displayWidth(row[index] ?? ''))),
  );
  const write = (cells: readonly string[]) =>
    `  ${columns
      .map((column, index) =>
        widths[index] === 0 ? undefined : pad(cells[index] ?? '', widths[index] ?? 0, column.align ?? 'left'),
      )
      .filter((cell) => cell !== undefined)
      .join('  ')}`.trimEnd();
  const heads = columns.map((column) => column.head);
  return [...(heads.some(Boolean) ? [write(heads)] : []), ...rows.map(write)].join('\n');
}
