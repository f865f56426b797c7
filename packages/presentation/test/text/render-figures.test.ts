import fs from 'node:fs';
import { assess } from '@boothwright/assessment';
import { checkSpec } from '@boothwright/language';
import { expect, it } from 'vitest';
import { renderFigures } from '../../src/index.js';

const example = fs.readFileSync(
  new URL('../../../../shared/examples/thin-gap-wall/thin-gap-wall.booth', import.meta.url),
  'utf8',
);

function figuresOf(text: string): string {
  const host = { read: () => ({ kind: 'text', text }) as const };
  return renderFigures(assess(checkSpec('a.booth', host).spec));
}

it('prints one figure to a line, the same for a text in another layout', () => {
  const figures = figuresOf(example);
  expect(figures).toMatchSnapshot();
  expect(figures.split('\n').filter((line) => line.includes('a.booth'))).toEqual([]);
  expect(figuresOf(example.replace(/\n/g, '\n\n').replace(/ {2,}/g, ' '))).toBe(figures);
});

it('says what could not be read', () => {
  expect(figuresOf('assembly a {\n  board 12 kg/m3\n}\n')).toContain('not read: ');
});
