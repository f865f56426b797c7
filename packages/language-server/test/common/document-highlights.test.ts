import { expect, it } from 'vitest';
import { documentHighlights } from '../../src/common/document-highlights.js';
import { viewOf } from '../helpers/index.js';

const view = viewOf('let gap = 5 mm # the gap\nassembly a {\n  air gap\n}\n', {});

it('marks the declaration and the uses of a name, and no like word in a comment', () => {
  const found = documentHighlights(view, { line: 2, character: 7 });
  expect(found.map(({ range, kind }) => [range.start.line, range.start.character, kind])).toEqual([
    [0, 4, 3],
    [2, 6, 2],
  ]);
});

it('marks nothing on a word of the language', () => {
  expect(documentHighlights(view, { line: 2, character: 3 })).toEqual([]);
});
