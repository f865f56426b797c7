import { describe, expect, it } from 'vitest';
import { checkText, underlined } from '../check-text.js';

const layer = (line: string, more = ''): string => `use catalog\n${more}\nassembly a {\n  ${line}\n}\n`;

describe('a slip of the unit that no size contradicts', () => {
  it.each([
    [layer('frame 45 mm x 70 mm every 300 cm'), '300 cm', 'did you mean `300 mm`?'],
    [layer('gypsum-board 12.5 cm'), '12.5 cm', 'did you mean `12.5 mm`?'],
    [layer('steel-sheet 20 cm'), '20 cm', 'did you mean `20 mm`?'],
    [layer('mineral-wool-60 50 cm'), '50 cm', 'did you mean `50 mm`?'],
    [layer('osb 120 mm'), '120 mm', 'check the number and its unit'],
    ['session { length 180 s }\n', '180 s', 'did you mean `180 min`?'],
    ['session { length 9 min }\n', '9 min', 'check the number and its unit'],
  ])('%j is told at its place', (text, place, hint) => {
    const result = checkText(text);
    expect(result.problems).toMatchObject([{ id: 'value-unusual', severity: 'warning', hint }]);
    expect(underlined(result)).toBe(place);
  });

  it.each([
    layer('frame 45 mm x 70 mm every 1.2 m'),
    layer('mineral-wool-60 300 mm'),
    layer('osb 60 mm'),
    layer('brick 110 mm'),
    layer('concrete 200 mm'),
    layer('aerated-concrete 150 mm'),
    layer('softwood-board 100 mm'),
    layer('soft-fibreboard 100 mm'),
    layer('own 150 mm', 'material own { kind panel; density 1900 kg/m3; modulus 20 GPa }'),
    'session { length 10 min }\n',
  ])('%j is not', (text) => {
    expect(checkText(text).problems).toEqual([]);
  });
});
