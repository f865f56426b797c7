import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Context, contextAt, parse } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { cursor } from './cursor.js';

function at(marked: string): Context & { readonly words: readonly string[]; readonly replaced: string } {
  const { text, offset } = cursor(marked);
  const context = contextAt(parse(text, 'a.booth'), offset);
  const words = context.expects.map((expectation) => {
    switch (expectation.kind) {
      case 'fact':
        return `fact ${expectation.facts.length}`;
      case 'reference':
        return `reference ${expectation.to.join(' ')}`;
      case 'quantity':
      case 'unit':
        return `${expectation.kind} ${expectation.dimension}`;
      case 'choice':
        return expectation.options.join(' ');
      case 'word':
        return expectation.word;
      case 'path':
        return `path ${expectation.typed.join('.')}`;
      default:
        return expectation.kind;
    }
  });
  return { ...context, words, replaced: text.slice(context.replace.from, context.replace.to) };
}

describe('contextAt(parsed, offset)', () => {
  it('depends on the statement around a place and on none before or behind it', () => {
    const example = '../../../../shared/examples/tram-alcove/tram-alcove.booth';
    const text = readFileSync(join(import.meta.dirname, example), 'utf8');
    const whole = parse(text, 'a.booth');
    for (const { from, to } of whole.tree.statements) {
      const alone = parse(text.slice(from, to), 'a.booth');
      for (let offset = from + 1; offset < to; offset += 7) {
        const { replace, ...context } = contextAt(whole, offset);
        const { replace: own, ...same } = contextAt(alone, offset - from);
        expect(context).toEqual(same);
        expect(replace).toEqual({ from: own.from + from, to: own.to + from });
      }
    }
  });

  it('offers the facts of the block at the start of a line', () => {
    expect(at('<|>')).toMatchObject({ block: 'file', words: [expect.stringMatching(/^fact \d+$/)] });
    expect(at('site {\n  <|>\n}')).toMatchObject({ block: 'site', fact: undefined });
    expect(at('site {\n  ro<|>\n}')).toMatchObject({ block: 'site', replaced: 'ro' });
    expect(at('session { people 1; <|> }').block).toBe('session');
  });

  it('offers materials, air and frames where a layer starts', () => {
    const { words, block } = at('assembly a {\n  os<|>\n}');
    expect(block).toBe('assembly');
    expect(words).toContain('layer');
    expect(words).toContain('reference material assembly');
  });

  it('offers units behind a number, of the dimension that belongs there', () => {
    expect(at('site {\n  reverberation 0.5 <|>\n}').words).toContain('unit time');
    expect(at('site {\n  reverberation 0.5 m<|>\n}')).toMatchObject({
      replaced: 'm',
      fact: { keyword: 'reverberation' },
    });
    expect(at('material m {\n  resistivity 9 <|>\n}').words).toEqual(['unit resistivity', 'from']);
  });

  it('offers faces, choices, references and fixed words', () => {
    expect(at('booth b {\n  door d on <|>\n}').words).toContain('face');
    expect(at('booth b {\n  walls <|>\n}').words).toEqual(['reference assembly']);
    expect(at('session { effort <|> }').words).toEqual(['casual normal raised loud shout']);
    expect(at('site { noise tram 60 dBA <|> }').words).toContain('like');
    expect(at('site { noise tram <|> }').words).toEqual(expect.arrayContaining(['octave', 'third', 'quantity level']));
    expect(at('require isolation >= 3 dB against <|>').words).toEqual(['reference noise']);
    expect(at('require <|>').words[0]).toContain('room-tone');
    expect(at('assembly a { frame 45 mm <|> }').words).toContain('x');
  });

  it('offers what a path may go on with', () => {
    expect(at('variant v {\n  box.<|>\n}').words).toContain('path box');
    expect(at('variant v {\n  box.entry.ga<|>\n}').words).toContain('path box.entry');
  });

  it('works in blocks that are not closed yet', () => {
    expect(at('booth b {\n  door d on front {\n    <|>').block).toBe('door');
  });

  it('is quiet in comments and texts', () => {
    expect(at('site "back <|>room" { }').quiet).toBe(true);
    expect(at('site { # wh<|>at\n}').quiet).toBe(true);
    expect(at('use "./pa<|>').quiet).toBe(true);
    expect(at('site { <|># what\n}').quiet).toBe(false);
  });
});
