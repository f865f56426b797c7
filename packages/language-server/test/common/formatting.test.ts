import { format } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { formatting, rangeFormatting } from '../../src/common/formatting.js';
import { edited, formatted, markedText, smallBooth, viewOf, wholeBooth } from '../helpers/index.js';

const untidy = 'use catalog\nassembly a   {\n gypsum-board    12.5 mm   # a remark\n      air 50 mm\n}\n';

describe('formatting', () => {
  it('comes to the one canonical layout', () => {
    const spread = wholeBooth.replace(/^ +/gm, '\t').replace(/\n/g, '  \n\n\n');
    for (const text of [untidy, smallBooth, spread, `${untidy}let =\n\n\n\nlet b = 1 mm`]) {
      expect(formatted(text)).toBe(format(text));
    }
    expect(formatted(untidy)).not.toBe(untidy);
  });

  it('touches only the blanks that change', () => {
    const view = viewOf(untidy);
    for (const { range, newText } of formatting(view)) {
      const old = view.text.slice(view.lines.offsetAt(range.start), view.lines.offsetAt(range.end));
      expect(`${old}${newText}`.trim()).toBe('');
    }
  });

  it('keeps line breaks of two signs', () => {
    const text = untidy.replace(/\n/g, '\r\n');
    expect(formatted(text)).toBe(format(text));
  });

  it('has nothing to do on a formatted text', () => {
    expect(formatting(viewOf(format(untidy)))).toEqual([]);
  });
});

describe('formatting of a range', () => {
  /** Formats the lines of `<|…|>` alone. */
  function formattedWithin(marked: string): string {
    const { text, ranges } = markedText(marked);
    const view = viewOf(text);
    return edited(view, rangeFormatting(view, view.lines.rangeOf(ranges[0]!)));
  }

  it('changes its lines alone, and whole ones', () => {
    expect(formattedWithin('assembly a   {\n    air   <|50|>   mm\n    air  20  mm\n}\n')).toBe(
      'assembly a   {\n  air 50 mm\n    air  20  mm\n}\n',
    );
  });

  it('takes a selection that ends at the start of a line as ending before it', () => {
    expect(formattedWithin('<|let  a  = 1 mm\n|>  let  b  = 2 mm\n')).toBe('let a = 1 mm\n  let  b  = 2 mm\n');
  });

  it('puts values where they stand in the whole text', () => {
    expect(formattedWithin('let <|a|> = 1 mm\nlet longer = 2 mm\n')).toBe('let a      = 1 mm\nlet longer = 2 mm\n');
  });

  it('comes over the whole range to the layout of the whole', () => {
    expect(formattedWithin(`<|${untidy}|>`)).toBe(format(untidy));
  });
});
