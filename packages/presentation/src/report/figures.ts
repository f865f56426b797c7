import type { ChartSize } from '../charts/frame.js';
import type { Block, TableBlock } from './blocks.js';

/** As wide as the column of text on A4. */
export const reportChart: ChartSize = { width: 640, height: 230 };

/** Pictures of a report, each with the table of its figures, which all stand together at the end. */
export interface Figures {
  readonly tables: TableBlock[];
}

export function noFigures(): Figures {
  return { tables: [] };
}

/** The picture as a block; its table gets a number by which the caption points to it. */
export function withTable(
  figures: Figures,
  svg: string,
  caption: string,
  table: TableBlock | undefined,
  kind: 'figure' | 'drawing' = 'figure',
): Block[] {
  if (table === undefined) return [];
  const number = figures.tables.length + 1;
  figures.tables.push({ ...table, caption: `Table ${number}. ${table.caption}` });
  return [{ kind, svg, caption: `${caption} (figures in table ${number} at the end)` }];
}
