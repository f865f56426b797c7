import { describe, expect, it } from 'vitest';
import { tokenModifiers, tokenTypes } from '../../src/common/semantic-tokens.js';
import { createTokenMemory } from '../../src/common/token-memory.js';
import type { View } from '../../src/common/view.js';
import { openSpecs, viewOf, wholeBooth } from '../helpers/index.js';

interface Place {
  readonly from: number;
  readonly to: number;
  readonly kind: string;
}

function placesOf(view: View, data: readonly number[]): Place[] {
  const found: Place[] = [];
  let line = 0;
  let character = 0;
  for (let i = 0; i < data.length; i += 5) {
    const [down, right, length, type, bits] = data.slice(i, i + 5) as [number, number, number, number, number];
    line += down;
    character = down === 0 ? character + right : right;
    const from = view.lines.offsetAt({ line, character });
    const modifiers = tokenModifiers.filter((_, at) => bits & (1 << at));
    found.push({ from, to: from + length, kind: [tokenTypes[type], ...modifiers].join(' ') });
  }
  return found;
}

/** Each token as `text type modifiers`. */
const readable = (view: View, data: readonly number[]): string[] =>
  placesOf(view, data).map(({ from, to, kind }) => `${view.text.slice(from, to)} ${kind}`);

const tokensOf = (text: string): string[] => {
  const view = viewOf(text);
  return readable(view, createTokenMemory().full(view).data);
};

describe('semantic tokens', () => {
  it('tell names by what they name, and where they are declared', () => {
    expect(tokensOf('use catalog\nlet g = 50 mm # gap\nassembly w "wall" {\n  gypsum-board 12 mm + g\n}\n')).toEqual([
      'use keyword',
      'catalog keyword',
      'let keyword',
      'g variable declaration readonly',
      '= operator',
      '50 number',
      'mm unit',
      '# gap comment',
      'assembly keyword',
      'w class declaration',
      '"wall" string',
      'gypsum-board struct defaultLibrary',
      '12 number',
      'mm unit',
      '+ operator',
      'g variable readonly',
    ]);
  });

  it('tell a fact from a choice, and take a unit of several signs as one', () => {
    expect(tokensOf('material m {\n  kind porous\n  density 38 kg/m3\n}\n')).toEqual([
      'material keyword',
      'm struct declaration',
      'kind property',
      'porous enumMember',
      'density property',
      '38 number',
      'kg/m3 unit',
    ]);
  });

  it('never overlap, and cover every word of a sound text', () => {
    const view = viewOf(wholeBooth);
    const { data } = createTokenMemory().full(view);
    const covered = placesOf(view, data);
    const words = view.parsed.tokens.filter(({ kind }) => kind === 'word');
    const missing = words.filter((word) => !covered.some(({ from, to }) => from <= word.from && word.to <= to));
    expect(missing.map(({ text }) => text)).toEqual([]);
    for (const [i, { from }] of covered.entries()) if (i > 0) expect(from).toBeGreaterThanOrEqual(covered[i - 1]!.to);
  });

  it('say nothing of a word that nothing is known about', () => {
    expect(tokensOf('assembly w {\n  unheard-of 5 mm\n}\nnonsense here\n')).not.toContain('nonsense keyword');
  });

  it('send after a change only what changed', () => {
    const specs = openSpecs({ 'a.booth': 'let a = 1 mm\nlet b = 2 mm\n' });
    const memory = createTokenMemory();
    const { resultId, data } = memory.full(specs.view('a.booth'));
    specs.change('a.booth', 'let a = 1 mm\nlet b = 200 mm\n');
    const delta = memory.delta(specs.view('a.booth'), resultId!);
    if (!('edits' in delta)) throw new Error('all tokens were sent anew');
    const patched = [...data];
    for (const { start, deleteCount, data: fresh } of delta.edits) patched.splice(start, deleteCount, ...(fresh ?? []));
    expect(patched).toEqual(createTokenMemory().full(specs.view('a.booth')).data);
    expect(delta.edits.flatMap(({ data: fresh }) => fresh ?? []).length).toBeLessThan(data.length / 2);
  });

  it('send all of them after an answer that is not known', () => {
    const view = viewOf('let a = 1 mm\n');
    expect(createTokenMemory().delta(view, 'unknown')).toHaveProperty('data');
  });

  it('send those of a range alone', () => {
    const view = viewOf('let a = 1 mm\nlet b = 2 mm\nlet c = 3 mm\n');
    const range = { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } };
    const { data } = createTokenMemory().range(view, range);
    expect(readable(view, data)).toEqual([
      'let keyword',
      'b variable declaration readonly',
      '= operator',
      '2 number',
      'mm unit',
    ]);
  });
});
