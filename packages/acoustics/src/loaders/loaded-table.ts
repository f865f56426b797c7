/** What a table holds: absorption coefficients, or transmission loss in dB. */
export type TableQuantity = 'absorption' | 'transmission-loss';

/** One value of a row: null where the table has none that can be understood; `text` is what stood there. */
export type LoadedValue = { readonly hz: number; readonly value: number | null; readonly text: string };

/** One row of a table. */
export type LoadedRow = {
  /** As in the table; "row 5" where it has none. */
  readonly id: string;
  readonly name?: string;
  /** Line of a text table, or place in a list, from 1. */
  readonly row: number;
  /** Ascending in frequency. */
  readonly values: readonly LoadedValue[];
  /** Everything else that stood in the row, by column. */
  readonly other: Readonly<Record<string, string>>;
};

/** Something in a table that needs a look. */
export type TableProblem = {
  /** An error leaves a value or a column out; a note tells what was understood and how. */
  readonly severity: 'error' | 'note';
  /** Line or place of the row; absent where the whole table is meant. */
  readonly row?: number;
  /** Heading of the column. */
  readonly column?: string;
  /** What stood there. */
  readonly found?: string;
  /** Names row and column, says what was found and what was expected. */
  readonly message: string;
};

/** All rows of a table and all there is to say about it: nothing is dropped in silence. */
export type LoadedTable = {
  readonly quantity: TableQuantity;
  readonly rows: readonly LoadedRow[];
  readonly problems: readonly TableProblem[];
};

/** A table that was to be free of errors and is not. */
export class TableError extends Error {
  override readonly name = 'TableError';

  constructor(readonly problems: readonly TableProblem[]) {
    super(problems.map(({ message }) => message).join('; '));
  }
}

/**
 * The rows of a table that has no errors; notes pass.
 * Errors: TableError that holds and names every error.
 */
export function rowsOrThrow(table: LoadedTable): readonly LoadedRow[] {
  const errors = table.problems.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new TableError(errors);
  return table.rows;
}
