import { format, parse } from '@boothwright/language';
import { describe, expect, it } from 'vitest';

describe('format(text)', () => {
  it('indents by blocks, spaces words once and aligns the values of neighbouring facts', () => {
    const text = 'site{\nroom 3 m   x 3m x 2.4 m\n   reverberation 0.5s;\n\n\n\n floor timber limit 1.5kPa\n}';
    expect(format(text)).toBe(
      'site {\n  room 3 m x 3 m x 2.4 m\n  reverberation 0.5 s;\n\n  floor timber limit 1.5 kPa\n}\n',
    );
    expect(format('assembly a {\n osb 9 mm\n  gypsum-board   12.5 mm\n  air 3 mm\n}\n')).toBe(
      'assembly a {\n  osb          9 mm\n  gypsum-board 12.5 mm\n  air          3 mm\n}\n',
    );
  });

  it('aligns the signs of values and changes, and the limits of requirements', () => {
    expect(format('let a = 3 mm\nlet longer = 4 mm\n')).toBe('let a      = 3 mm\nlet longer = 4 mm\n');
    expect(format('variant v {\n gap = 3 mm\n box.contents = 3 kg\n}\n')).toBe(
      'variant v {\n  gap          = 3 mm\n  box.contents = 3 kg\n}\n',
    );
    expect(format('require co2 <= 900 ppm\nrequire floor-load <= 1 kPa\n')).toBe(
      'require co2        <= 900 ppm\nrequire floor-load <= 1 kPa\n',
    );
  });

  it('aligns comments behind neighbouring lines and keeps those on lines of their own', () => {
    expect(format('# top\nassembly a { # one\n  osb 9 mm      # two\n# three\n  air 3 mm # four\n}\n')).toBe(
      '# top\nassembly a {  # one\n  osb 9 mm    # two\n  # three\n  air 3 mm  # four\n}\n',
    );
  });

  it('leaves a line that cannot be read to the letter', () => {
    const text = 'assembly a {\n  osb    9 mm\n   air   0,9   mm\n}\n';
    expect(format(text)).toBe('assembly a {\n  osb 9 mm\n   air   0,9   mm\n}\n');
  });

  it('keeps a hyphen, a minus and a broken number as they are', () => {
    for (const text of ['let a = b - c', 'let a = -3 mm', 'let a = 2-1/2 in', 'let a = b/c', 'let a = b * c'])
      expect(format(text)).toBe(`${text}\n`);
  });

  it('puts blanks around the signs of a calculation, but none into a unit', () => {
    expect(format('let a = 3 mm+2 mm*b\n')).toBe('let a = 3 mm + 2 mm * b\n');
    expect(format('let a = (b+c)/2\nlet d = 6 ft/(2*b)\n')).toBe('let a = (b + c) / 2\nlet d = 6 ft / (2 * b)\n');
    expect(format('let a = 5 kPa.s/m2\n')).toBe('let a = 5 kPa.s/m2\n');
  });

  it('puts the signs of requirements in a column and no gap into what they are about', () => {
    expect(format('require stc of wall >= 45\nrequire isolation >= 30 dB against tram\nrequire co2 <= 900 ppm\n')).toBe(
      'require stc of wall >= 45\nrequire isolation   >= 30 dB against tram\nrequire co2         <= 900 ppm\n',
    );
  });

  it('keeps CRLF line ends', () => {
    expect(format('let a = 3 mm\r\n\r\n\r\nlet bc = 4 mm')).toBe('let a = 3 mm\r\n\r\nlet bc = 4 mm\r\n');
  });

  it('returns what is no text as it is', () => {
    expect(format('\u0000binary')).toBe('\u0000binary');
    expect(format('')).toBe('');
    expect(format('\n\n')).toBe('');
  });

  it('ends a column at an empty line', () => {
    expect(format('session {\n people 1\n\n supply-air 600 ppm\n}\n')).toBe(
      'session {\n  people 1\n\n  supply-air 600 ppm\n}\n',
    );
  });

  it('leaves the tokens as they were', () => {
    const text = 'site{room 3m x 3 m×2.4m;noise  a octave 63Hz 5dB,125 Hz 6 dB #x\n}';
    const tokens = (source: string): string[] =>
      parse(source, 'a')
        .tokens.filter((t) => t.kind !== 'newline')
        .map((t) => t.text);
    expect(tokens(format(text))).toEqual(tokens(text));
  });
});
