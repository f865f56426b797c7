import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const text = (lines: string, more = ''): string =>
  `use catalog\nassembly shell { osb 50 mm }\nbooth box {\n  inside 1.2 m x 1.4 m x 2 m\n  walls shell; roof shell; floor shell\n  ${lines}\n}\n${more}`;
const lined = 'lining on walls { mineral-wool-60 50 mm }\n  ';
const room = 'site { room 4 m x 3 m x 2.4 m }\n';

describe('places in a booth', () => {
  it.each([
    ['mic at 1.2 m, 0.5 m, 1.5 m', 'mic-outside', '1.2 m'],
    ['mouth at 0.6 m, 0.5 m, 2.5 m', 'mouth-outside', '2.5 m'],
    ['equipment lamp at 0.6 m, 1.5 m, 1 m', 'equipment-outside', '1.5 m'],
    [`${lined}mic at 0.04 m, 0.5 m, 1.5 m`, 'mic-in-lining', '0.04 m'],
    [`${lined}mouth at 0.6 m, 1.36 m, 1.5 m`, 'mouth-in-lining', '1.36 m'],
    [`${lined}equipment lamp at 0.6 m, 1.36 m, 1.5 m`, 'equipment-in-lining', '1.36 m'],
    ['equipment desk at 0.6 m, 0.2 m, 0.7 m { size 1.3 m x 0.4 m x 0.03 m }', 'equipment-beyond-face', '0.6 m'],
    ['equipment desk at 0.6 m, 0.1 m, 0.7 m { size 1.1 m x 0.4 m x 0.03 m }', 'equipment-beyond-face', '0.1 m'],
    ['equipment copy at 0.6 m, 0.2 m, 0.7 m { stands; hangs }', 'stands-and-hangs', 'hangs'],
    ['equipment copy at 0.6 m, 0.2 m, 0.7 m { tilt 120 deg }', 'value-implausible', '120 deg'],
    ['equipment copy at 0.6 m, 0.2 m, 0.7 m { tilt 30 }', 'unit-missing', '30'],
    ['panels { split 1 m }', 'fact-missing', 'panels'],
    ['panels { width 1.6 m }', 'panels-wider-than-faces', '1.6 m'],
    ['panels { width 600 mm; split 2.1 m }', 'split-above-wall', '2.1 m'],
    ['mounts 0 stiffness 200 N/mm', 'value-implausible', '0'],
    ['mounts 4 stiffness 200 N/m2', 'unit-of-wrong-dimension', '200 N/m2'],
    ['stands at 0.1 m, 0.1 m', 'room-missing', 'stands at 0.1 m, 0.1 m'],
  ])('`%s` is told', (line, id, place) => {
    const result = checkText(text(line));
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
  });

  it('may be beside a lining that covers only a part of its face', () => {
    expect(
      problemIds(text('lining on walls cover 80 % { mineral-wool-60 50 mm }\n  mic at 0.04 m, 0.5 m, 1.5 m')),
    ).toEqual([]);
  });

  it('counts how far a thing leans', () => {
    const copy = (tilt: string): string =>
      text(`equipment copy at 0.6 m, 0.2 m, 1.3 m { size 0.3 m x 0.01 m x 0.8 m; tilt ${tilt} }`);
    // 0.8 m x sin 25 deg is 0.338 m, which leaves 0.2 m - 0.173 m; 0.8 m x sin 31 deg is 0.412 m.
    expect(problemIds(copy('25 deg'))).toEqual([]);
    expect(problemIds(copy('31 deg'))).toEqual(['equipment-beyond-face']);
    expect(problemIds(copy('-31 deg'))).toEqual(['equipment-beyond-face']);
  });

  it('cannot take a name of another thing', () => {
    expect(problemIds(text('hole box at 1 m\n  equipment lamp at 0.6 m, 0.5 m, 1 m'))).not.toContain('name-twice');
    expect(
      problemIds(text('hole lamp on left { diameter 20 mm; depth 50 mm }\n  equipment lamp at 0.6 m, 0.5 m, 1 m')),
    ).toEqual(['name-twice']);
  });

  it('need no microphone', () => {
    const { spec, problems } = checkText(text('contents 4 kg'));
    expect(problems).toEqual([]);
    expect(spec.booths[0]!.microphone).toBeUndefined();
  });
});

describe('the place of a booth', () => {
  it.each([
    ['stands at 0.1 m, 0.1 m', []],
    // 1.2 m inside and two walls of 50 mm, in a room of 4 m.
    ['stands at 2.7 m, 0.1 m', []],
    ['stands at 2.75 m, 0.1 m', ['booth-outside-room']],
    ['stands at -0.1 m, 0.1 m', ['booth-outside-room']],
    ['stands at 0.1 m, 2 m', ['booth-outside-room']],
    ['stands at 5 m, 5 m', ['booth-outside-room', 'booth-outside-room']],
  ])('`%s` is compared with the room', (line, ids) => {
    expect(problemIds(text(line, room))).toEqual(ids);
  });

  it('is not missed in a site that could not be read', () => {
    expect(problemIds(text('stands at 0.1 m, 0.1 m', 'site { rom 4 m x 3 m x 2 m }\n'))).toEqual(['unknown-keyword']);
    expect(problemIds(text('stands at 0.1 m, 0.1 m', 'site { floor concrete }\n'))).toEqual(['room-missing']);
  });
});

describe('openings side by side', () => {
  const door = (name: string, width: string, offset = ''): string =>
    `door ${name} on front { size ${width} x 1900 mm; leaf osb 18 mm${offset} }\n  `;
  const window = (name: string, width: string, height: string, offset = ''): string =>
    `window ${name} on front { size ${width} x ${height}; pane glass 4 mm${offset} }\n  `;

  it.each([
    ['two doors', door('a', '700 mm') + door('b', '600 mm'), ['openings-too-wide']],
    ['two doors that fit', door('a', '600 mm') + door('b', '600 mm'), []],
    ['three doors', door('a', '500 mm') + door('b', '400 mm') + door('c', '400 mm'), ['openings-too-wide']],
    ['a door and a window', door('a', '800 mm') + window('b', '500 mm', '400 mm'), ['openings-too-wide']],
    ['a window above another', window('a', '800 mm', '600 mm') + window('b', '900 mm', '600 mm'), []],
    ['two high windows', window('a', '800 mm', '1200 mm') + window('b', '900 mm', '1200 mm'), ['openings-too-wide']],
    [
      'one place left open',
      door('a', '800 mm', '; offset 0 mm') + window('b', '500 mm', '400 mm'),
      ['openings-too-wide'],
    ],
    [
      'both places given',
      door('a', '800 mm', '; offset 0 mm') + window('b', '500 mm', '400 mm', '; offset 700 mm'),
      ['openings-overlap'],
    ],
  ])('%s', (_, lines, ids) => {
    expect(problemIds(text(lines))).toEqual(ids);
  });
});
