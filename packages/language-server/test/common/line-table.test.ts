import { describe, expect, it } from 'vitest';
import { lineTable } from '../../src/common/line-table.js';

describe('lineTable', () => {
  const text = 'one\r\ntwo\n\nlast';
  const lines = lineTable(text);

  it('counts lines and characters from zero, whatever ends a line', () => {
    expect(lines.positionAt(0)).toEqual({ line: 0, character: 0 });
    expect(lines.positionAt(text.indexOf('two'))).toEqual({ line: 1, character: 0 });
    expect(lines.positionAt(text.indexOf('last') + 2)).toEqual({ line: 3, character: 2 });
  });

  it('turns every offset into a position and back', () => {
    for (let offset = 0; offset <= text.length; offset++) {
      // Between the two characters of a line break there is no position.
      if (text[offset] === '\n' && text[offset - 1] === '\r') continue;
      expect(lines.offsetAt(lines.positionAt(offset))).toBe(offset);
    }
  });

  it('keeps a character beyond the line on the line', () => {
    expect(lines.offsetAt({ line: 0, character: 99 })).toBe(3);
    expect(lines.offsetAt({ line: 99, character: 0 })).toBe(text.length);
  });

  it('finds the end of a line without its line break', () => {
    expect(lines.lineEnd(1)).toBe(3);
    expect(lines.lineEnd(text.length)).toBe(text.length);
  });
});
