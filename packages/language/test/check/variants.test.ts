import type { BoothSpec } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const base = `use catalog
let gap = 6 mm
material batt { kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 }
assembly shell { osb 9 mm; air gap; osb 9 mm }
assembly other { osb 18 mm }
site { humidity 50 %; noise tram octave 63 Hz 58 dB; impact feet }
booth box {
  inside 1 m x 1 m x 2 m
  walls shell; roof shell; floor other
  door entry on front { size 700 mm x 1900 mm; leaf osb 18 mm }
  vent in on left { duct 125 mm; run 1 m; fan 10 L/s sound-power octave 63 Hz 40 dB }
  vent out on left { duct 125 mm; run 1 m }
  mic at 0.5 m, 0.5 m, 1.5 m { distance 150 mm }
}
session { people 1 }
budget { item ply "plywood" 7 at 38.00 EUR }
`;

function variant(body: string): BoothSpec {
  const result = checkText(`${base}variant v { ${body} }\n`);
  expect(result.problems).toEqual([]);
  expect(result.spec.variants.map(({ name }) => name)).toEqual(['v']);
  return result.spec.variants[0]!.spec;
}

describe('a variant', () => {
  it('is a whole spec that leaves the base as it is', () => {
    const { spec } = checkText(`${base}variant v { gap = 50 mm }\n`);
    const thickness = (of: BoothSpec): unknown =>
      (of.assemblies.get('shell')!.layers[1] as { thickness: { value: number } }).thickness.value;
    expect(thickness(spec)).toBe(0.006);
    expect(thickness(spec.variants[0]!.spec)).toBe(0.05);
    expect(spec.variants[0]!.spec.booths[0]!.faces.front!.assembly.layers[1]).toMatchObject({
      thickness: { value: 0.05 },
    });
  });

  it('changes a fact of a booth, a part of one, or one that the base leaves to its default', () => {
    expect(variant('box.walls = other').booths[0]!.faces.left!.assembly.name).toBe('other');
    expect(variant('box.inside.width = 1.2 m').booths[0]!.inside).toMatchObject({
      width: { value: 1.2 },
      depth: { value: 1 },
    });
    expect(variant('box.inside = 1.2 m x 1.3 m x 2.1 m').booths[0]!.inside).toMatchObject({
      width: { value: 1.2 },
      height: { value: 2.1 },
    });
    expect(variant('box.contents = 40 kg').booths[0]!.contents.value).toBe(40);
    expect(variant('box.mic.distance = 200 mm').booths[0]!.microphone!.distance.value).toBe(0.2);
    expect(variant('box.mic.high-pass = 80 Hz').booths[0]!.microphone!.highPass!.value).toBe(80);
    expect(variant('box.mic.x = 0.4 m').booths[0]!.microphone!.position.x.value).toBe(0.4);
  });

  it('changes a fact of an opening', () => {
    expect(variant('box.entry.gap.threshold = 0.3 mm').booths[0]!.doors[0]!.thresholdGap).toMatchObject({
      value: 0.0003,
      origin: { kind: 'given' },
    });
    expect(variant('box.entry.leaf = glass 10 mm').booths[0]!.doors[0]!.leaf.name).toBe('glass');
    expect(variant('box.in.duct = 100 mm x 150 mm').booths[0]!.vents[0]!.duct.kind).toBe('rectangular');
    expect(variant('box.in.fan.flow = 20 L/s').booths[0]!.vents[0]!.fan).toMatchObject({
      flow: { value: 0.02 },
      soundPower: { value: { grid: 'octave' } },
    });
  });

  it('changes a material, of the catalogue too', () => {
    expect(variant('batt.resistivity = 20 kPa.s/m2').materials.get('batt')!.resistivity!.value).toBe(20_000);
    expect(variant('osb.density = 700 kg/m3').assemblies.get('other')!.layers[0]).toMatchObject({
      surfaceMass: { value: expect.closeTo(12.6, 10) },
    });
  });

  it('changes site, session and budget, whole lines by their names', () => {
    expect(variant('session.people = 2').session!.people.value).toBe(2);
    expect(variant('site.humidity = 30 %').site!.humidity.value).toBe(0.3);
    expect(variant('site.tram = 60 dBA like pink').site!.sources[0]).toMatchObject({ name: 'tram', kind: 'shaped' });
    expect(variant('budget.ply = 9 at 40.00 EUR').budget!.items[0]).toMatchObject({
      name: 'ply',
      title: 'plywood',
      quantity: { value: 9 },
      price: { value: { amount: 40 } },
    });
    expect(variant('budget.ply.quantity = 8').budget!.items[0]!.quantity.value).toBe(8);
  });

  it('replaces whole declarations, and adds new ones', () => {
    expect(variant('assembly shell { osb 25 mm }').booths[0]!.faces.left!.assembly.layers).toHaveLength(1);
    const made = variant('assembly fresh { osb 30 mm }\n box.walls = fresh');
    expect(made.booths[0]!.faces.left!.assembly.name).toBe('fresh');
    expect(variant('site { noise tram octave 63 Hz 50 dB }').site!.sources).toHaveLength(1);
  });

  it('gives the place of the change to what it changes', () => {
    const text = `${base}variant v { box.inside.width = 1.2 m }\n`;
    const { range } = checkText(text).spec.variants[0]!.spec.booths[0]!.inside.width;
    expect(text.slice(range.from, range.to)).toBe('1.2 m');
  });

  it('does not repeat the problems of the base', () => {
    expect(
      problemIds(`${base}assembly bad { air 3 kg }\nvariant a { gap = 7 mm }\nvariant b { gap = 8 mm }\n`),
    ).toEqual(['unit-of-wrong-dimension']);
  });

  it('tells what it breaks at its own name', () => {
    const result = checkText(`${base}variant v { site { humidity 50 % } }\nrequire isolation >= 20 dB against tram\n`);
    expect(result.problems.map((problem) => problem.id)).toEqual(['unknown-name']);
    expect(underlined(result)).toBe('v');
    expect(result.problems[0]!.message).toMatch(/^in this variant, /);
  });

  it('is one of at most as many as are allowed', () => {
    const many = Array.from({ length: 201 }, (_, i) => `variant v${i} { gap = ${i + 1} mm }`).join('\n');
    const { problems, spec } = checkText(`let gap = 3 mm\n${many}\n`);
    expect(problems.map((problem) => problem.id)).toEqual(['too-many-variants']);
    expect(spec.variants).toHaveLength(200);
    expect(checkText(`let gap = 3 mm\n${many}\n`, { maxVariants: 3 }).spec.variants).toHaveLength(3);
  });
});

describe('a variant of what stands in a booth', () => {
  const text = (change: string): string =>
    `use catalog\nassembly shell { osb 50 mm }\nbooth box {\n  inside 1.2 m x 1.4 m x 2 m\n  walls shell; roof shell; floor shell\n  vent in on left { duct 125 mm; run 1 m; fan supply 10 L/s { low 50 % }; maze 4 turns leg 250 mm channel 80 mm x 300 mm }\n  vent out on right { duct 125 mm; run 1 m; chamber 300 mm x 300 mm x 300 mm; chamber 400 mm x 300 mm x 300 mm }\n  mic at 0.6 m, 0.5 m, 1.5 m\n  equipment copy "copy holder" at 0.6 m, 0.2 m, 1.3 m { tilt 30 deg }\n  equipment lamp at 0.6 m, 0.2 m, 1.9 m\n}\nvariant other {\n  ${change}\n}\n`;
  const changed = (change: string) => {
    const { spec, problems } = checkText(text(change));
    expect(problems).toEqual([]);
    return spec.variants[0]!.spec.booths[0]!;
  };

  it.each([
    ['box.copy.tilt = 40 deg', { equipment: [{ tilt: { value: 40 }, title: 'copy holder' }, {}] }],
    ['box.copy.x = 0.5 m', { equipment: [{ position: { x: { value: 0.5 } }, tilt: { value: 30 } }, {}] }],
    [
      'box.copy = at 0.5 m, 0.3 m, 1.2 m',
      { equipment: [{ name: 'copy', title: 'copy holder', position: { y: { value: 0.3 } }, tilt: { value: 30 } }, {}] },
    ],
    ['box.lamp.heat = 20 W', { equipment: [{}, { heat: { value: 20 } }] }],
    ['box.mic.pattern = cardioid', { microphone: { pattern: { value: 'cardioid' } } }],
    ['box.in.fan.low = 70 %', { vents: [{ fan: { lowSpeed: { value: 0.7 }, flow: { value: 0.01 } } }, {}] }],
    ['box.in.fan.flow = 12 L/s', { vents: [{ fan: { lowSpeed: { value: 0.5 }, flow: { value: 0.012 } } }, {}] }],
    ['box.in.fan.direction = exhaust', { vents: [{ fan: { direction: { value: 'exhaust' } } }, {}] }],
    [
      'box.in.fan.curve = 0 L/s 80 Pa, 20 L/s 0 Pa',
      { vents: [{ fan: { curve: [{}, { flow: { value: 0.02 } }] } }, {}] },
    ],
    ['box.in.maze.turns = 8', { vents: [{ maze: { turns: { value: 8 }, leg: { value: 0.25 } } }, {}] }],
    ['box.in.opens-to = outdoors', { vents: [{ opensTo: { value: 'outdoors' } }, {}] }],
    ['box.in.chamber = 300 mm x 300 mm x 300 mm', { vents: [{ chambers: [{}] }, {}] }],
    ['box.panels.width = 500 mm', { panels: { width: { value: 0.5 } } }],
    ['box.mounts = 8 stiffness 100 N/mm', { mounts: { count: { value: 8 } } }],
    ['box.mouth = at 0.6 m, 0.7 m, 1.5 m', { mouth: { y: { value: 0.7 } } }],
    ['box.in.face = back', { vents: [{ face: 'back', maze: {} }, {}] }],
  ])('takes `%s`', (change, expected) => {
    expect(changed(change)).toMatchObject(expected);
  });

  it('takes several changes of a block that the base does not have', () => {
    expect(changed('box.panels.width = 500 mm\n  box.panels.roof = slide')).toMatchObject({
      panels: { width: { value: 0.5 }, roof: { value: 'slide' } },
    });
  });

  it.each([
    ['box.out.chamber.width = 500 mm', 'path'],
    ['box.copy.tlt = 40 deg', 'unknown-name'],
    ['box.entry = 40 deg', 'unknown-name'],
    ['box.in = 40 deg', 'path'],
    ['box.panels.split = 1 m', 'fact-missing'],
    ['box.out.fan.low = 70 %', 'path'],
  ])('is told about `%s`', (change, id) => {
    expect(problemIds(text(change))).toEqual([id]);
  });
});
