import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { SheetAsked } from '../../../src/common/sheet/protocol.js';
import { sheet } from '../../../src/common/sheet/sheet.js';
import type { View } from '../../../src/common/view.js';
import { openSpecs, smallBooth, viewOf } from '../../helpers/index.js';

const tram = readFileSync(
  new URL('../../../../../shared/examples/tram-alcove/tram-alcove.booth', import.meta.url),
  'utf8',
);

/** Worked out once for all tests here: it is a whole scenario with its variants. */
let whole: View | undefined;
const tramView = (): View => {
  whole ??= viewOf(tram);
  return whole;
};
/** For a machine that has much else to do. */
const patience = 120_000;

const asking = (text: string, at: string, more: Partial<SheetAsked> = {}): SheetAsked => {
  const before = text.slice(0, text.indexOf(at)).split('\n');
  return {
    uri: 'file:///booths/test.booth',
    position: { line: before.length - 1, character: before.at(-1)!.length },
    width: 560,
    shut: [],
    known: {},
    ...more,
  };
};
const versions = (folds: readonly { readonly id: string; readonly version: string }[] | null) =>
  Object.fromEntries((folds ?? []).map(({ id, version }) => [id, version]));

it(
  'tells the whole booth, every fold with places that its marks lead to',
  () => {
    const view = tramView();
    const found = sheet(view, asking(tram, 'gypsum-board     12.5 mm'));
    expect(found.state).toBe('fresh');
    expect(found.verdict).toMatch(/^✗ \d of 9 requirements missed$/);
    expect(found.folds?.map(({ id }) => id)).toEqual([
      'asked',
      'loss',
      'ways',
      'noise',
      'decay',
      'modes',
      'air',
      'mass',
    ]);
    for (const { id, html, marks, version } of found.folds ?? []) {
      expect(version, id).toMatch(/^[a-z0-9]+$/);
      expect(marks.length, id).toBeGreaterThan(0);
      const named = [...(html ?? '').matchAll(/data-mark="(\d+)"/g)].map(([, mark]) => Number(mark));
      expect(Math.max(...named), id).toBe(marks.length - 1);
      for (const place of marks) expect(place?.line, id).toBeLessThan(tram.split('\n').length);
      // The policy of the page lets in neither.
      expect(html, id).not.toMatch(/\sstyle=|<style|<script|\son[a-z]+=|NaN|undefined|Infinity/);
    }
  },
  patience,
);

it('sends only folds that changed, and none that is shut', () => {
  const view = tramView();
  const first = sheet(view, asking(tram, 'gypsum-board     12.5 mm'));
  const known = versions(first.folds);
  const again = sheet(view, asking(tram, 'gypsum-board     12.5 mm', { known }));
  expect(again.folds?.filter(({ html }) => html !== undefined)).toEqual([]);
  const onDeck = sheet(view, asking(tram, 'softwood-plywood 18 mm', { known }));
  expect(onDeck.folds?.filter(({ html }) => html !== undefined).map(({ id }) => id)).toEqual(['loss']);
  const shut = sheet(view, asking(tram, 'gypsum-board     12.5 mm', { shut: ['air'] }));
  expect(shut.folds?.filter(({ html }) => html === undefined).map(({ id }) => id)).toEqual(['air']);
  expect(shut.folds?.find(({ id }) => id === 'air')?.summary).toMatch(/ppm/);
});

it('shows what the cursor is on: a build-up, one that is used, a way in, else the booth', () => {
  const view = tramView();
  const titleAt = (at: string) => sheet(view, asking(tram, at)).folds?.find(({ id }) => id === 'loss')?.title;
  expect(titleAt('gypsum-board     12.5 mm')).toBe('Transmission loss: shell');
  expect(titleAt('deck\n')).toBe('Transmission loss: deck');
  expect(titleAt('gap threshold 0.3 mm')).toMatch(/^Transmission loss: (door leaf|.* of door) entry$/);
  expect(titleAt('session {')).toBe('Transmission loss: alcove');
});

it('shows the variant in whose block the cursor stands', () => {
  const view = tramView();
  const found = sheet(view, asking(tram, 'alcove.left '));
  expect(found.variant).toBe('good-answer');
  expect(found.verdict).not.toBe(sheet(view, asking(tram, 'session {')).verdict);
});

it('keeps the numbers of an earlier text, marked, and brings none while new ones are worked out', () => {
  const specs = openSpecs({ 'a.booth': smallBooth });
  specs.assess('a.booth');
  const first = sheet(specs.view('a.booth'), asking(smallBooth, 'booth study'));
  specs.change('a.booth', `${smallBooth}let =\n`);
  const broken = sheet(specs.view('a.booth'), asking(smallBooth, 'booth study'));
  expect(broken.state).toBe('stale');
  expect(broken.problems[0]?.place?.line).toBe(smallBooth.split('\n').length - 1);
  expect(versions(broken.folds)).toEqual(versions(first.folds));
  specs.change('a.booth', smallBooth.replace('160 mm', '170 mm').replace('booth study', '\nbooth study'));
  const pending = sheet(specs.view('a.booth'), asking(smallBooth, 'booth study', { known: versions(first.folds) }));
  expect(pending.state).toBe('pending');
  expect(pending.folds).toBeNull();
});

it('says of a text without a booth that there is none', () => {
  const text = 'use catalog\nassembly wall { osb 18 mm }\n';
  const found = sheet(viewOf(text), asking(text, 'osb'));
  expect(found.booth).toBeNull();
  expect(found.folds).toEqual([]);
});

it(
  'shows the numbers of the spec itself as those of the present text while those of its variants are still to come',
  () => {
    const view: View = { ...tramView(), pending: true, assembliesPending: false, basePending: false };
    expect(sheet(view, asking(tram, 'gypsum-board     12.5 mm'))).toMatchObject({ state: 'fresh', variant: null });
    expect(sheet(view, asking(tram, 'alcove.intake.fan.flow'))).toMatchObject({
      state: 'pending',
      variant: 'good-answer',
    });
  },
  patience,
);
