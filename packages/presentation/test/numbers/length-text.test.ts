import { expect, test } from 'vitest';
import { lengthFigure, lengthText } from '../../src/numbers/length-text.js';

test.each([
  [1.339, '1339 mm'],
  [0.0125, '12.5 mm'],
  [0.00004, '0 mm'],
  [-0.05, '-50 mm'],
  [0, '0 mm'],
  [Number.NaN, '–'],
])('lengthText(%f, metric) is %s', (metres, text) => {
  expect(lengthText(metres, 'metric')).toBe(text);
});

test.each([
  [1.339, '4′ 4 11/16″'],
  [1.8288, '6′ 0″'],
  [0.3048, '1′ 0″'],
  [0.0127, '1/2″'],
  [0.1397, '5 1/2″'],
  [0.31115, '1′ 0 1/4″'],
  [0.3047, '1′ 0″'],
  [0.0254, '1″'],
  [0, '0″'],
  [0.0001, '< 1/16″'],
  [-0.0254, '-1″'],
  [Number.POSITIVE_INFINITY, '–'],
])('lengthText(%f, imperial) is %s', (metres, text) => {
  expect(lengthText(metres, 'imperial')).toBe(text);
});

test('lengthText(metres, imperial) is never more than half a sixteenth of an inch off', () => {
  for (let mm = 1; mm < 4000; mm += 3.7) {
    const text = lengthText(mm / 1000, 'imperial');
    const [, feet = '0', inches = '0', top = '0', bottom = '1'] =
      /^(?:(\d+)′ )?(?:(\d+)(?= |″))? ?(?:(\d+)\/(\d+))?″$/.exec(text) ?? [];
    const back = Number(feet) * 304.8 + (Number(inches) + Number(top) / Number(bottom)) * 25.4;
    expect(Math.abs(back - mm), text).toBeLessThanOrEqual(25.4 / 32 + 1e-9);
  }
});

test('lengthFigure(metres, metric) leaves the unit to the drawing', () => {
  expect(lengthFigure(1.339, 'metric')).toBe('1339');
  expect(lengthFigure(1.339, 'imperial')).toBe('4′ 4 11/16″');
});
