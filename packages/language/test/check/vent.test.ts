import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const text = (lines: string, second = 'vent out on right { duct 125 mm; run 1 m }'): string =>
  `use catalog\nassembly shell { osb 50 mm }\nbooth box {\n  inside 1.2 m x 1.4 m x 2 m\n  walls shell; roof shell; floor shell\n  vent in on left {\n    duct 100 mm x 150 mm; run 1 m\n    ${lines}\n  }\n  ${second}\n}\n`;
const vent = (lines: string) => checkText(text(lines)).spec.booths[0]!.vents[0]!;

describe('a fan', () => {
  it('is still read from one line', () => {
    expect(checkText(text('fan 10 L/s sound-power octave 63 Hz 48 dB, 125 Hz 46 dB')).problems).toEqual([]);
    expect(vent('fan 10 L/s sound-power octave 63 Hz 48 dB').fan).toMatchObject({
      direction: undefined,
      flow: { value: 0.01 },
      soundPower: { value: { values: [{ hz: 63, value: 48 }] } },
      curve: undefined,
      lowSpeed: { value: 0.6, origin: { kind: 'default', name: 'fan-low-speed' } },
      place: undefined,
    });
  });

  it('has a direction, a curve, a low speed and a place', () => {
    const lines =
      'fan exhaust 40 L/s sound-power octave 63 Hz 48 dB { curve 0 L/s 120 Pa, 20 L/s 80 Pa, 40 L/s 0 Pa; low 50 %; place in-wall }';
    expect(checkText(text(lines)).problems).toEqual([]);
    const { fan } = vent(lines);
    expect(fan).toMatchObject({
      direction: { value: 'exhaust' },
      lowSpeed: { value: 0.5 },
      place: { value: 'in-wall' },
    });
    expect(fan!.curve!.map(({ flow, pressure }) => [flow.value, pressure.value])).toEqual([
      [0, 120],
      [0.02, 80],
      [0.04, 0],
    ]);
  });

  it.each([
    ['curve 0 L/s 120 Pa', 'fan-curve-short', '0 L/s 120 Pa'],
    ['curve 20 L/s 80 Pa, 0 L/s 120 Pa', 'fan-curve-not-falling', '0 L/s'],
    ['curve 0 L/s 80 Pa, 10 L/s 80 Pa', 'fan-curve-not-falling', '80 Pa'],
    ['curve 0 L/s 80 Pa, 5 L/s 0 Pa', 'fan-beyond-curve', '10 L/s'],
    ['curve 0 L/s 80 Pa 5 L/s 0 Pa', 'comma-missing', '5'],
    ['curve 0 L/s, 5 L/s 0 Pa', 'value-missing', ','],
    ['curve 0 L/s 2 kg, 5 L/s 0 Pa', 'unit-of-wrong-dimension', '2 kg'],
    ['low 160 %', 'value-implausible', '160 %'],
    ['place attic', 'unknown-word', 'attic'],
  ])('is told about `%s`', (line, id, place) => {
    const result = checkText(text(`fan 10 L/s { ${line} }`));
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
  });

  it('has no curve when the curve is wrong, but is there', () => {
    expect(vent('fan 10 L/s { curve 0 L/s 80 Pa, 10 L/s 90 Pa }').fan).toMatchObject({
      flow: { value: 0.01 },
      curve: undefined,
    });
  });

  it('needs a way for its air', () => {
    expect(problemIds(text('fan supply 10 L/s', ''))).toEqual(['air-has-no-way-out']);
    expect(
      problemIds(text('fan supply 10 L/s', 'vent out on right { duct 125 mm; run 1 m; fan exhaust 10 L/s }')),
    ).toEqual([]);
    expect(
      problemIds(text('fan supply 10 L/s', 'vent out on right { duct 125 mm; run 1 m; fan supply 10 L/s }')),
    ).toEqual(['air-has-no-way-out']);
  });
});

describe('an air path', () => {
  it('has boxes in order, a maze, a grille, a wall and a far end', () => {
    const lines =
      'chamber 400 mm x 300 mm x 250 mm lined glass-wool 25 mm\n chamber 500 mm x 300 mm x 300 mm\n maze 6 turns leg 250 mm channel 80 mm x 300 mm angle 120 deg lined glass-wool 20 mm\n grille 250 mm x 150 mm free 60 %\n opens-to outdoors; wall flexible';
    expect(checkText(text(lines)).problems).toEqual([]);
    const { chambers, maze, grille, opensTo, wall } = vent(lines);
    expect(chambers).toMatchObject([
      {
        size: { width: { value: 0.4 }, depth: { value: 0.3 }, height: { value: 0.25 } },
        lining: { thickness: { value: 0.025 } },
      },
      { size: { width: { value: 0.5 } }, lining: undefined },
    ]);
    expect(maze).toMatchObject({
      turns: { value: 6 },
      leg: { value: 0.25 },
      angle: { value: 120 },
      channel: { width: { value: 0.08 }, height: { value: 0.3 } },
      lining: { thickness: { value: 0.02 } },
    });
    expect(grille).toMatchObject({ size: { width: { value: 0.25 }, height: { value: 0.15 } }, free: { value: 0.6 } });
    expect([opensTo.value, wall.value]).toEqual(['outdoors', 'flexible']);
  });

  it('has named defaults', () => {
    const { maze, grille, opensTo, wall } = vent(
      'maze 2 turns leg 250 mm channel 80 mm x 300 mm; grille 250 mm x 150 mm',
    );
    expect(
      [maze!.angle, grille!.free, opensTo, wall].map(({ value, origin }) => [value, 'name' in origin && origin.name]),
    ).toEqual([
      [90, 'maze-angle'],
      [0.7, 'grille-free-area'],
      ['room', 'vent-opens-to'],
      ['smooth', 'duct-wall'],
    ]);
  });

  it.each([
    ['maze 6 turns leg 50 mm channel 80 mm x 300 mm', 'maze-leg-short', '50 mm'],
    ['maze 2.5 turns leg 150 mm channel 80 mm x 300 mm', 'value-implausible', '2.5'],
    ['maze 6 turns leg 25 m channel 80 mm x 300 mm', 'value-unusual', '25 m'],
    ['maze 6 turns leg 250 mm channel 80 mm', 'size-incomplete', 'mm'],
    ['chamber 300 mm x 60 mm x 200 mm', 'chamber-narrower-than-duct', '60 mm'],
    ['chamber 300 mm x 90 mm x 300 mm lined glass-wool 50 mm', 'lining-fills-chamber', '50 mm'],
    ['chamber 300 mm x 300 mm x 300 mm lined osb 18 mm', 'kind-does-not-fit', 'osb'],
    ['grille 1.8 m x 150 mm', 'opening-larger-than-face', '1.8 m'],
    ['grille 200 mm x 150 mm free 160 %', 'value-implausible', '160 %'],
    ['opens-to attic', 'unknown-word', 'attic'],
  ])('is told about `%s`', (line, id, place) => {
    const result = checkText(text(`${line};`));
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
  });
});

it('a box of a board that comes in one thickness may be lined', () => {
  const { spec, problems } = checkText(
    text('chamber 400 mm x 300 mm x 300 mm of board lined glass-wool 25 mm').replace(
      'use catalog',
      'use catalog\nmaterial board { kind panel; density 600 kg/m3; modulus 3 GPa; thickness 12 mm }',
    ),
  );
  expect(problems).toEqual([]);
  expect(spec.booths[0]!.vents[0]!.chambers[0]).toMatchObject({ lining: { material: { name: 'glass-wool' } } });
});
