import type { BudgetItem, Material } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { buildResult } from '../../src/build/build-result.js';
import { createMemo } from '../../src/memo/memo.js';
import { assembly, booth, budget, given, gypsum, place, plywood, sheet, wool } from '../fixtures/spec-builder.js';

const board: Material = { ...plywood, sheet: { width: given(1.22), height: given(2.44) } };
const wall = assembly('wall', sheet(board, 0.012));
const on = (walls = wall) => ({ assembly: walls, range: place() });

/** One face of 1.2 m x 2 m in two panels, nothing else. */
const oneFace = booth(wall, {
  inside: { width: given(1.2), depth: given(1), height: given(2) },
  faces: { front: on(), back: undefined, left: undefined, right: undefined, roof: undefined, floor: undefined },
  panels: { range: place(), width: given(0.6), split: undefined, fastened: undefined, roof: undefined },
  doors: [],
  linings: [],
});

function item(name: string, quantity: number, amount: number, changes: Partial<BudgetItem> = {}): BudgetItem {
  return {
    name,
    nameRange: place(),
    range: place(),
    covers: { material: board, thickness: given(0.012) },
    quantity: given(quantity),
    price: given({ amount, currency: 'EUR', per: undefined }),
    ...changes,
  };
}

function shopping(items: readonly BudgetItem[], built = oneFace) {
  const list = { ...budget(), items };
  return buildResult(built, undefined, undefined, list, createMemo()).shopping;
}

describe('what to buy', () => {
  it('counts whole sheets from the layout', () => {
    // Two panels of 600 mm and a saw cut of 3 mm come out of 1220 mm.
    const { stock } = shopping([]);
    expect(stock).toHaveLength(1);
    expect(stock[0]).toMatchObject({ name: 'plywood 12 mm', unit: 'sheet', quantity: 1, atLeast: false });
    expect(stock[0]?.net).toBeCloseTo(2.4, 9);
    expect(stock[0]?.wasteShare).toBeCloseTo(1 - 2.4 / (1.22 * 2.44), 9);
  });

  it('says when the budget buys too few, enough, or too many', () => {
    const verdict = (quantity: number) => shopping([item('boards', quantity, 38)]).checks[0]?.verdict;
    expect(verdict(0)).toBe('too-few');
    expect(verdict(1)).toBe('enough');
    expect(verdict(2)).toBe('enough');
    expect(verdict(3)).toBe('too-many');
  });

  it('says when no part uses what an item is for', () => {
    const covers = { material: gypsum, thickness: given(0.0125) };
    expect(shopping([item('gypsum', 3, 11, { covers })]).checks[0]).toMatchObject({ verdict: 'unused', needed: 0 });
  });

  it('counts an item by the square metre against the area of whole sheets', () => {
    const price = given({ amount: 10, currency: 'EUR', per: 'm2' as const });
    const { checks, stock } = shopping([item('boards', 2.5, 0, { price })]);
    expect(checks[0]?.needed).toBeCloseTo(1.22 * 2.44, 9);
    expect(checks[0]?.verdict).toBe('too-few');
    expect(stock[0]?.cost?.amount).toBeCloseTo(10 * 1.22 * 2.44, 9);
  });

  it('puts the counted quantity in place of the typed one, and leaves other items as typed', () => {
    const others = item('alarms', 1, 135, { covers: undefined });
    const { typed, counted } = shopping([item('boards', 4, 38), others]);
    expect(typed[0]?.amount).toBe(4 * 38 + 135);
    expect(counted[0]?.amount).toBe(38 + 135);
    expect(counted[0]?.withReserve).toBeCloseTo(1.1 * (38 + 135), 9);
  });

  it('takes the price of the material where no item gives one', () => {
    const priced = { ...board, price: given({ amount: 40, currency: 'USD', per: 'sheet' as const }) };
    const walls = assembly('priced', sheet(priced, 0.012));
    const { stock, counted } = shopping([], { ...oneFace, faces: { ...oneFace.faces, front: on(walls) } });
    expect(stock[0]?.price).toMatchObject({ amount: 40, from: 'material' });
    expect(counted).toEqual([{ currency: 'USD', amount: 40, withReserve: 44 }]);
  });

  it('never adds two currencies and names what has no price', () => {
    const dollars = item('alarms', 1, 100, {
      covers: undefined,
      price: given({ amount: 100, currency: 'USD', per: undefined }),
    });
    const euros = item('lamp', 1, 20, { covers: undefined });
    const { typed, withoutPrice } = shopping([dollars, euros]);
    expect(typed.map(({ currency, amount }) => [currency, amount])).toEqual([
      ['EUR', 20],
      ['USD', 100],
    ]);
    expect(withoutPrice).toEqual(['plywood 12 mm']);
  });

  it('orders where the money goes and gives shares of its own currency', () => {
    const { groups } = shopping([item('a', 1, 30, { covers: undefined }), item('b', 1, 70, { covers: undefined })]);
    expect(groups.map(({ name, share }) => [name, share])).toEqual([
      ['b', 0.7],
      ['a', 0.3],
    ]);
  });

  it('gives soft goods by their area as a lower bound', () => {
    const soft = assembly('soft', sheet(wool, 0.05));
    const { stock } = shopping([], { ...oneFace, faces: { ...oneFace.faces, front: on(soft) } });
    expect(stock[0]).toMatchObject({ form: 'soft', unit: 'm2', atLeast: true, wasteShare: null });
    expect(stock[0]?.quantity).toBeCloseTo(2.4, 9);
  });

  it('reports a panel bigger than any sheet and lays out the rest', () => {
    const tall = { ...oneFace, inside: { ...oneFace.inside, height: given(2.6) } };
    const result = buildResult(tall, undefined, undefined, undefined, createMemo());
    expect(result.sheetLayouts[0]?.tooBig.map(({ owner }) => owner)).toEqual(['panel 1, front 1', 'panel 2, front 2']);
    expect(result.shopping.stock[0]?.atLeast).toBe(true);
  });

  it('assumes no size of sheet without panels: square metres only', () => {
    const uncut = {
      ...oneFace,
      panels: undefined,
      faces: { ...oneFace.faces, front: on(assembly('plain', sheet(plywood, 0.012))) },
    };
    expect(shopping([], uncut).stock[0]).toMatchObject({ unit: 'm2', atLeast: true });
  });
});
