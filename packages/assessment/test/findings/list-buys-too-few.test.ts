import { describe, expect, it } from 'vitest';
import { findingsById, onlyBooth } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'list-buys-too-few';
const panels = 'panels { width 600 mm; fastened inside }';
const list = (sheets: number) => `item boards for softwood-plywood 12 mm ${sheets} at 38 EUR`;

function needed(): number {
  const checks = onlyBooth(smallBooth({ booth: panels, budget: list(1) })).build.shopping.checks;
  return checks[0]!.needed;
}

describe(id, () => {
  it('fires one sheet short, and is silent with just enough', () => {
    const enough = needed();
    expect(enough).toBeGreaterThan(3);
    const [finding] = findingsById(smallBooth({ booth: panels, budget: list(enough - 1) }), id);
    expect(finding?.message).toContain(`${enough - 1} of ${enough} sheets`);
    expect(findingsById(smallBooth({ booth: panels, budget: list(enough) }), id)).toEqual([]);
  });

  it('is silent about items that do not say what they are for, and without a budget', () => {
    expect(findingsById(smallBooth({ booth: panels, budget: 'item boards 1 at 38 EUR' }), id)).toEqual([]);
    expect(findingsById(smallBooth({ booth: panels }), id)).toEqual([]);
  });

  it('fires in an unrelated box', () => {
    const text = bigBox({ booth: 'panels { width 1.1 m }', budget: 'item slabs for osb 25 mm 2 at 30 USD' });
    expect(findingsById(text, id)[0]?.message).toMatch(/^box:.*slabs 2 of/);
  });
});
