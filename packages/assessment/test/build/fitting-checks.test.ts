import { describe, expect, it } from 'vitest';
import { buildResult } from '../../src/build/build-result.js';
import { createMemo } from '../../src/memo/memo.js';
import { specOf } from '../fixtures/from-text.js';

function built(items: string, extra = '') {
  const { booths, budget } = specOf(`
use catalog
assembly shell { softwood-plywood 12 mm }
booth b {
  inside 1 m x 1 m x 2 m
  walls shell
  roof shell
  floor shell
  vent intake on left { duct 125 mm; run 1.5 m; fan 10 L/s }
  vent exhaust on right { duct 100 mm; run 2 m }
  panels { width 600 mm }
}
budget { ${items} }
${extra}`);
  return buildResult(booths[0]!, undefined, undefined, budget, createMemo());
}

describe('items of the budget for seals and fittings', () => {
  it('are held against the metres of the seams', () => {
    const { shopping, sealing } = built('item gasket for compression-gasket 5 at 0.90 EUR');
    const metres = sealing.totals.find(({ kind }) => kind === 'compression gasket')?.metres as number;
    expect(metres).toBeGreaterThan(10);
    expect(shopping.checks).toMatchObject([
      { items: ['gasket'], material: 'compression-gasket', unit: 'm', bought: 5, verdict: 'too-few', atLeast: true },
    ]);
    expect(shopping.checks[0]?.needed).toBeCloseTo(metres, 9);
    expect(shopping.counted).toEqual([
      { currency: 'EUR', amount: expect.closeTo(metres * 0.9, 9), withReserve: expect.closeTo(metres * 0.9, 9) },
    ]);
  });

  it('tell ducts apart by their diameter, and count all of them without one', () => {
    const needed = (words: string) => built(`item hose for ${words} 1 at 6 EUR`).shopping.checks[0]?.needed;
    expect(needed('duct 125 mm')).toBe(1.5);
    expect(needed('duct 100 mm')).toBe(2);
    expect(needed('duct')).toBe(3.5);
  });

  it('count together where two are for the same', () => {
    const { checks } = built('item a for duct 1 at 6 EUR; item b for duct 3 at 6 EUR').shopping;
    expect(checks).toMatchObject([{ items: ['a', 'b'], bought: 4, needed: 3.5, verdict: 'enough' }]);
  });

  it('are told when no part uses them', () => {
    const { checks, leavesOut } = built('item g for grille 1 at 6 EUR; item glue 1 at 5 EUR').shopping;
    expect(checks).toMatchObject([{ items: ['g'], verdict: 'unused', needed: 0 }]);
    expect(leavesOut[0]).toMatch(/^1 item of the budget does not say what it is `for`/);
  });
});
