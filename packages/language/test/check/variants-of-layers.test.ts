import { describe, expect, it } from 'vitest';
import { checkText, underlined } from '../check-text.js';

const base = (lining = 'lining on left, right { mineral-wool-60 50 mm; open-weave-cloth }'): string => `use catalog
assembly shell {
  softwood-plywood 12 mm
  frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }
  gypsum-board 12.5 mm
}
assembly outer { limp-sheet 4.9 kg/m2; air 20 mm; shell; air 10 mm; osb 9 mm }
booth box { inside 1.2 m x 1.2 m x 2 m; walls shell; roof shell; floor shell; ${lining} }
`;
const variant = (change: string, lining?: string) => checkText(`${base(lining)}variant v { ${change} }\n`);
const layersOf = (change: string, name = 'shell') => {
  const { spec, problems } = variant(change);
  expect(problems).toEqual([]);
  return spec.variants[0]!.spec.assemblies.get(name)!.layers;
};

describe('a variant that changes a layer', () => {
  it('names it by its material', () => {
    expect(layersOf('shell.gypsum-board = 15 mm')[2]).toMatchObject({ thickness: { value: 0.015 } });
    expect(layersOf('outer.limp-sheet = 9.8 kg/m2', 'outer')[0]).toMatchObject({ surfaceMass: { value: 9.8 } });
  });

  it('reaches frames and what is in them', () => {
    expect(layersOf('shell.frame.spacing = 400 mm')[1]).toMatchObject({ spacing: { value: 0.4 } });
    expect(layersOf('shell.frame.fill = mineral-wool-60 50 mm')[1]).toMatchObject({
      fill: { material: { name: 'mineral-wool-60' }, thickness: { value: 0.05 } },
    });
  });

  it('changes every assembly that is made of it', () => {
    expect(layersOf('shell.gypsum-board = 15 mm', 'outer')[4]).toMatchObject({ thickness: { value: 0.015 } });
  });

  it('reaches a lining', () => {
    const { spec, problems } = variant('box.lining.mineral-wool-60 = 100 mm; box.lining.cover = 80 %');
    expect(problems).toEqual([]);
    const [lining] = spec.variants[0]!.spec.booths[0]!.linings;
    expect(lining).toMatchObject({ cover: { value: 0.8 }, layers: [{ thickness: { value: 0.1 } }, {}] });
  });

  it.each([
    ['shell = 15 mm', 'path', 'shell'],
    ['shell.gypsum-bord = 15 mm', 'unknown-name', 'gypsum-bord'],
    ['outer.air = 30 mm', 'path', 'air'],
    ['shell.gypsum-board.colour = 3 mm', 'unknown-name', 'colour'],
    ['shell.gypsum-board = 15 kg', 'unit-of-wrong-dimension', '15 kg'],
  ])('is told what is wrong in `%s`', (change, id, place) => {
    const result = variant(change);
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
  });

  it('cannot tell two linings apart', () => {
    const two = 'lining on left { felt 10 mm }; lining on right { felt 20 mm }';
    expect(variant('box.lining.felt = 30 mm', two).problems.map(({ id }) => id)).toEqual(['path']);
  });
});
