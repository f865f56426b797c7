import { describe, expect, it } from 'vitest';
import { completeItem, completion } from '../../src/common/completion.js';
import {
  completionAt,
  cursorAfter,
  expectCompletion,
  markedText,
  smallBooth,
  viewOf,
  wholeBooth,
} from '../helpers/index.js';

describe('completion', () => {
  it('offers at the top level the words that may start a line', () => {
    expectCompletion('<|>\n', {
      has: ['use', 'let', 'material', 'assembly', 'booth'],
      lacks: ['door', 'gypsum-board'],
    });
  });

  it('offers in a block what belongs into the block', () => {
    expectCompletion('booth a {\n  <|>\n}\n', { has: ['inside', 'walls', 'door', 'mic'], lacks: ['density', 'booth'] });
    expectCompletion('material a {\n  den<|>\n}\n', { has: ['density', 'kind'], lacks: ['walls'] });
  });

  it('offers materials where a layer may stand, the own ones first', () => {
    const labels = completionAt(cursorAfter('\n  gyp'));
    expect(labels).toEqual(expect.arrayContaining(['batt', 'gypsum-board', 'air', 'frame']));
    expect(labels.indexOf('batt')).toBeLessThan(labels.indexOf('gypsum-board'));
  });

  it('offers what holds boards, and studs behind `of`', () => {
    expectCompletion('use catalog\nassembly a {\n  osb 9 mm\n  c<|>\n}\n', { has: ['channels', 'clips'] });
    expectCompletion('use catalog\nassembly a {\n  frame 35 mm x 75 mm every 600 mm of <|>\n}\n', {
      has: ['steel-stud', 'softwood'],
    });
    expectCompletion('assembly a {\n  frame 2x4 every 600 mm { <|> }\n}\n', { has: ['fill', 'screws'] });
    expectCompletion('assembly a {\n  clips 40 mm every 600 mm stiffness 80 <|>\n}\n', {
      has: ['N/mm'],
      lacks: ['kg'],
    });
    expectCompletion('material a {\n  <|>\n}\n', { has: ['modulus-across', 'shear-modulus', 'gauge'] });
  });

  it('offers no material of the catalogue without the catalogue', () => {
    expectCompletion('assembly a {\n  g<|>\n}\n', { lacks: ['gypsum-board'] });
  });

  it('offers units of the dimension that is expected behind a number', () => {
    expectCompletion(cursorAfter('run 1.2 '), { has: ['m', 'mm', 'in'], lacks: ['kg', 'dBA'] });
    expectCompletion(cursorAfter('density 38 '), { has: ['kg/m3'], lacks: ['mm'] });
  });

  it('offers a length and a mass per area for a layer', () => {
    expectCompletion(cursorAfter('gypsum-board 12.5 '), { has: ['mm', 'kg/m2'], lacks: ['kPa'] });
  });

  it('offers the choices of a fact', () => {
    expectCompletion('material a {\n  kind <|>\n}\n', { has: ['panel', 'limp', 'porous'], lacks: ['mm'] });
  });

  it('offers assemblies for a face', () => {
    expectCompletion(cursorAfter('walls '), { has: ['wall', 'deck'], lacks: ['gypsum-board'] });
  });

  it('offers noises behind `against`', () => {
    const text = `${smallBooth}require isolation >= 20 dB against <|>\n`;
    expectCompletion(text, { has: ['street'], lacks: ['wall'] });
  });

  it('leads along the path of a variant', () => {
    expectCompletion(`${smallBooth}variant b { <|> }\n`, { has: ['gap', 'study'] });
    expectCompletion(`${smallBooth}variant b { study.<|> }\n`, { has: ['entry', 'intake'], lacks: ['street'] });
    expectCompletion(`${smallBooth}variant b { study.entry.<|> }\n`, { has: ['gap.threshold'] });
  });

  it('leads along the path of a variant into the site and the session', () => {
    const spec = smallBooth.replace('impact steps "steps above"', 'passage stair { width 0.8 m }');
    expectCompletion(`${spec}variant b { <|> }\n`, { has: ['site', 'session'] });
    expectCompletion(`${spec}variant b { site.<|> }\n`, { has: ['street', 'stair', 'fresh-air'], lacks: ['entry'] });
    expectCompletion(`${spec}variant b { site.stair.<|> }\n`, { has: ['width', 'turn'], lacks: ['fresh-air'] });
    expectCompletion(`${spec}variant b { session.<|> }\n`, { has: ['fan', 'starts'], lacks: ['street'] });
  });

  it('offers neighbours behind `in` and times of a noise behind `hours`', () => {
    const spec = smallBooth.replace('impact steps "steps above"', 'neighbour flat beside { area 8 m2 }');
    expectCompletion(`${spec}require voice-outside <= 27 dBA in <|>\n`, { has: ['flat'], lacks: ['street'] });
    expectCompletion('site {\n  impact steps { <|> }\n}\n', { has: ['hours'], lacks: ['noise'] });
  });

  it('is silent in comments, in strings and where a new name is made up', () => {
    expect(completionAt('# us<|>\n')).toEqual([]);
    expect(completionAt('assembly a "ti<|>tle" {\n}\n')).toEqual([]);
    expect(completionAt('assembly <|> {\n}\n')).toEqual([]);
  });

  it('replaces the word that is half typed, and nothing else', () => {
    const view = viewOf('use catalog\nassembly a {\n  gyps 12 mm\n}\n');
    const items = completion(view, { line: 2, character: 5 });
    const board = items.find(({ label }) => label === 'gypsum-board');
    expect(board?.textEdit).toMatchObject({
      newText: 'gypsum-board',
      range: { start: { line: 2, character: 2 }, end: { line: 2 } },
    });
  });

  it('shows the figures of a material at once and its whole account when asked', () => {
    const view = viewOf(smallBooth);
    const place = view.lines.positionAt(smallBooth.indexOf('gypsum-board') + 3);
    const board = completion(view, place).find(({ label }) => label === 'gypsum-board');
    expect(board?.labelDetails?.description).toMatch(/kg\/m³/);
    expect(board?.documentation).toBeUndefined();
    const full = completeItem(board!, () => view);
    expect(full.documentation).toMatchObject({ kind: 'markdown', value: expect.stringContaining('Source: ') });
  });

  it('explains every item', () => {
    const view = viewOf(wholeBooth);
    const seen = new Set<string>();
    const bare = new Set<string>();
    for (const { kind, text, from } of view.parsed.tokens) {
      if (kind === 'newline' || seen.has(`${kind} ${text}`)) continue;
      seen.add(`${kind} ${text}`);
      for (const item of completion(view, view.lines.positionAt(from))) {
        // Those of materials come when an item is looked at.
        if (item.documentation === undefined && item.data === undefined) bare.add(`${item.label} before \`${text}\``);
      }
    }
    expect([...bare]).toEqual([]);
  });

  it('shows beside an assembly what it comes to', () => {
    const { text, cursors } = markedText(cursorAfter('  roof '));
    const view = viewOf(text);
    const wall = completion(view, view.lines.positionAt(cursors[0]!)).find(({ label }) => label === 'wall');
    expect(wall?.labelDetails?.description).toMatch(/^STC \d+ · /);
  });
});
