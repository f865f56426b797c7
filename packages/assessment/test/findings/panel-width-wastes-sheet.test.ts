import { describe, expect, it } from 'vitest';
import { onlyBooth as boothOf, findingsById as findingsOf } from '../fixtures/assessed.js';
import { specOf } from '../fixtures/from-text.js';

const id = 'panel-width-wastes-sheet';

const findingsById = (source: string, name: string) => findingsOf(specOf(source), name);
const onlyBooth = (source: string) => boothOf(specOf(source));

/** Walls of one board 18 mm; the outside is inside + 36 mm. Invented. */
const box = (inside: string, width: number, { price = '24 EUR per sheet', more = '' } = {}) => `use catalog
material board { kind panel; density 600 kg/m3; modulus 3 GPa; sheet 1.22 m x 2.44 m; ${price === '' ? '' : `price ${price}`} }
assembly shell { board 18 mm }
booth box {
  inside ${inside}
  walls shell
  roof shell
  floor shell
  panels { width ${width} mm }
}
${more}
`;
/** Every wall is 1851 mm long, three panels of 617 mm; two of them and the saw want 1237 mm. */
const wasteful = '1.815 m x 1.851 m x 2.00 m';

describe(id, () => {
  it('names a width of which two come out of a sheet, and what that saves in sheets and money', () => {
    const [finding] = findingsById(box(wasteful, 620), id);
    const { betterWidthM, sheetsSaved } = finding!.figures;
    // (1220 + 3) / 2 - 3 = 608.5 mm at the most.
    expect(betterWidthM).toBeLessThanOrEqual(0.6085);
    const sheets = (width: number) =>
      onlyBooth(box(wasteful, width)).build.sheetLayouts.reduce((sum, layout) => sum + layout.sheets.length, 0);
    expect(sheets(620) - sheets(betterWidthM! * 1000)).toBe(sheetsSaved);
    expect(sheetsSaved).toBeGreaterThanOrEqual(2);
    expect(finding!.figures['saved EUR']).toBeCloseTo(24 * sheetsSaved!, 9);
    expect(finding!.message).toContain('would save');
  });

  it('says nothing of money where the board has no price', () => {
    const [finding] = findingsById(box(wasteful, 620, { price: '' }), id);
    expect(Object.keys(finding!.figures).some((key) => key.startsWith('saved '))).toBe(false);
    expect(finding!.explanation).toContain('not known');
  });

  it('is silent where two panels already come out of a sheet, and without panels', () => {
    // Walls of 1824 mm: three panels of 608 mm are just narrow enough.
    expect(findingsById(box('1.788 m x 1.824 m x 2.00 m', 620), id)).toEqual([]);
    expect(findingsById(box(wasteful, 620).replace(/ {2}panels.*\n/, ''), id)).toEqual([]);
  });

  it('fires for another booth: sheets of 1.20 m, two boards and a frame', () => {
    const text = `use catalog
material plaster { kind panel; density 700 kg/m3; modulus 2 GPa; sheet 1.20 m x 2.40 m; price 11 EUR per sheet }
material stick { kind lumber; density 480 kg/m3; stock 2.4 m; price 5 EUR per piece }
assembly wall { plaster 12.5 mm; plaster 12.5 mm; frame 45 mm x 70 mm every 600 mm of stick }
booth den {
  inside 1.71 m x 1.88 m x 1.90 m
  walls wall
  roof wall
  panels { width 640 mm }
}
`;
    const [finding] = findingsById(text, id);
    expect(finding!.figures.betterWidthM).toBeLessThanOrEqual(0.5985);
    expect(finding!.figures.sheetsSaved).toBeGreaterThanOrEqual(2);
    expect(finding!.figures['saved EUR']).toBeGreaterThan(0);
    // Sheets less the timber of more studs.
    const { sheetsSaved, moreLengths } = finding!.figures;
    expect(finding!.figures['saved EUR']).toBeCloseTo(11 * sheetsSaved! - 5 * moreLengths!, 9);
  });
});
