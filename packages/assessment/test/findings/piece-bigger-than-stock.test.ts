import { describe, expect, it } from 'vitest';
import { findingsById as findingsOf, onlyBooth } from '../fixtures/assessed.js';
import { specOf } from '../fixtures/from-text.js';

const id = 'piece-bigger-than-stock';
const findingsById = (source: string) => findingsOf(specOf(source), id);

const text = (sheet: string, panels = 'panels { width 600 mm }', layers = 'board 18 mm') => `use catalog
material board { kind panel; density 600 kg/m3; modulus 3 GPa; sheet ${sheet} }
material stick { kind lumber; density 480 kg/m3; stock 1.8 m; price 4 EUR per piece }
assembly shell { ${layers} }
booth box {
  inside 1.164 m x 1.164 m x 2.00 m
  walls shell
  roof shell
  floor shell
  ${panels}
}
budget { item boards for board 18 mm 9 at 30 EUR }
`;

describe(id, () => {
  it('names the pieces that no sheet yields, at the panels, and keeps their material out of every sum', () => {
    const source = text('1.00 m x 2.00 m');
    const [finding] = findingsById(source);
    // Eight wall panels of 2018 mm; the roof of 1200 mm in two halves and the floor fit.
    expect(finding!.figures.pieces).toBe(8);
    expect(source.slice(finding!.range.from, finding!.range.to)).toContain('panels');
    const { shopping } = onlyBooth(specOf(source)).build;
    expect(shopping.stock[0]!.cost).toBeNull();
    // The item stays as typed and is not called enough.
    expect(shopping.counted).toEqual([{ currency: 'EUR', amount: 270, withReserve: 270 }]);
    expect(shopping.checks).toEqual([]);
    expect(shopping.leavesOut.join(' ')).toContain('board 18 mm is in no sum');
  });

  it('is silent where every piece just fits, and after a split', () => {
    expect(findingsById(text('1.00 m x 2.018 m'))).toEqual([]);
    expect(findingsById(text('1.00 m x 2.00 m', 'panels { width 600 mm; split 1.20 m }'))).toEqual([]);
  });

  it('names sticks longer than their lengths in another booth', () => {
    const source = text('1.22 m x 2.44 m', undefined, 'board 18 mm; frame 45 mm x 45 mm every 600 mm of stick');
    const [finding] = findingsById(source);
    expect(finding!.explanation).toContain('off lengths of 1800 mm');
    const row = onlyBooth(specOf(source)).build.shopping.stock.find(({ material }) => material === 'stick');
    expect(row!.cost).toBeNull();
  });
});
