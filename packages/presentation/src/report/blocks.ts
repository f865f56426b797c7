// What a report is made of, before it is HTML or Markdown: both are written from the same blocks, so that they hold the same facts.

/** How a word is meant: colour in HTML, and never colour alone. */
export type Tone = 'good' | 'bad' | 'open';

export interface TonedCell {
  readonly text: string;
  readonly tone: Tone;
}

/** Plain text; what stands between backticks is shown as code. Nothing in it is markup. */
export type Cell = string | TonedCell;

export interface Column {
  readonly head: string;
  /** Figures stand at the right and are not broken. */
  readonly figure?: true;
}

export interface TableBlock {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly Column[];
  /** The first cell names the row. */
  readonly rows: readonly (readonly Cell[])[];
}

export type Block =
  | { readonly kind: 'heading'; readonly level: 3 | 4; readonly text: string }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly ordered?: true }
  | { readonly kind: 'facts'; readonly facts: readonly (readonly [name: string, fact: string])[] }
  | TableBlock
  /** A chart or a drawing that repeats figures of a table; `svg` is our own, with title and description. */
  | { readonly kind: 'figure' | 'drawing'; readonly svg: string; readonly caption: string }
  | { readonly kind: 'cards'; readonly cards: readonly Card[] }
  | {
      readonly kind: 'notice';
      readonly tone: 'stop' | 'care' | 'note';
      readonly title: string;
      readonly blocks: readonly Block[];
    };

/** Something to cut out and hand on. */
export interface Card {
  readonly title: string;
  readonly facts: readonly (readonly [name: string, fact: string])[];
  readonly notes: readonly string[];
}

export interface ReportSection {
  /** Address within the report. */
  readonly id: string;
  readonly title: string;
  /** Whom it is for, in a sentence. */
  readonly lead: string;
  readonly blocks: readonly Block[];
}

export interface Report {
  readonly title: string;
  readonly subtitle: string;
  /** Verdict and whatever must not be overlooked. */
  readonly front: readonly Block[];
  readonly sections: readonly ReportSection[];
}

/** Whatever is there, in order. */
export function blocks(...parts: readonly (Block | readonly Block[] | undefined | null | false)[]): Block[] {
  return parts.flatMap((part) => (part === undefined || part === null || part === false ? [] : part));
}

export function heading(text: string, level: 3 | 4 = 3): Block {
  return { kind: 'heading', level, text };
}

/** A paragraph; undefined for no text. */
export function text(words: string | undefined | null | false): Block | undefined {
  return words ? { kind: 'text', text: words } : undefined;
}

/** Points; undefined for none. */
export function list(items: readonly (string | undefined | null | false)[], ordered = false): Block | undefined {
  const told = items.filter((item): item is string => Boolean(item));
  if (told.length === 0) return undefined;
  return ordered ? { kind: 'list', items: told, ordered: true } : { kind: 'list', items: told };
}

/** Names with what is to be said of them; those without are left out. */
export function facts(
  rows: readonly (readonly [name: string, fact: string | undefined | null | false])[],
): Block | undefined {
  const told = rows.flatMap(([name, fact]): [string, string][] => (fact ? [[name, fact]] : []));
  return told.length === 0 ? undefined : { kind: 'facts', facts: told };
}

/** A table; undefined without a row. Columns without any head and cell are left out. */
export function table(
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
): TableBlock | undefined {
  if (rows.length === 0) return undefined;
  const used = columns
    .map((_, index) => index)
    .filter((index) => rows.some((row) => cellText(row[index] ?? '') !== ''));
  return {
    kind: 'table',
    caption,
    columns: used.map((index) => columns[index] as Column),
    rows: rows.map((row) => used.map((index) => row[index] ?? '')),
  };
}

export function cellText(cell: Cell): string {
  return typeof cell === 'string' ? cell : cell.text;
}

export const figureColumn = (head: string): Column => ({ head, figure: true });
