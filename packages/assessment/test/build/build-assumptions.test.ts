import { describe, expect, it } from 'vitest';
import { buildAssumptions } from '../../src/build/build-assumptions.js';
import { assembly, booth, budget, given, place, plywood, sheet, spec } from '../fixtures/spec-builder.js';

const panels = { range: place(), width: given(0.6), split: undefined, fastened: undefined, roof: undefined };
const names = (changes: Parameters<typeof spec>[0]) => buildAssumptions(spec(changes)).map(({ name }) => name);

describe('buildAssumptions(spec)', () => {
  it('assumes nothing without panels', () => {
    expect(names({})).toEqual([]);
  });

  it('names the sizes and the saw that stand in', () => {
    expect(names({ booths: [booth(undefined, { panels })] })).toEqual([
      'walls-meet',
      'sheet-size',
      'stock-length',
      'saw-kerf',
    ]);
  });

  it('stays silent about what the text gives', () => {
    const sold = { ...plywood, sheet: { width: given(1.25), height: given(2.5) } };
    const wall = assembly('wall', sheet(sold, 0.018));
    const face = { assembly: wall, range: place() };
    const faces = { front: face, back: face, left: face, right: face, roof: face, floor: undefined };
    expect(names({ booths: [booth(wall, { panels, faces, doors: [] })], budget: budget() })).toEqual(['walls-meet']);
  });
});
