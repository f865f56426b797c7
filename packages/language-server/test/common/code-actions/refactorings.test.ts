import { describe, expect, it } from 'vitest';
import { actionsAt, problemsOf } from '../../helpers/code-actions.js';

const extract = (marked: string) => actionsAt(marked, ['refactor.extract']);
const inline = (marked: string) => actionsAt(marked, ['refactor.inline']);

describe('naming a value with let', () => {
  it('puts the let behind the files that are used and the name in place', () => {
    const [action] = extract('use catalog\n\nassembly wall {\n  osb 12 mm\n  air 5<|>0 mm\n}\n');
    expect(action?.title).toBe('Name `50 mm` with `let wall-air`');
    expect(action?.after).toBe(
      'use catalog\nlet wall-air = 50 mm\n\nassembly wall {\n  osb 12 mm\n  air wall-air\n}\n',
    );
    expect(problemsOf(action!.after)).toEqual([]);
  });

  it('takes one side of a size, and a whole sum', () => {
    const frame = 'assembly wall {\n  frame 45 mm x 7<|>0 mm every 600 mm\n}\n';
    expect(extract(frame)[0]?.after).toContain('frame 45 mm x wall-frame-depth every 600 mm');
    expect(extract('assembly wall {\n  air 20 mm <|>+ 30 mm\n}\n')[0]?.after).toBe(
      'let wall-air = 20 mm + 30 mm\nassembly wall {\n  air wall-air\n}\n',
    );
  });

  it('takes a name that is free', () => {
    const text = 'let wall-air = 10 mm\nassembly wall {\n  air wall-air\n  air 5<|>0 mm\n}\n';
    expect(extract(text)[0]?.title).toBe('Name `50 mm` with `let wall-air-2`');
  });

  it('is not offered for a name, a let or a variant', () => {
    expect(extract('let a = 1<|>0 mm\n')).toEqual([]);
    expect(extract('let a = 10 mm\nassembly w {\n  air <|>a\n}\n')).toEqual([]);
    expect(extract('let a = 10 mm\nvariant v { a = 2<|>0 mm }\n')).toEqual([]);
  });
});

describe('putting a let back', () => {
  it('in every place, and takes the let away', () => {
    const [action] = inline('let ga<|>p = 50 mm\n\nassembly a {\n  air gap\n}\nassembly b {\n  air gap\n}\n');
    expect(action?.title).toBe('Put `50 mm` in place of `gap` in 2 places');
    expect(action?.after).toBe('\nassembly a {\n  air 50 mm\n}\nassembly b {\n  air 50 mm\n}\n');
  });

  it('in parentheses where a sum becomes part of another', () => {
    const text = 'let gap = 20 mm + 30 mm\nassembly a {\n  air 2 * ga<|>p\n}\nassembly b {\n  air gap\n}\n';
    expect(inline(text)[0]?.after).toBe(
      'assembly a {\n  air 2 * (20 mm + 30 mm)\n}\nassembly b {\n  air 20 mm + 30 mm\n}\n',
    );
    expect(problemsOf(inline(text)[0]!.after)).toEqual([]);
  });

  it('is not offered where a variant changes it', () => {
    expect(inline('let ga<|>p = 50 mm\nassembly a {\n  air gap\n}\nvariant v { gap = 60 mm }\n')).toEqual([]);
  });

  it('undoes what naming did', () => {
    const before = 'use catalog\nassembly wall {\n  osb 12 mm\n  air 5<|>0 mm\n}\n';
    const named = extract(before)[0]!.after;
    expect(inline(named.replace('let wall', 'let wa<|>ll'))[0]?.after).toBe(before.replace('<|>', ''));
  });
});
