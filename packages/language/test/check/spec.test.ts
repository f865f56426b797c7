import { describe, expect, it } from 'vitest';
import { checkText, problemIds } from '../check-text.js';

const shell = 'use catalog\nassembly shell { osb 50 mm }\nassembly thin { osb 20 mm }\n';
const booth = (lines: string): string => `${shell}booth box "the box" {\n  ${lines}\n}\n`;

describe('a booth', () => {
  it('has the assembly of each face, a single face before `walls`', () => {
    const { spec } = checkText(booth('inside 1 m x 1 m x 2 m; walls shell; roof shell; floor thin; front thin'));
    const { faces } = spec.booths[0]!;
    expect(Object.fromEntries(Object.entries(faces).map(([face, made]) => [face, made?.assembly.name]))).toEqual({
      front: 'thin',
      back: 'shell',
      left: 'shell',
      right: 'shell',
      roof: 'shell',
      floor: 'thin',
    });
  });

  it('without an inside has the outside less the layers of both faces', () => {
    const { spec, problems } = checkText(
      booth('outside 1.2 m x 1.3 m x 2.2 m; walls shell; roof shell; floor thin; front thin'),
    );
    expect(problems).toEqual([]);
    const { inside } = spec.booths[0]!;
    expect([inside.width.value, inside.depth.value, inside.height.value].map((v) => Math.round(v * 1e6) / 1e6)).toEqual(
      [1.1, 1.23, 2.13],
    );
    expect(inside.width.origin).toMatchObject({ evidence: 'derived' });
  });

  it('accepts what differs by a joiner’s two millimetres', () => {
    expect(
      problemIds(
        booth('outside 1.102 m x 1.1 m x 2.1 m; inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell'),
      ),
    ).toEqual([]);
    expect(
      problemIds(
        booth('outside 1.1025 m x 1.1 m x 2.1 m; inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell'),
      ),
    ).toEqual(['dimensions-disagree']);
  });

  it('does not compare sizes with an assembly that could not be read', () => {
    const text = booth(
      'outside 1.1 m x 1.1 m x 2.1 m; inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell',
    ).replace('osb 50 mm', 'osb 50 mm; air');
    expect(problemIds(text)).toEqual(['value-missing']);
  });

  it('compares openings by their places, and by their widths where places are open', () => {
    const doors = (a: string, b: string): string =>
      booth(
        `inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell\n  window a on left { size 500 mm x 500 mm; pane glass 4 mm; ${a} }\n  door b on left { size 600 mm x 1900 mm; leaf osb 18 mm; ${b} }`,
      );
    // 0.5 m and 0.6 m are wider than the 1 m of the wall, wherever they stand.
    expect(problemIds(doors('', 'offset 0 mm'))).toEqual(['openings-too-wide']);
    expect(problemIds(doors('offset 100 mm', 'offset 0 mm'))).toEqual(['openings-overlap']);
    expect(
      problemIds(doors('offset 500 mm', 'offset 0 mm').replace('size 600 mm x 1900 mm', 'size 600 mm x 1400 mm')),
    ).toEqual([]);
  });

  it('takes a leaf of one material as an assembly of one layer', () => {
    const { spec } = checkText(
      booth(
        'inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell; door d on front { size 700 mm x 1900 mm; leaf solid-core 44 mm }',
      ),
    );
    expect(spec.booths[0]!.doors[0]).toMatchObject({
      face: 'front',
      leaf: { name: 'solid-core', layers: [{ thickness: { value: 0.044 } }] },
      perimeterGap: { origin: { kind: 'default', name: 'door-perimeter-gap' } },
      thresholdGap: { origin: { kind: 'default', name: 'door-threshold-gap' } },
    });
  });

  it('spreads a lining over the faces it names, `walls` for all four', () => {
    const { spec } = checkText(
      booth(
        'inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell; lining on walls, roof cover 80 % { mineral-wool-60 50 mm }',
      ),
    );
    expect(spec.booths[0]!.linings).toMatchObject([
      { faces: ['front', 'back', 'left', 'right', 'roof'], cover: { value: 0.8 } },
    ]);
  });

  it('keeps what can be read of a booth with broken lines', () => {
    const { spec, problems } = checkText(
      booth(
        'inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell\n  door d on frnt { size 700 mm x 1900 mm; leaf osb 18 mm }\n  hole h on back { diameter 20 mm; depth 50 mm }\n  contents',
      ),
    );
    expect(problems.map((problem) => problem.id)).toEqual(['unknown-word', 'value-missing']);
    expect(spec.booths[0]).toMatchObject({ doors: [], holes: [{ name: 'h' }], contents: { value: 0 } });
  });
});

describe('requirements', () => {
  const read = (line: string): unknown => {
    const { spec, problems } = checkText(
      `${shell}site { noise tram 64 dBA like road-traffic; impact feet }\n${line}\n`,
    );
    expect(problems).toEqual([]);
    return spec.requirements[0];
  };
  it.each([
    ['require room-tone <= NC 15', { kind: 'room-tone', limit: { value: { decibels: 15, weighting: 'NC' } } }],
    ['require room-tone <= -60 dBFS', { kind: 'room-tone', limit: { value: { decibels: -60, weighting: 'FS' } } }],
    [
      'require reverberation <= 0.30 s at 125 Hz',
      { kind: 'reverberation', min: undefined, max: { value: 0.3 }, fromHz: { value: 125 }, toHz: { value: 125 } },
    ],
    [
      'require reverberation within 0.08 s .. 0.20 s from 160 Hz',
      { min: { value: 0.08 }, max: { value: 0.2 }, fromHz: { value: 160 }, toHz: undefined },
    ],
    ['require reverberation within 0.08 s .. 0.20 s from 160 Hz to 4 kHz', { toHz: { value: 4000 } }],
    [
      'require isolation >= 32 dB against tram',
      { kind: 'isolation', against: 'tram', limit: { value: { decibels: 32 } } },
    ],
    [
      'require stc of shell >= 40',
      { kind: 'rating', rating: 'stc', assembly: { name: 'shell' }, limit: { value: 40 } },
    ],
    ['require co2 <= 1000 ppm', { kind: 'co2', limit: { value: 1000 } }],
    ['require floor-load <= 1.5 kPa', { kind: 'floor-load', limit: { value: 1500 } }],
    ['require cost <= 1900 EUR', { kind: 'cost', currency: 'EUR', limit: { value: 1900 } }],
    ['require   height   <=   2.25 m   # to the joists', { kind: 'height', text: 'require height <= 2.25 m' }],
  ])('%s', (line, expected) => {
    expect(read(line)).toMatchObject(expected);
  });
});

describe('checkSpec(entry, host)', () => {
  it('always returns a spec', () => {
    expect(checkText('').spec).toMatchObject({ booths: [], requirements: [], variants: [], site: undefined });
    expect(
      checkText({ 'a.booth': { kind: 'unreadable', reason: 'no permission' } }).problems.map((p) => p.message),
    ).toEqual(['`a.booth` cannot be read: no permission']);
  });

  it('reads each used file once and lists the entry first', () => {
    const { files, problems, spec } = checkText({
      'specs/a.booth': 'use "./b.booth"\nuse "../shared/c.booth"\nassembly a { mine 3 mm }\n',
      'specs/b.booth': 'use "../shared/c.booth"\n',
      'shared/c.booth': 'material mine { kind limp; density 2000 kg/m3 }\n',
    });
    expect(problems).toEqual([]);
    expect(files.map((file) => file.file)).toEqual(['specs/a.booth', 'specs/b.booth', 'shared/c.booth']);
    expect(spec.assemblies.get('a')!.layers).toHaveLength(1);
  });

  it('reports what is wrong in a used file in that file', () => {
    const { problems } = checkText({ 'a.booth': 'use "b.booth"\n', 'b.booth': 'let x = 3 furlongs\n' });
    expect(problems.map(({ range }) => range.file)).toEqual(['b.booth']);
  });

  it('does not complain about names that a missing file may declare', () => {
    expect(problemIds('use "nope.booth"\nassembly a { mine 3 mm; other gap }\n')).toEqual(['file-missing']);
  });
});
