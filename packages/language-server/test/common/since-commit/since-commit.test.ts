import { createAssessor } from '@boothwright/assessment';
import { expect, it } from 'vitest';
import { codeLenses } from '../../../src/common/code-lenses.js';
import { defaultSettings } from '../../../src/common/settings.js';
import { sheet } from '../../../src/common/sheet/sheet.js';
import { createSinceCommit } from '../../../src/common/since-commit/since-commit.js';
import { openSpecs } from '../../helpers/index.js';

const board = (thickness: number) => `use catalog\nassembly wall {\n  gypsum-board ${thickness} mm\n}\n`;
const cell = 'use "wall.booth"\nbooth cell {\n  inside 2 m x 2 m x 2 m\n  walls wall\n}\n';

/** A history of one commit after another: each is what the files were. */
function setUp(now: Readonly<Record<string, string>>, history: Readonly<Record<string, string>>[]) {
  const specs = openSpecs({ 'a.booth': now['a.booth']! }, now);
  const assessor = createAssessor();
  const arrived: string[] = [];
  let isWanted = true;
  const since = createSinceCommit({
    platform: {
      lastCommit: async () => (history.length === 0 ? undefined : String(history.length)),
      committed: async (_folder, commit, path) => {
        const text = history[Number(commit) - 1]?.[path];
        return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
      },
      assess: async (spec) => assessor.assess(spec),
    },
    folders: () => ['file:///booths'],
    isWanted: () => isWanted,
    arrived: (uri) => arrived.push(uri),
  });
  specs.assess('a.booth');
  const settled = async () => {
    for (let turn = 0; turn < 30; turn++) await Promise.resolve();
  };
  return { specs, since, arrived, settled, dislike: () => (isWanted = false) };
}

it('compares the present text with the committed one, used files of that commit included', async () => {
  const { specs, since, arrived, settled } = setUp({ 'a.booth': cell, 'wall.booth': board(25) }, [
    { 'a.booth': cell, 'wall.booth': board(12.5) },
  ]);
  expect(since.of(specs.view('a.booth'))).toBeUndefined();
  await settled();
  expect(arrived).toEqual([specs.uri('a.booth')]);
  const comparison = since.of(specs.view('a.booth'))!;
  expect(comparison.facts).toHaveLength(1);
  const mass = comparison.effects.find(({ of, what }) => of === 'cell' && what === 'mass')!;
  expect(mass.new! / mass.old!).toBeGreaterThan(1.5);
  // Asked again it is the same one.
  expect(since.of(specs.view('a.booth'))).toBe(comparison);
});

it('follows a new commit, after which nothing differs', async () => {
  const history = [{ 'a.booth': cell, 'wall.booth': board(12.5) }];
  const { specs, since, settled } = setUp({ 'a.booth': cell, 'wall.booth': board(25) }, history);
  since.of(specs.view('a.booth'));
  await settled();
  expect(since.of(specs.view('a.booth'))?.sameFacts).toBe(false);
  history.push({ 'a.booth': cell, 'wall.booth': board(25) });
  since.refresh(specs.uri('a.booth'));
  await settled();
  expect(since.of(specs.view('a.booth'))).toMatchObject({ sameFacts: true, sameEffect: true });
});

it('says nothing without a history, of a file that is new, of a broken text, and where it is not wanted', async () => {
  const now = { 'a.booth': cell, 'wall.booth': board(25) };
  for (const history of [[], [{ 'wall.booth': board(25) }]]) {
    const { specs, since, settled } = setUp(now, history);
    since.of(specs.view('a.booth'));
    await settled();
    expect(since.of(specs.view('a.booth'))).toBeUndefined();
  }
  const { specs, since, settled, dislike } = setUp(now, [now]);
  since.of(specs.view('a.booth'));
  await settled();
  specs.change('a.booth', `${cell}booth {`);
  expect(since.of(specs.view('a.booth'))).toBeUndefined();
  specs.change('a.booth', cell);
  specs.assess('a.booth');
  expect(since.of(specs.view('a.booth'))).toBeDefined();
  dislike();
  expect(since.of(specs.view('a.booth'))).toBeUndefined();
});

it('stands in the sheet with marks that lead to what changed, and beside the headline of the booth', async () => {
  const own = (thickness: number) => `${board(thickness)}booth cell {\n  inside 2 m x 2 m x 2 m\n  walls wall\n}\n`;
  const { specs, since, settled } = setUp({ 'a.booth': own(25) }, [{ 'a.booth': own(12.5) }]);
  since.of(specs.view('a.booth'));
  await settled();
  const view = specs.view('a.booth');
  const comparison = since.of(view)!;
  const asked = { uri: view.uri, position: { line: 0, character: 0 }, width: 560, shut: [], known: {} };
  const fold = sheet(view, asked, undefined, comparison).folds?.find(({ id }) => id === 'since');
  expect(fold?.html).toContain('12.5 mm -&gt; 25 mm');
  expect(fold?.marks[0]).toMatchObject({ line: 2 });
  expect(sheet(view, asked).folds?.some(({ id }) => id === 'since')).toBe(false);

  const titles = codeLenses(view, defaultSettings, true, comparison).map(({ command }) => command?.title);
  expect(titles[1]).toMatch(/^since the last commit: .*mass \+\d+ kg/);
  const off = { ...defaultSettings, codeLens: { ...defaultSettings.codeLens, sinceCommit: false } };
  expect(codeLenses(view, off, true, comparison)).toHaveLength(1);
});
