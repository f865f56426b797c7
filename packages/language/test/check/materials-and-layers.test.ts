import type { MaterialLayer } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

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
