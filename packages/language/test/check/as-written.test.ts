import { describe, expect, it } from 'vitest';
import { feetAndInches } from '../../src/check/as-written.js';
import { checkText } from '../check-text.js';

describe('feetAndInches(metres)', () => {
  it.each([
    [0.3048, '1 ft'],
    [0.0254, '1 in'],
    [0.0127, '1/2 in'],
    [1.9304, '6 ft 4 in'],
    [0.0635, '2-1/2 in'],
    [1.524 + 0.0254 / 32, '5 ft 1/32 in'],
    [0.30479, '1 ft'],
  ])('of %f is %s', (metres, text) => {
    expect(feetAndInches(metres)).toBe(text);
  });

  it('reads back as the same length to half a thirty-second of an inch', () => {
    for (let millimetres = 1; millimetres < 3000; millimetres += 7.3) {
      const { spec, problems } = checkText(`site { room 3 m x 3 m x ${feetAndInches(1 + millimetres / 1000)} }`);
      expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
      const read = spec.site!.room!.height.value;
      expect(Math.abs(read - 1 - millimetres / 1000)).toBeLessThanOrEqual(0.0254 / 64 + 1e-9);
    }
  });
});

it('a size that is proposed has inches where the text has them', () => {
  const text = (size: string): string =>
    `use catalog\nassembly shell { osb 2 in }\nbooth box { outside ${size}; inside 4 ft x 4 ft x 6 ft; walls shell; roof shell; floor shell }\n`;
  const hints = (size: string) => checkText(text(size)).problems.map(({ hint }) => hint);
  expect(hints('4 ft 6 in x 4 ft 4 in x 6 ft 4 in')).toEqual([
    'an outside width of 1320.8 mm (`4 ft 4 in`) fits the layers',
  ]);
  expect(hints('1.4 m x 4 ft 4 in x 6 ft 4 in')).toEqual(['an outside width of 1320.8 mm fits the layers']);
});
