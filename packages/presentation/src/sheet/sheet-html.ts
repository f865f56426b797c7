import { round, svgElement } from '../charts/svg-element.js';
import { escapeHtml } from '../report/escape-html.js';
import { inlines } from '../report/inline.js';
import { printable } from '../text/printable.js';

/** Text of a spec or of our own as markup shows it. */
export const html = (text: string): string => escapeHtml(printable(text.replace(/[\r\n]+/g, ' ')));

/** Sentences as markup; what stands between backticks is code. */
export const wordsHtml = (words: string): string =>
  inlines(words)
    .map(({ text, code }) => (code ? `<code>${escapeHtml(text)}</code>` : escapeHtml(text)))
    .join('');

export interface SheetColumn {
  readonly head: string;
  /** Figures stand at the right. */
  readonly figure?: true;
}

/** A cell that is markup already. */
export interface MarkupCell {
  readonly html: string;
}

export type SheetCell = string | MarkupCell;

export interface SheetTable {
  readonly caption: string;
  readonly columns: readonly SheetColumn[];
  /** The first cell names the row. */
  readonly rows: readonly (readonly SheetCell[])[];
}

export const figures = (...heads: readonly string[]): SheetColumn[] => heads.map((head) => ({ head, figure: true }));

export function tableHtml({ caption, columns, rows }: SheetTable): string {
  const shape = (index: number) => (columns[index]?.figure ? ' class="figure"' : '');
  const heads = columns.map(({ head }, index) =>
    head === '' ? '<td></td>' : `<th scope="col"${shape(index)}>${html(head)}</th>`,
  );
  const body = rows.map((row) => {
    const cells = row.map((cell, index) => {
      const words = typeof cell === 'string' ? html(cell) : cell.html;
      return index === 0 ? `<th scope="row"${shape(0)}>${words}</th>` : `<td${shape(index)}>${words}</td>`;
    });
    return `<tr>${cells.join('')}</tr>`;
  });
  return `<table><caption>${html(caption)}</caption><thead><tr>${heads.join('')}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

/** One line of the key beside a picture: what is drawn like this, how much it is, and where it comes from in the text. */
export interface KeyEntry {
  readonly label: string;
  readonly figure?: string | undefined;
  readonly colour: string;
  readonly dash?: string | undefined;
  /** Drawn as an area and not as a line. */
  readonly area?: true;
  readonly mark?: number | undefined;
}

export function keyHtml(entries: readonly KeyEntry[]): string {
  const items = entries.map(({ label, figure, colour, dash, area, mark }) => {
    const sample = area
      ? svgElement('rect', { x: 2, y: 0, width: 14, height: 10, fill: colour })
      : svgElement('path', { d: 'M0 5h18', stroke: colour, 'stroke-width': 2.5, 'stroke-dasharray': dash });
    const words = `<svg class="sample" width="18" height="10" viewBox="0 0 18 10" aria-hidden="true">${sample}</svg><span>${html(label)}</span>${figure === undefined ? '' : ` <b>${html(figure)}</b>`}`;
    return `<li>${mark === undefined ? `<span class="entry">${words}</span>` : markButton(mark, words)}</li>`;
  });
  return `<ul class="key">${items.join('')}</ul>`;
}

/** A button that leads to a place of the text. */
export function markButton(mark: number, markup: string): string {
  return `<button type="button" class="entry" data-mark="${mark}">${markup}</button>`;
}

/** A picture, the key to it, and its figures as a table that opens below. */
export function figureHtml(svg: string, key: readonly KeyEntry[], table: SheetTable): string {
  return [`<figure><div class="plot">${svg}</div>`, key.length > 0 && keyHtml(key), behind(table), '</figure>']
    .filter(Boolean)
    .join('');
}

/** The table behind a picture. */
export function behind(table: SheetTable): string {
  return `<details class="figures"><summary>${html(table.caption)}</summary><button type="button" class="copy">Copy</button>${tableHtml(table)}</details>`;
}

/** Sentences, one a point. */
export function pointsHtml(points: readonly (string | undefined | null | false)[]): string {
  const told = points.filter((point): point is string => Boolean(point));
  return told.length === 0
    ? ''
    : `<ul class="points">${told.map((point) => `<li>${wordsHtml(point)}</li>`).join('')}</ul>`;
}

/** A bar in a row of a table: `share` of its room, 0..1. */
export function barHtml(share: number, colour: string): string {
  const width = round(100 * Math.min(1, Math.max(0, share)));
  return `<svg class="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">${svgElement('rect', { width, height: 8, fill: colour })}</svg>`;
}
