import { type Block, type Card, type Cell, type Column, cellText, type Report, type ReportSection } from './blocks.js';
import { escapeHtml } from './escape-html.js';
import { inlines } from './inline.js';
import { type ReportPage, reportPageStyle } from './report-page-style.js';
import { reportStyle } from './report-style.js';

export interface ReportHtmlOptions {
  /** The base64 of the SHA-256 of a text: the policy of the page lets in these very styles and nothing else. */
  readonly sha256: (text: string) => string;
  /** Paper; without it the printer's own. */
  readonly page?: ReportPage | undefined;
}

/** The report as one HTML document that loads nothing, runs nothing and says so in its content security policy. */
export function renderReportHtml(report: Report, { sha256, page }: ReportHtmlOptions): string {
  const body = [
    '<header>',
    `<h1>${inline(report.title)}</h1>`,
    `<p class="subtitle">${inline(report.subtitle)}</p>`,
    ...report.front.map((block) => blockHtml(block)),
    '</header>',
    contents(report.sections),
    '<main>',
    ...report.sections.map(sectionHtml),
    '</main>',
  ];
  const styles = [reportStyle, reportPageStyle(page)];
  const allowed = styles.map((style) => `'sha256-${sha256(style)}'`).join(' ');
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ${allowed}; base-uri 'none'; form-action 'none'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    '<meta name="referrer" content="no-referrer">',
    `<title>${plain(report.title)}</title>`,
    ...styles.map((style) => `<style>${style}</style>`),
    '</head>',
    '<body>',
    ...body,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function contents(sections: readonly ReportSection[]): string {
  const entries = sections.map(({ id, title }) => `<li><a href="#${id}">${inline(title)}</a></li>`);
  return `<nav aria-label="Contents"><ol>${entries.join('')}</ol></nav>`;
}

function sectionHtml({ id, title, lead, blocks }: ReportSection): string {
  return [
    `<section id="${id}" aria-labelledby="${id}-title">`,
    `<h2 id="${id}-title">${inline(title)}</h2>`,
    `<p class="lead">${inline(lead)}</p>`,
    ...blocks.map((block) => blockHtml(block)),
    '</section>',
  ].join('\n');
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${inline(block.text)}</h${block.level}>`;
    case 'text':
      return `<p>${inline(block.text)}</p>`;
    case 'list': {
      const tag = block.ordered ? 'ol' : 'ul';
      return `<${tag}>${block.items.map((item) => `<li>${inline(item)}</li>`).join('')}</${tag}>`;
    }
    case 'facts':
      return factsHtml(block.facts);
    case 'table':
      return tableHtml(block.caption, block.columns, block.rows);
    case 'figure':
    case 'drawing':
      return `<figure class="${block.kind === 'figure' ? 'chart' : 'drawing'}">${block.svg}<figcaption>${inline(block.caption)}</figcaption></figure>`;
    case 'cards':
      return `<div class="cards">${block.cards.map(cardHtml).join('\n')}</div>`;
    case 'notice':
      return `<div class="notice ${block.tone}"><p class="notice-title">${inline(block.title)}</p>${block.blocks.map((each) => blockHtml(each)).join('')}</div>`;
  }
}

function factsHtml(facts: readonly (readonly [string, string])[]): string {
  return `<dl>${facts.map(([name, fact]) => `<div><dt>${inline(name)}</dt><dd>${inline(fact)}</dd></div>`).join('')}</dl>`;
}

function cardHtml({ title, facts, notes }: Card): string {
  return `<article class="card"><h4>${inline(title)}</h4>${factsHtml(facts)}${notes.map((note) => `<p>${inline(note)}</p>`).join('')}</article>`;
}

function tableHtml(caption: string, columns: readonly Column[], rows: readonly (readonly Cell[])[]): string {
  const shape = ({ figure }: Column) => (figure ? ' class="figure"' : '');
  // A head that says nothing is no head: the corner above the names of the rows.
  const heads = columns.map((column) =>
    column.head === '' ? '<td></td>' : `<th scope="col"${shape(column)}>${inline(column.head)}</th>`,
  );
  const body = rows.map((row) => {
    const cells = row.map((cell, index) => {
      const words = cellHtml(cell);
      if (index === 0) return `<th scope="row"${shape(columns[0] as Column)}>${words}</th>`;
      return `<td${shape(columns[index] as Column)}>${words}</td>`;
    });
    return `<tr>${cells.join('')}</tr>`;
  });
  const kind = columns.every(({ figure }) => figure)
    ? ' class="figures"'
    : columns.some(({ figure }) => figure)
      ? ''
      : ' class="words"';
  return `<table${kind}><caption>${inline(caption)}</caption><thead><tr>${heads.join('')}</tr></thead><tbody>${body.join('\n')}</tbody></table>`;
}

function cellHtml(cell: Cell): string {
  const words = inline(cellText(cell));
  return typeof cell === 'string' ? words : `<span class="${cell.tone}">${words}</span>`;
}

function inline(words: string): string {
  return inlines(words)
    .map(({ text, code }) => (code ? `<code>${breakable(text)}</code>` : breakable(text)))
    .join('');
}

/** Words longer than this many letters may be broken, as a table with such a word would not fit on paper. */
const longest = 18;
const piece = 12;

/** Shorter words stay whole, however narrow a column is. */
function breakable(text: string): string {
  return text.replace(/[^\s-]+|[\s-]+/g, (word) => {
    const letters = [...word];
    if (letters.length <= longest) return escapeHtml(word);
    const pieces = Array.from({ length: Math.ceil(letters.length / piece) }, (_, index) =>
      letters.slice(index * piece, (index + 1) * piece).join(''),
    );
    return pieces.map(escapeHtml).join('<wbr>');
  });
}

function plain(words: string): string {
  return inlines(words)
    .map(({ text }) => escapeHtml(text))
    .join('');
}
