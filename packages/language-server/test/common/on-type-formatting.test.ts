import { describe, expect, it } from 'vitest';
import { onTypeFormatting } from '../../src/common/on-type-formatting.js';
import { edited, markedText, viewOf } from '../helpers/index.js';

const options = { tabSize: 2, insertSpaces: true };

/** The text after the character before the cursor `<|>` was typed. */
function typed(marked: string): string {
  const { text, cursors } = markedText(marked);
  const view = viewOf(text);
  const cursor = cursors[0]!;
  return edited(view, onTypeFormatting(view, view.lines.positionAt(cursor), text[cursor - 1]!, options));
}

describe('formatting on type', () => {
  it('tidies the line that was ended and starts the new one where its block does', () => {
    expect(typed('assembly a {\n      air   50   mm\n<|>\n}\n')).toBe('assembly a {\n  air 50 mm\n  \n}\n');
  });

  it('keeps the values of neighbouring lines in a column, down from the last empty line', () => {
    expect(typed('let  far = 0 mm\n\nlet a = 1 mm\nlet longer = 2 mm\n<|>')).toBe(
      'let  far = 0 mm\n\nlet a      = 1 mm\nlet longer = 2 mm\n',
    );
  });

  it('tidies the line of a closing brace', () => {
    expect(typed('assembly a {\n  air   50 mm\n    }<|>\n')).toBe('assembly a {\n  air   50 mm\n}\n');
  });

  it('leaves a line that could not be read and the line being typed as they are', () => {
    expect(typed('let   = \n<|>  let  b = 1 mm\n')).toBe('let   = \n  let  b = 1 mm\n');
  });

  it('has nothing to do at the start of the text', () => {
    expect(typed('\n<|>')).toBe('\n');
  });
});
