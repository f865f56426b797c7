import { expect, test } from 'vitest';
import { lineAndColumn } from '../../src/text/line-and-column.js';

const place = (text: string, offset: number) => {
  const { line, column } = lineAndColumn(text, offset);
  return [line, column];
};

test('lineAndColumn(text, offset) counts from 1 and ends lines with LF, CRLF or CR', () => {
  expect(place('ab\ncd', 3)).toEqual([2, 1]);
  expect(place('ab\r\ncd', 4)).toEqual([2, 1]);
  expect(place('ab\rcd', 3)).toEqual([2, 1]);
  expect(place('ab\ncd', 4)).toEqual([2, 2]);
});

test('lineAndColumn(text, offset) takes the end of a line as part of it and anything beyond the text as its end', () => {
  expect(place('ab\ncd', 2)).toEqual([1, 3]);
  expect(place('ab\n', 3)).toEqual([2, 1]);
  expect(place('ab', 99)).toEqual([1, 3]);
  expect(place('', 0)).toEqual([1, 1]);
});
