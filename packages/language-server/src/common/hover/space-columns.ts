/** An editor sets the columns of a table close beside each other; figures of neighbours then read as one. */
const space = '&nbsp;&nbsp;&nbsp;';

/** Keeps the columns of tables apart, for an editor that draws them. */
export function spaceColumns(markdown: string): string {
  return markdown.replace(/^\| .*\|$/gm, (row) =>
    /^\| :?-+:?( \|)/.test(row)
      ? row
      : row.replace(/(?<!\\)\| (?=.)/g, (bar, at: number) => (at === 0 ? bar : `${bar}${space}`)),
  );
}
