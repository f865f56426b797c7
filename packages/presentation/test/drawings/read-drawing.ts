import { type Box, overlaps, textWidth } from '../../src/drawings/text-box.js';

export interface DrawnText {
  readonly text: string;
  readonly box: Box;
}

const entities: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"' };

/** The texts of a drawing with the room that they take, and the part of the plane that it shows. */
export function readDrawing(svg: string) {
  const [x = 0, y = 0, width = 0, height = 0] = (/viewBox="([^"]*)"/.exec(svg)?.[1] ?? '').split(' ').map(Number);
  const texts = [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, rest = '', content = '']): DrawnText => {
    const text = content.replace(/&(amp|lt|gt|quot);/g, (entity) => entities[entity] ?? entity);
    const number = (name: string) => Number(new RegExp(`\\s${name}="([^"]*)"`).exec(rest)?.[1]);
    const long = textWidth(text, rest.includes('font-weight="bold"'));
    const anchor = /text-anchor="([^"]*)"/.exec(rest)?.[1] ?? 'start';
    const share = anchor === 'start' ? 0 : anchor === 'middle' ? 0.5 : 1;
    // Letters reach from 8 px above their line to 2.5 below it.
    if (rest.includes('rotate(-90')) {
      const [left, middle] = [number('x'), number('y')];
      return { text, box: { left: left - 8, right: left + 2.5, top: middle - long / 2, bottom: middle + long / 2 } };
    }
    const left = number('x') - long * share;
    return { text, box: { left, right: left + long, top: number('y') - 8, bottom: number('y') + 2.5 } };
  });
  return { texts, view: { left: x, top: y, right: x + width, bottom: y + height } };
}

/** What is wrong with the places of the texts, in words; empty when each can be read. */
export function clashes(svg: string): string[] {
  const { texts, view } = readDrawing(svg);
  const slack = 0.2; // places are rounded to a tenth
  const found: string[] = [];
  texts.forEach(({ text, box }, index) => {
    const out =
      box.left < view.left || box.right > view.right + slack || box.top < view.top || box.bottom > view.bottom + slack;
    if (out) found.push(`clipped: ${text}`);
    const less = { left: box.left + slack, right: box.right - slack, top: box.top + slack, bottom: box.bottom - slack };
    for (const other of texts.slice(index + 1))
      if (overlaps(less, other.box)) found.push(`overlap: ${text} | ${other.text}`);
  });
  if (/NaN|Infinity|undefined/.test(svg)) found.push('a place that is no number');
  return found;
}

/** The figures and names of a drawing and its table, without any place or order: what a snapshot holds. */
export function wordsOf(drawing: {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly scale: number;
  readonly svg: string;
  readonly table: { readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] };
}): string {
  const { texts } = readDrawing(drawing.svg);
  return [
    `== ${drawing.id}: ${drawing.title} (1 : ${drawing.scale})`,
    drawing.description,
    `-- drawn: ${texts
      .map(({ text }) => text)
      .sort()
      .join(' | ')}`,
    ...[drawing.table.columns, ...drawing.table.rows].map((row) => row.join(' | ')),
  ].join('\n');
}
