import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const wall = (openings: string): string =>
  `use catalog\nassembly shell { osb 50 mm }\nbooth box {\n  inside 1.2 m x 1.4 m x 2 m\n  walls shell; roof shell; floor shell\n  ${openings}\n}\n`;
const window = (name: string, lines: string, face = 'left') =>
  `window ${name} on ${face} { size 400 mm x 500 mm; pane osb 18 mm; ${lines} }`;
const door = 'door entry on left { size 700 mm x 1000 mm; leaf osb 18 mm; offset 100 mm }';

describe('the sill of a window', () => {
  it('is read, and is unknown where nothing is said', () => {
    const booth = (lines: string) => checkText(wall(window('view', lines))).spec.booths[0]!;
    expect(booth('sill 1.20 m').windows[0]!.sill).toMatchObject({ value: 1.2 });
    expect(booth('offset 0 mm').windows[0]!.sill).toBeUndefined();
  });

  it('keeps the head of the window below the roof', () => {
    expect(problemIds(wall(window('view', 'sill 1.50 m')))).toEqual([]);
    const high = checkText(wall(window('view', 'sill 1.60 m')));
    expect(high.problems.map(({ id }) => id)).toEqual(['opening-beyond-face']);
    expect(underlined(high)).toBe('1.60 m');
    expect(high.problems[0]!.hint).toBe('a sill of at most 1500 mm fits');
  });

  it('means nothing in a roof', () => {
    expect(problemIds(wall(window('light', 'sill 0.2 m', 'roof')))).toEqual(['sill-in-flat-face']);
  });

  it('says whether a window clears the door below it', () => {
    expect(problemIds(wall(`${door}; ${window('view', 'offset 200 mm; sill 1.00 m')}`))).toEqual([]);
    expect(problemIds(wall(`${door}; ${window('view', 'offset 200 mm; sill 0.90 m')}`))).toEqual(['openings-overlap']);
    // Beside the door any height will do.
    expect(problemIds(wall(`${door}; ${window('view', 'offset 900 mm; sill 0.20 m')}`))).toEqual([]);
  });

  it('lets a second window stand above or below, and not across', () => {
    const both = (sill: string) =>
      problemIds(wall(`${window('a', 'offset 0 mm; sill 0.80 m')}; ${window('b', `offset 100 mm; ${sill}`)}`));
    expect(both('sill 0.30 m')).toEqual([]);
    expect(both('sill 1.30 m')).toEqual([]);
    expect(both('sill 1.00 m')).toEqual(['openings-overlap']);
    // Without a sill of its own it fits below the other.
    expect(both('')).toEqual([]);
  });

  it('is said of the base and not again of a variant that leaves it as it is', () => {
    const text = `${wall(window('view', 'sill 1.60 m'))}variant low { box.view.sill = 1.10 m }\n`;
    expect(problemIds(text)).toEqual(['opening-beyond-face']);
  });
});

describe('the board of a box in an air path', () => {
  const vent = (line: string) =>
    wall(`vent in on left { duct 100 mm; run 1 m; ${line} }; vent out on right { duct 100 mm; run 1 m }`);

  it('is read of a chamber and of a maze, with and without a lining', () => {
    const read = (line: string) => checkText(vent(line)).spec.booths[0]!.vents[0]!;
    const { board, lining } = read('chamber 400 mm x 300 mm x 300 mm of osb 18 mm lined mineral-wool-40 25 mm')
      .chambers[0]!;
    expect([board!.material.name, board!.thickness!.value]).toEqual(['osb', 0.018]);
    expect([lining!.material.name, lining!.thickness!.value]).toEqual(['mineral-wool-40', 0.025]);
    expect(read('maze 6 turns leg 250 mm channel 80 mm x 300 mm angle 90 deg of osb 12 mm').maze!.board).toMatchObject({
      material: { name: 'osb' },
    });
    expect(read('chamber 400 mm x 300 mm x 300 mm lined mineral-wool-40 25 mm').chambers[0]!.board).toBeUndefined();
  });

  it.each([
    ['chamber 400 mm x 300 mm x 300 mm of mineral-wool-40 50 mm', 'kind-does-not-fit', 'mineral-wool-40'],
    ['chamber 400 mm x 300 mm x 300 mm of nothing-known 12 mm', 'unknown-name', 'nothing-known'],
    ['chamber 400 mm x 300 mm x 300 mm of osb 0 mm', 'value-implausible', '0 mm'],
  ])('is told about `%s`', (line, id, place) => {
    const result = checkText(vent(line));
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
    // The box itself stays: its sound and its air do not depend on its board.
    expect(result.spec.booths[0]!.vents[0]!.chambers).toHaveLength(1);
  });
});
