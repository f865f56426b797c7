import { expect, test } from 'vitest';
import { styleOf } from '../src/terminal.js';

const write = () => {};

test('styleOf(output, env) colours only on a terminal that wants colours', () => {
  const tty = { write, isTTY: true, columns: 80 };
  expect(styleOf(tty, {}).colour).toBe(true);
  expect(styleOf(tty, { NO_COLOR: '1' }).colour).toBe(false);
  expect(styleOf(tty, { TERM: 'dumb' }).colour).toBe(false);
  expect(styleOf({ write }, {}).colour).toBe(false);
});

test('styleOf(output, env) takes the width of a terminal within reason and 100 columns elsewhere', () => {
  const width = (columns: number | undefined) => styleOf({ write, isTTY: true, columns }, {}).width;
  expect([width(80), width(20), width(300), width(undefined), width(0)]).toEqual([80, 60, 120, 100, 100]);
  expect(styleOf({ write, columns: 80 }, {}).width).toBe(100);
});
