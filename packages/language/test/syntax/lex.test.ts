import { describe, expect, it } from 'vitest';
import { lex, numberValue } from '../../src/syntax/lex.js';

const words = (text: string): string[] =>
  lex(text)
    .filter((token) => token.kind !== 'newline')
    .map((token) => `${token.kind} ${token.text}`);

describe('lex(text)', () => {
  it('reads a mixed number only before a unit of length', () => {
    expect(words('2-1/2 in')).toEqual(['number 2-1/2', 'word in']);
    expect(words('3/4in')).toEqual(['number 3/4', 'word in']);
    expect(words('3/4 kg')).toEqual(['number 3', 'symbol /', 'number 4', 'word kg']);
    expect(words('2 - 1/2 in')).toEqual(['number 2', 'symbol -', 'number 1/2', 'word in']);
  });

  it('keeps a hyphen inside a name and a minus with blanks apart', () => {
    expect(words('limp-sheet')).toEqual(['word limp-sheet']);
    expect(words('gap - 2 mm')).toEqual(['word gap', 'symbol -', 'number 2', 'word mm']);
    expect(words('mineral-wool-40 70 mm')).toEqual(['word mineral-wool-40', 'number 70', 'word mm']);
    expect(words('a- b')).toEqual(['word a', 'symbol -', 'word b']);
  });

  it('reads `..` as one sign and leaves `5.` no number', () => {
    expect(words('0.08 s .. 0.20 s')).toEqual(['number 0.08', 'word s', 'symbol ..', 'number 0.20', 'word s']);
    expect(words('5.')).toEqual(['number 5', 'symbol .']);
    expect(words('5..6')).toEqual(['number 5', 'symbol ..', 'number 6']);
  });

  it('starts a comment only at the start of a line or behind a blank', () => {
    expect(words('# all')).toEqual(['comment # all']);
    expect(words('air # gap')).toEqual(['word air', 'comment # gap']);
    expect(words('a#b')).toEqual(['word a', 'other #', 'word b']);
  });

  it('reads nominal lumber as one token', () => {
    expect(words('2x4 every')).toEqual(['nominal 2x4', 'word every']);
    expect(words('2 x 4')).toEqual(['number 2', 'word x', 'number 4']);
  });

  it('ends a text at its line, before a block that opens there', () => {
    expect(words('a "open\nb')).toEqual(['word a', 'string "open', 'word b']);
    expect(words('a "open {')).toEqual(['word a', 'string "open', 'symbol {']);
  });

  it('reads letters beyond the plain ones', () => {
    expect(words('lärm-gülle 3 µm 20 °C 4 m²')).toEqual([
      'word lärm-gülle',
      'number 3',
      'word µm',
      'number 20',
      'word °C',
      'number 4',
      'word m²',
    ]);
    expect(words('gap-é x')).toEqual(['word gap-é', 'word x']);
  });

  it('covers the text: between tokens there are only blanks', () => {
    const text = 'use catalog # all\r\nair 5\tmm\n\n"x" $ 2x4 ± 10 %\r}';
    let at = 0;
    for (const token of lex(text)) {
      expect(text.slice(at, token.from).trim()).toBe('');
      at = token.to;
    }
    expect(at).toBe(text.length);
  });
});

describe('numberValue(text)', () => {
  it('reads whole, decimal, broken and mixed numbers', () => {
    expect(['12', '12.5', '3/4', '2-1/2', '1e3'].map(numberValue)).toEqual([12, 12.5, 0.75, 2.5, 1000]);
  });
});
