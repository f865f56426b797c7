import type { FrameLayer, MaterialLayer } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText, problemIds } from '../check-text.js';

const layersOf = (lines: string, more = ''): readonly unknown[] => {
  const { spec, problems } = checkText(`use catalog\n${more}\nassembly a {\n${lines}\n}\n`);
  expect(problems).toEqual([]);
  return spec.assemblies.get('a')!.layers;
};
const only = (line: string, more = ''): MaterialLayer => layersOf(line, more)[0] as MaterialLayer;

describe('a layer', () => {
  it('by thickness has the mass of density times thickness, with the backing of the density', () => {
    const { thickness, surfaceMass } = only('gypsum-board 12.5 mm');
    expect(thickness!.value).toBe(0.0125);
    expect(surfaceMass.value).toBeCloseTo(9.5, 12);
    expect(surfaceMass.origin).toMatchObject({ kind: 'catalogue', evidence: 'derived' });
  });

  it('by mass per area has the thickness of mass over density', () => {
    const { thickness, surfaceMass } = only('limp-sheet 4.9 kg/m2');
    expect(surfaceMass).toMatchObject({ value: 4.9, origin: { kind: 'given' } });
    expect(thickness!.value).toBeCloseTo(0.002, 12);
  });

  it('without an amount takes both from the material', () => {
    const { thickness, surfaceMass } = only('carpet-tile');
    expect([thickness!.value, surfaceMass.value]).toEqual([0.006, 4]);
  });

  it('of a cloth known by mass alone has no thickness', () => {
    expect(only('open-weave-cloth').thickness).toBeUndefined();
  });

  it('scales the own mass of a covering to another thickness', () => {
    expect(only('carpet-tile 3 mm').surfaceMass.value).toBeCloseTo(2, 12);
  });

  it('carries the tolerances of thickness and density together', () => {
    const layer = only('m 10 mm ± 3 %', 'material m { kind limp; density 1000 kg/m3 ± 4 % }');
    expect(layer.surfaceMass.tolerance).toBeCloseTo(10 * 0.05, 12);
  });

  it('of no thickness is absent, when it is air, porous, limp or a covering', () => {
    expect(layersOf('air 0 mm\nmineral-wool-40 0 mm\nlimp-sheet 0 kg/m2\nrubber-mat 0 mm\nosb 9 mm')).toHaveLength(1);
  });
});

describe('a frame', () => {
  it('of nominal lumber has its dressed size and the default lumber', () => {
    const [frame] = layersOf('frame 2x4 every 16 in { fill mineral-wool-40 70 mm }');
    expect(frame).toMatchObject({
      kind: 'frame',
      width: { value: 0.038 },
      depth: { value: 0.089 },
      spacing: { value: 0.4064 },
      lumber: { name: 'softwood' },
      fill: { thickness: { value: 0.07 } },
    });
  });

  it('says that its lumber is a default', () => {
    const { values } = checkText('use catalog\nassembly a { frame 45 mm x 70 mm every 600 mm; osb 9 mm }\n');
    expect(values.find(({ fact }) => fact === 'stud-lumber')?.value).toMatchObject({
      value: 'softwood',
      origin: { kind: 'default', name: 'stud-lumber' },
    });
  });

  it('has a density without the catalogue too', () => {
    const { spec } = checkText('assembly a { frame 45 mm x 70 mm every 600 mm }\n');
    expect(spec.assemblies.get('a')!.layers[0]).toMatchObject({
      lumber: { density: { value: 440, origin: { kind: 'default', name: 'stud-density' } } },
    });
  });
});

describe('a material', () => {
  it('covers its facts with its source, except those that have their own', () => {
    const { spec } = checkText(
      'material m { kind limp; density 2000 kg/m3 from measured "scale"; thickness 2 mm; source data-sheet "supplier" }',
    );
    const material = spec.materials.get('m')!;
    expect(material.density!.origin).toEqual({ kind: 'given', evidence: 'measured', source: 'scale' });
    expect(material.thickness!.origin).toEqual({ kind: 'given', evidence: 'data-sheet', source: 'supplier' });
    expect(material.source!.value).toBe('supplier');
  });

  it('of the user stands before one of the catalogue with the same name', () => {
    const { spec, problems } = checkText(
      'use catalog\nmaterial osb { kind panel; density 650 kg/m3; modulus 4 GPa }\nassembly a { osb 10 mm }\n',
    );
    expect(problems).toEqual([]);
    expect(spec.assemblies.get('a')!.layers[0]).toMatchObject({ surfaceMass: { value: 6.5 } });
    expect(spec.materials.get('osb')!.fromCatalogue).toBe(false);
  });

  it('that is a panel takes named defaults for what it does not say', () => {
    const { spec } = checkText('material m { kind panel; density 650 kg/m3; modulus 4 GPa }');
    expect(spec.materials.get('m')).toMatchObject({
      poisson: { value: 0.3, origin: { kind: 'default', name: 'poisson' } },
      lossFactor: { origin: { kind: 'default', name: 'loss-factor' } },
    });
  });
});

describe('a material with a grain', () => {
  it('has a modulus across it and a shear modulus, each with its backing', () => {
    const { spec, problems } = checkText(
      'material pine { kind panel; density 500 kg/m3; modulus 11 GPa; modulus-across 0.6 GPa ± 20 %; shear-modulus 700 MPa; source data-sheet "mill" }',
    );
    expect(problems).toEqual([]);
    expect(spec.materials.get('pine')).toMatchObject({
      modulusAcross: { value: 0.6e9, tolerance: 0.12e9, origin: { evidence: 'data-sheet' } },
      shearModulus: { value: 0.7e9 },
    });
  });

  it('that is stiffer across it has the two the wrong way round', () => {
    const text = 'material pine { kind panel; density 500 kg/m3; modulus 0.6 GPa; modulus-across 11 GPa }';
    expect(problemIds(text)).toEqual(['stiffer-across']);
  });

  it('is a panel: elsewhere the figure changes nothing, which is said', () => {
    const text = 'material wool { kind porous; density 40 kg/m3; resistivity 10 kPa.s/m2; modulus-across 1 GPa }';
    expect(problemIds(text)).toEqual(['figure-without-effect']);
  });
});

describe('a frame of light steel', () => {
  const frameOf = (line: string, more = ''): FrameLayer =>
    layersOf(`osb 9 mm\n${line}\nosb 9 mm`, more)[1] as FrameLayer;

  it('weighs what its sheet weighs: one web and two flanges', () => {
    const { lumber, width, depth, screws } = frameOf('frame 35 mm x 75 mm every 600 mm of steel-stud');
    // (75 + 2 x 35) mm of 0.5 mm steel.
    expect(lumber.density!.value * width.value * depth.value).toBeCloseTo(7850 * 0.145 * 0.0005, 9);
    expect(lumber).toMatchObject({ name: 'steel-stud', gauge: { value: 0.0005 } });
    expect(screws).toMatchObject({ value: 0.3, origin: { kind: 'default', name: 'screw-spacing' } });
  });

  it('takes its own gauge and the distance of its screws', () => {
    const { lumber, screws } = frameOf(
      'frame 50 mm x 100 mm every 400 mm of thick { screws 200 mm }',
      'material thick { kind lumber; density 7850 kg/m3; gauge 1 mm; price 3 EUR per m }',
    );
    expect([lumber.gauge!.value, lumber.price!.value.amount, screws!.value]).toEqual([0.001, 3, 0.2]);
  });

  it('says that screws change nothing in timber or in studs of a stated stiffness', () => {
    const frame = (of: string): string =>
      `use catalog\nmaterial soft { kind lumber; density 7850 kg/m3; gauge 0.6 mm; stud-stiffness 0.5 MPa }\nassembly a { osb 9 mm; frame 50 mm x 75 mm every 600 mm${of} { screws 300 mm }; osb 9 mm }\n`;
    expect(problemIds(frame(''))).toEqual(['screws-without-effect']);
    expect(problemIds(frame(' of soft'))).toEqual(['screws-without-effect']);
    expect(problemIds(frame(' of steel-stud'))).toEqual([]);
  });

  it('cannot be folded from sheet thicker than half of it', () => {
    const text =
      'use catalog\nmaterial solid { kind lumber; density 7850 kg/m3; gauge 20 mm }\nassembly a { osb 9 mm; frame 35 mm x 75 mm every 600 mm of solid; osb 9 mm }\n';
    expect(problemIds(text)).toEqual(['value-unusual', 'gauge-too-thick']);
  });

  it('is found under the name the trade has for it', () => {
    const { problems } = checkText(
      'use catalog\nassembly a { osb 9 mm; frame 35 mm x 75 mm every 600 mm of metal-stud; osb 9 mm }\n',
    );
    expect(problems.map(({ hint }) => hint)).toEqual(['did you mean `steel-stud`?']);
  });
});

describe('channels and clips', () => {
  it('are air as deep as they are, with springs across it, on either side of a frame', () => {
    const inner = layersOf(
      'osb 9 mm\nframe 2x4 every 600 mm\nclips 40 mm every 600 mm stiffness 80 N/mm\ngypsum-board 12.5 mm',
    );
    expect(inner[2]).toMatchObject({
      kind: 'air',
      thickness: { value: 0.04 },
      fixings: { kind: 'clips', spacing: { value: 0.6 }, stiffness: { value: 80_000 } },
    });
    const outer = layersOf(
      'osb 9 mm\nchannels 16 mm every 400 mm stiffness 150 N/mm\nframe 2x4 every 600 mm\ngypsum-board 12.5 mm',
    );
    expect(outer[1]).toMatchObject({ kind: 'air', fixings: { kind: 'channels' } });
  });

  it.each([
    ['osb 9 mm; channels 16 mm every 400 mm stiffness 150 N/mm; osb 9 mm', 'fixings-without-frame'],
    ['osb 9 mm; frame 2x4 every 600 mm; clips 16 mm every 400 mm stiffness 150 N/mm', 'fixings-without-board'],
    [
      'osb 9 mm; frame 2x4 every 600 mm; clips 16 mm every 400 mm stiffness 150 N/mm; air 10 mm; osb 9 mm',
      'fixings-without-board',
    ],
    [
      'osb 9 mm; frame 2x4 every 600 mm; clips 16 mm every 400 mm stiffness 150 N/mm; frame 2x4 every 600 mm; osb 9 mm',
      'fixings-without-board',
    ],
  ])('in %s give %s', (layers, id) => {
    expect(problemIds(`use catalog\nassembly a { ${layers} }\n`)).toEqual([id]);
  });
});
