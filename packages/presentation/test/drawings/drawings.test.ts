import type { Assembly } from '@boothwright/language';
import { expect, test } from 'vitest';
import { type Drawing, drawElevation, drawingsOf, drawLayerSection, drawPlan, isDrawn } from '../../src/index.js';
import { readSvg } from '../charts/read-svg.js';
import { sampleResult } from '../fixtures/sample-result.js';
import { buildUps, specOf, wholeBooth } from './booth-text.js';
import { clashes, readDrawing, wordsOf } from './read-drawing.js';

const spec = specOf(wholeBooth);
const booth = spec.booths[0]!;
const metric = { units: 'metric' } as const;
const drawn = (one: ReturnType<typeof drawPlan>): Drawing => {
  if (!isDrawn(one)) throw new Error(one.why);
  return one;
};

test.each(['metric', 'imperial'] as const)('the drawings of a booth carry these figures, %s', async (units) => {
  const all = drawingsOf({ spec, result: undefined }, { units });
  const words = all.map((one) => (isDrawn(one) ? wordsOf(one) : `== ${one.id}: ${one.title}: not drawn, ${one.why}`));
  await expect(`${words.join('\n\n')}\n`).toMatchFileSnapshot(`__snapshots__/cell-${units}.txt`);
});

test('the drawings of sheets, lengths and panels carry these figures', async () => {
  const named = { ...booth, name: 'alcove' };
  const all = drawingsOf({ spec: { ...spec, booths: [named] }, result: sampleResult }, metric);
  const words = all.filter(isDrawn).filter(({ kind }) => ['sheet', 'lengths', 'panels', 'exploded'].includes(kind));
  await expect(`${words.map(wordsOf).join('\n\n')}\n`).toMatchFileSnapshot('__snapshots__/parts-metric.txt');
});

test('no text of the drawings of a booth overlaps another or leaves the picture', () => {
  for (const units of ['metric', 'imperial'] as const)
    for (const one of drawingsOf({ spec, result: undefined }, { units }))
      if (isDrawn(one)) expect(clashes(one.svg), one.id).toEqual([]);
});

test('a drawing is as large on paper as its scale says', () => {
  const plan = drawn(drawPlan(booth, undefined, { ...metric, scale: 20 }));
  expect(plan.scale).toBe(20);
  const [, , width, height] = (/viewBox="([^"]*)"/.exec(plan.svg)?.[1] ?? '').split(' ').map(Number);
  expect(plan.svg).toContain(`width="${plan.widthMm}mm"`);
  expect(plan.widthMm / width!).toBeCloseTo(25.4 / 96, 4);
  expect(plan.heightMm / height!).toBeCloseTo(25.4 / 96, 4);
  // The front wall is drawn in two pieces beside the door: the left one from the corner to 250 mm, so 12.5 mm on paper.
  const pieces = [...plan.svg.matchAll(/<rect x="0" y="[^"]*" width="([^"]*)"/g)].map(([, wide]) => Number(wide));
  expect(pieces.some((px) => Math.abs((px / 96) * 25.4 - 12.5) < 0.05)).toBe(true);
});

test('without a scale a drawing fits on A4 and on Letter', () => {
  for (const one of drawingsOf({ spec, result: undefined }, { units: 'imperial' })) {
    if (!isDrawn(one)) continue;
    expect(one.widthMm, one.id).toBeLessThanOrEqual(180);
    expect(one.heightMm, one.id).toBeLessThanOrEqual(245);
  }
});

test('a drawing has the role of an image with title and description, and takes its colours from the page', () => {
  for (const one of drawingsOf({ spec, result: undefined }, metric)) {
    if (!isDrawn(one)) continue;
    const svg = readSvg(one.svg);
    expect(one.svg).toMatch(/^<svg [^>]*role="img"/);
    expect(svg.title).toBe(one.title);
    expect(svg.description).not.toBe('');
    expect(svg.attributeNames).not.toContain('style');
    expect(
      svg.names.every((name) => ['svg', 'title', 'desc', 'g', 'path', 'rect', 'circle', 'text'].includes(name)),
    ).toBe(true);
    expect(one.svg).toContain('currentColor');
    expect(one.table.rows.every((row) => row.length === one.table.columns.length)).toBe(true);
  }
});

test('on a sheet of its own a drawing is black on white', () => {
  const plan = drawn(drawPlan(booth, undefined, { ...metric, theme: 'sheet' }));
  expect(plan.svg).not.toMatch(/currentColor|var\(/);
  expect(plan.svg).toContain('fill="#ffffff"');
});

test('a name cannot bring markup into a drawing', () => {
  const shell = spec.assemblies.get('shell') as Assembly;
  const hostile = { ...shell, title: '</text><script>alert(1)</script>"\' \u202e\u0007&' };
  const section = drawn(drawLayerSection(hostile, metric));
  expect(readSvg(section.svg).names).not.toContain('script');
  for (const character of ['\u202e', '\u0007']) expect(section.svg).not.toContain(character);
  expect(section.svg).toContain('&lt;script&gt;');
});

test('the plan tells what the text leaves open', () => {
  const texts = readDrawing(drawn(drawPlan(booth, undefined, metric)).svg).texts.map(({ text }) => text);
  const whole = texts.join(' ').replaceAll('\u00a0', ' ');
  expect(whole).toContain('On which side entry hangs is not in the text');
  expect(whole).toContain('Where on its face a vent or hole sits is not in the text');
  expect(whole).toContain('Slits are not drawn: joints (back).');
});

test('a mirrored face counts its offset from its left edge as seen from outside', () => {
  const text = wholeBooth.replace('door entry on front', 'door entry on back');
  const other = specOf(text).booths[0]!;
  const back = drawn(drawElevation(other, 'back', undefined, metric));
  expect(back.table.rows.find(([what]) => what === 'door entry')?.[2]).toContain('250 mm from the left edge');
  const plan = readDrawing(drawn(drawPlan(other, undefined, metric)).svg).texts.map((one) => one.text);
  // The width outside is 1339: 1339 - 250 - 660 = 429 is what is left at the other side.
  expect(plan).toEqual(expect.arrayContaining(['250', '660', '429']));
});

test('what cannot be drawn says why', () => {
  const bare = specOf(`${buildUps}booth cell { inside 1 m x 1 m x 2 m; walls shell }`);
  const all = drawingsOf({ spec: bare, result: undefined }, metric).filter((one) => !isDrawn(one));
  expect(all.map((one) => ('why' in one ? `${one.id}: ${one.why}` : ''))).toEqual([
    'room-cell: the text does not say how large the room is (room of site)',
    'elevation-roof: cell has no roof',
    'elevation-floor: cell has no floor',
    'exploded-cell: cell is not assessed',
    'panels-cell: cell is not assessed',
  ]);
});

test('a text without a booth still gets the sections of its build-ups', () => {
  const ids = drawingsOf({ spec: specOf(buildUps), result: undefined }, metric).map(({ id }) => id);
  expect(ids).toEqual(['section-shell', 'section-deck', 'section-mixed']);
});

test('a mark of a drawing leads to its line in the text', () => {
  const plan = drawn(drawPlan(booth, undefined, metric));
  const named = (word: string) => plan.marks.findIndex(({ from, to }) => wholeBooth.slice(from, to).startsWith(word));
  for (const word of ['entry', 'view', 'intake', 'outlet', 'cable', 'copy', 'mic at', '0.575 m, 0.95'])
    expect(plan.svg, word).toContain(`<g data-mark="${named(word)}">`);
  const section = drawn(drawLayerSection(spec.assemblies.get('shell') as Assembly, metric));
  expect(section.marks.map(({ from, to }) => wholeBooth.slice(from, to).slice(0, 5))).toEqual([
    'softw',
    'frame',
    'gypsu',
  ]);
});
