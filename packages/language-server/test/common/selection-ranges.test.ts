import { describe, expect, it } from 'vitest';
import { selectionRanges } from '../../src/common/selection-ranges.js';
import { markedText, viewOf } from '../helpers/index.js';

/** The texts of the growing selection at the cursor. */
function selections(marked: string): string[] {
  const { text, cursors } = markedText(marked);
  const view = viewOf(text);
  const [first] = selectionRanges(view, [view.lines.positionAt(cursors[0]!)]);
  const texts: string[] = [];
  for (let range = first; range !== undefined; range = range.parent) {
    texts.push(view.text.slice(view.lines.offsetAt(range.range.start), view.lines.offsetAt(range.range.end)));
  }
  return texts;
}

describe('selection ranges', () => {
  it('grow from the number over the value, the fact and the block to the whole text', () => {
    expect(selections('let a = 1 mm\nassembly w {\n  air 5<|>0 mm + a\n}\n')).toEqual([
      '50',
      '50 mm',
      '50 mm + a',
      'air 50 mm + a',
      '{\n  air 50 mm + a\n}',
      'assembly w {\n  air 50 mm + a\n}',
      'let a = 1 mm\nassembly w {\n  air 50 mm + a\n}\n',
    ]);
  });

  it('take the inside of a title before its quotes', () => {
    expect(selections('assembly w "outer <|>wall" { air 5 mm }\n').slice(0, 3)).toEqual([
      'outer wall',
      '"outer wall"',
      'assembly w "outer wall"',
    ]);
  });

  it('take a band of a spectrum before the whole spectrum', () => {
    const found = selections('site {\n  noise n octave 63 Hz 50 dB, 125 Hz 4<|>0 dB\n}\n');
    expect(found.slice(0, 3)).toEqual(['40', '40 dB', '125 Hz 40 dB']);
    expect(found).toContain('octave 63 Hz 50 dB, 125 Hz 40 dB');
  });

  it('take a comment before the run of comments', () => {
    expect(selections('# one\n# t<|>wo\n\nlet a = 1 mm # three\n').slice(0, 2)).toEqual(['# two', '# one\n# two']);
  });

  it('stand for the empty text too', () => {
    expect(selections('<|>')).toEqual(['']);
  });
});
