import { CATALOGUE_FILE, symbolAt } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';
import { cursor } from './cursor.js';

function at(
  marked: string,
): { name: string; kind: string; role: string; places: string[]; catalogue: boolean } | undefined {
  const { text, offset } = cursor(marked);
  const result = checkText(text);
  const hit = symbolAt(result.symbols, 'spec.booth', offset);
  if (!hit) return undefined;
  const { symbol } = hit;
  const line = (from: number): number => text.slice(0, from).split('\n').length;
  return {
    name: symbol.name,
    kind: symbol.kind,
    role: hit.role,
    places: symbol.references.map((range) => `${line(range.from)} ${text.slice(range.from, range.to)}`),
    catalogue: symbol.nameRange.file === CATALOGUE_FILE,
  };
}

const text = `use catalog
let gap = 6 mm
assembly shell { osb 9 mm; air gap; osb gap * 2 }
site { noise tram 60 dBA like pink }
booth box { inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell
  door entry on front { size 500 mm x 1900 mm; leaf shell }
}
require stc of shell >= 30
require isolation >= 20 dB against tram
variant v { gap = 7 mm; box.entry.leaf = osb 20 mm; site.tram = 50 dBA like pink
  assembly shell { osb 12 mm }
}
`;
const mark = (part: string, nth = 0): string => {
  let from = -1;
  for (let i = 0; i <= nth; i++) from = text.indexOf(part, from + 1);
  return `${text.slice(0, from + 1)}<|>${text.slice(from + 1)}`;
};

describe('symbolAt(symbols, file, offset)', () => {
  it('finds a value with its references, in variants too', () => {
    expect(at(mark('gap', 0))).toMatchObject({
      name: 'gap',
      kind: 'let',
      role: 'declaration',
      places: ['3 gap', '3 gap', '10 gap'],
    });
    expect(at(mark('gap', 1))).toMatchObject({ name: 'gap', role: 'reference' });
  });

  it('finds an assembly where it is declared, used and declared anew by a variant', () => {
    expect(at(mark('shell', 0))?.places).toEqual(['5 shell', '5 shell', '5 shell', '6 shell', '8 shell', '11 shell']);
    expect(at(mark('shell', 6))).toMatchObject({ role: 'reference', kind: 'assembly' });
  });

  it('finds an opening within its booth, and a noise of the site', () => {
    expect(at(mark('entry', 1))).toMatchObject({ kind: 'door', role: 'reference' });
    expect(at(mark('tram', 0))?.places).toEqual(['9 tram', '10 tram']);
    expect(at(mark('box', 1))).toMatchObject({ kind: 'booth', role: 'reference' });
  });

  it('finds a material of the catalogue in the catalogue', () => {
    expect(at(mark('osb', 0))).toMatchObject({ kind: 'material', role: 'reference', catalogue: true });
  });

  it('finds nothing on a keyword', () => {
    expect(at(mark('inside'))).toBeUndefined();
  });
});
