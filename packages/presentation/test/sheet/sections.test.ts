import { describe, expect, it } from 'vitest';
import { elementAt, type SheetInput, type SheetSection, sheetOf, sheetSize } from '../../src/index.js';
import { readSvg } from '../charts/read-svg.js';
import { file } from '../fixtures/sample-basics.js';
import { alcove } from '../fixtures/sample-booth.js';
import { sampleResult } from '../fixtures/sample-result.js';

const input = (more: Partial<SheetInput> = {}): SheetInput => ({
  results: sampleResult,
  name: 'alcove',
  booth: alcove,
  element: elementAt(sampleResult, 'alcove', alcove, { file, assembly: 'shell', headers: [] }),
  spec: undefined,
  budget: undefined,
  sessionRange: undefined,
  size: sheetSize(560),
  ...more,
});
const section = (id: string, more: Partial<SheetInput> = {}): SheetSection => {
  const found = sheetOf(input(more)).find((each) => each.id === id);
  if (found === undefined) throw new Error(`no section ${id}`);
  return found;
};
/** The cells of every table, row by row. */
const rowsOf = (html: string) =>
  [...html.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row = '']) =>
    [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell = '']) =>
      cell
        .replace(/<[^>]+>/g, ' ')
        .replace(/\s+/g, ' ')
        .trim(),
    ),
  );
const svgsOf = (html: string) => html.match(/<svg xmlns.*?<\/svg>/g) ?? [];

describe('sheetOf(input)', () => {
  it('tells each section in a few words', () => {
    expect(sheetOf(input()).map(({ id, title, summary }) => `${id}: ${title}: ${summary}`)).toMatchSnapshot();
  });

  it('has for every picture a table behind it, and figures that do not change unseen', () => {
    for (const { id, html } of sheetOf(input())) {
      const svgs = svgsOf(html);
      expect(html.match(/<details class="figures">/g)?.length ?? 0, id).toBe(svgs.length);
      expect(
        svgs.map((svg) => readSvg(svg).series),
        id,
      ).toMatchSnapshot();
      expect(rowsOf(html), id).toMatchSnapshot();
    }
  });

  it('marks in a picture what the key and the text call by the same place', () => {
    for (const { id, html, marks } of sheetOf(input())) {
      const used = [...html.matchAll(/data-mark="(\d+)"/g)].map(([, mark]) => Number(mark));
      for (const mark of used) expect(mark, id).toBeLessThan(marks.length);
      expect(new Set(used).size, id).toBe(marks.length);
    }
    const { html } = section('ways');
    const inPicture = [...(svgsOf(html)[0] ?? '').matchAll(/data-mark="(\d+)"/g)].map(([, mark]) => mark);
    const inKey = [...html.matchAll(/<button[^>]*data-mark="(\d+)"/g)].map(([, mark]) => mark);
    expect(inKey).toEqual(expect.arrayContaining(inPicture));
  });

  it('shows text of a spec as text', () => {
    const evil = '"><img src=x onerror=alert(1)>';
    const [first] = sampleResult.requirements;
    const { html } = section('asked', {
      results: { ...sampleResult, requirements: [{ ...first!, text: `require ${evil}`, booth: null }] },
    });
    expect(html).not.toContain('<img');
    expect(html).toContain('&lt;img');
  });

  it('says plainly what cannot be told', () => {
    const bare = { ...alcove, air: null, roomSound: null, reflections: null };
    expect(section('air', { booth: bare }).summary).toBe('not assessed');
    expect(section('air', { booth: bare }).html).toContain('no session');
    expect(section('decay', { booth: bare }).summary).toBe('not assessed');
    expect(sheetOf(input({ booth: bare })).map(({ id }) => id)).not.toContain('modes');
    const nothing = section('asked', { results: { ...sampleResult, requirements: [] } });
    expect(nothing.html).toContain('requires nothing');
  });
});

describe('marginStrip in `asked`', () => {
  const [some] = sampleResult.requirements;
  const tick = (value: number, limit: number, margin: number) => {
    const requirement = {
      ...some!,
      booth: null,
      limit,
      margin,
      value: { value, low: value - 1, high: value + 1, basis: '' },
    };
    const { html } = section('asked', { results: { ...sampleResult, requirements: [requirement] } });
    return Number(/M([\d.]+) 2V10/.exec(html)?.[1]);
  };

  it('has what meets the limit on the right, whichever way it is asked', () => {
    expect(tick(12, 15, 3)).toBeGreaterThan(50);
    expect(tick(18, 15, -3)).toBeLessThan(50);
    expect(tick(18, 15, 3)).toBeGreaterThan(50);
    expect(tick(12, 15, -3)).toBeLessThan(50);
    expect(tick(15, 15, 0)).toBe(50);
  });
});

describe('elementAt(results, name, booth, cursor)', () => {
  const at = (assembly: string | undefined, from?: number, to?: number) =>
    elementAt(sampleResult, 'alcove', alcove, {
      file,
      assembly,
      headers: from === undefined || to === undefined ? [] : [{ from, to }],
    });

  it('takes the build-up that is named, else what the block declares, else the booth', () => {
    expect(at('shell').name).toBe('shell');
    expect(at('shell').rating.stcRange).toHaveLength(2);
    const [path] = alcove.paths;
    expect(at(undefined, path!.range.from, path!.range.to).lossDb).toEqual(path!.transmissionLossDb);
    expect(at(undefined).lossDb).toEqual(alcove.compositeTransmissionLossDb);
    expect(at('unknown').name).toBe('alcove');
  });
});

describe('sheetSize(width)', () => {
  it('stays within what can be read', () => {
    expect(sheetSize(560)).toEqual({ width: 560, height: 202, names: false });
    expect(sheetSize(0).width).toBe(260);
    expect(sheetSize(5000)).toMatchObject({ width: 900, height: 230 });
    expect(sheetSize(Number.NaN).width).toBe(260);
  });
});
