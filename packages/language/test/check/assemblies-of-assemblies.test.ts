import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const shell = `use catalog
assembly shell {
  softwood-plywood 12 mm
  frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }
  gypsum-board 12.5 mm
}
`;
const layersOf = (text: string, name: string): readonly string[] =>
  checkText(text)
    .spec.assemblies.get(name)!
    .layers.map((layer) => (layer.kind === 'material' ? layer.material.name : layer.kind));

describe('an assembly in an assembly', () => {
  it('stands for all of its layers, at its place', () => {
    const text = `${shell}assembly quiet { limp-sheet 4.9 kg/m2; shell; air 20 mm; gypsum-board 12.5 mm }\n`;
    expect(checkText(text).problems).toEqual([]);
    expect(layersOf(text, 'quiet')).toEqual([
      'limp-sheet',
      'softwood-plywood',
      'frame',
      'gypsum-board',
      'air',
      'gypsum-board',
    ]);
  });

  it('may be declared further down and in another file', () => {
    const files = {
      'spec.booth': 'use catalog\nuse "./walls.booth"\nassembly quiet { shell; osb 9 mm }\n',
      'walls.booth': shell,
    };
    const { spec, problems } = checkText(files);
    expect(problems).toEqual([]);
    expect(spec.assemblies.get('quiet')!.layers).toHaveLength(4);
  });

  it('follows what a variant changes in it', () => {
    const text = `${shell}let gap = 20 mm\nassembly quiet { shell; air gap; osb 9 mm }\nvariant wide { gap = 60 mm }
variant bare { assembly shell { osb 18 mm } }\n`;
    const { spec, problems } = checkText(text);
    expect(problems).toEqual([]);
    const [wide, bare] = spec.variants.map((variant) => variant.spec.assemblies.get('quiet')!.layers);
    expect(wide![3]).toMatchObject({ kind: 'air', thickness: { value: 0.06 } });
    expect(bare).toHaveLength(3);
  });

  it('is a reference to the name', () => {
    const { symbols } = checkText(`${shell}assembly quiet { shell; osb 9 mm }\n`);
    expect(symbols.symbols.find(({ name }) => name === 'shell')?.references).toHaveLength(1);
  });

  it('has no amount of its own', () => {
    const result = checkText(`${shell}assembly quiet { shell 30 mm; osb 9 mm }\n`);
    expect(result.problems.map(({ id }) => id)).toEqual(['amount-of-assembly']);
    expect(underlined(result)).toBe('30 mm');
  });

  it('cannot be made of itself', () => {
    const result = checkText(
      'use catalog\nassembly a { osb 9 mm; b }\nassembly b { c }\nassembly c { a; air 9 mm; osb 9 mm }\n',
    );
    expect(result.problems.map(({ id, message }) => [id, message])).toEqual([
      ['assembly-cycle', '`a` is made of itself: a -> b -> c -> a'],
    ]);
  });

  it('ends in a message where it grows without measure', () => {
    const doubling = Array.from({ length: 12 }, (_, i) => `assembly w${i} { w${i + 1}; w${i + 1} }`).join('\n');
    expect(problemIds(`use catalog\n${doubling}\nassembly w12 { osb 9 mm }\n`)).toContain('too-many-layers');
    const deep = Array.from({ length: 40 }, (_, i) => `assembly d${i} { d${i + 1} }`).join('\n');
    expect(problemIds(`use catalog\n${deep}\nassembly d40 { osb 9 mm }\n`)).toContain('assemblies-too-deep');
  });

  it('does not make a lining', () => {
    const booth = `booth box { inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell; lining on left { shell } }\n`;
    expect(problemIds(`${shell}${booth}`)).toEqual(['wrong-sort-of-name']);
  });
});
