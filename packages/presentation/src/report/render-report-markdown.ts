import { code, escapeMarkdown } from '../hover/markdown.js';
import { type Block, type Cell, type Column, cellText, type Report, type ReportSection } from './blocks.js';
import { inlines } from './inline.js';

/** The report as Markdown: the same facts as the HTML, without its pictures; the tables behind them are there. */
export function renderReportMarkdown(report: Report): string {
  const parts = [
    `# ${inline(report.title)}`,
    inline(report.subtitle),
    ...report.front.map(blockText),
    ...report.sections.map(sectionText),
  ];
  return `${parts.filter(Boolean).join('\n\n')}\n`;
}

function sectionText({ title, lead, blocks }: ReportSection): string {
  return [`## ${inline(title)}`, `*${inline(lead)}*`, ...blocks.map(blockText)].filter(Boolean).join('\n\n');
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${inline(block.text)}`;
    case 'text':
      return paragraph(block.text);
    case 'list':
      return block.items.map((item, index) => `${block.ordered ? `${index + 1}.` : '-'} ${paragraph(item)}`).join('\n');
    case 'facts':
      return factsText(block.facts);
    case 'table':
      return tableText(block.caption, block.columns, block.rows);
    case 'figure':
    case 'drawing':
      return '';
    case 'cards':
      return block.cards
        .map(({ title, facts, notes }) =>
          [`#### ${inline(title)}`, factsText(facts), ...notes.map(paragraph)].filter(Boolean).join('\n\n'),
        )
        .join('\n\n');
    case 'notice':
      return [`**${inline(block.title)}**`, ...block.blocks.map(blockText)]
        .filter(Boolean)
        .join('\n\n')
        .split('\n')
        .map((line) => `> ${line}`.trimEnd())
        .join('\n');
  }
}

function factsText(facts: readonly (readonly [string, string])[]): string {
  return facts.map(([name, fact]) => `- **${inline(name)}**: ${inline(fact)}`).join('\n');
}

function tableText(caption: string, columns: readonly Column[], rows: readonly (readonly Cell[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [
    `**${inline(caption)}**\n`,
    line(columns.map(({ head }) => inline(head))),
    line(columns.map(({ figure }) => (figure ? '--:' : ':--'))),
    ...rows.map((row) => line(row.map(cellMarkdown))),
  ].join('\n');
}

function cellMarkdown(cell: Cell): string {
  const words = inline(cellText(cell));
  return typeof cell !== 'string' && cell.tone === 'bad' ? `**${words}**` : words;
}

/** A bar ends the cell of a table even in code, so such code is written as plain text. */
function inline(words: string): string {
  return inlines(words)
    .map(({ text, code: isCode }) => (isCode && !text.includes('|') ? code(text) : escapeMarkdown(text)))
    .join('')
    .trim();
}

/** At the start of a line some letters make a list, a heading or a rule. */
function paragraph(words: string): string {
  return inline(words)
    .replace(/^([-+=]|\d+(?=[.)]))/, (start) => (/^\d/.test(start) ? start : `\\${start}`))
    .replace(/^(\d+)([.)])/, '$1\\$2');
}
