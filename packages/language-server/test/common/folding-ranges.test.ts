import { expect, it } from 'vitest';
import { foldingRanges } from '../../src/common/folding-ranges.js';
import { viewOf } from '../helpers/index.js';

it('folds blocks up to their closing brace, and runs of comments', () => {
  const text = '# one\n# two\n\nassembly a {\n  air 5 mm # here\n  # alone\n}\nsession { people 1 }\n';
  const folds = foldingRanges(viewOf(text)).map(({ startLine, endLine, kind }) => [startLine, endLine, kind]);
  expect(folds).toEqual([
    [3, 5, undefined],
    [0, 1, 'comment'],
  ]);
});

it('folds a block that is not closed', () => {
  const folds = foldingRanges(viewOf('assembly a {\n  air 5 mm\n'));
  expect(folds.map(({ startLine }) => startLine)).toEqual([0]);
});
