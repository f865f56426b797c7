import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, given, lining, sheet, shell, slab, spec, wool } from '../fixtures/spec-builder.js';

const id = 'too-narrow-to-stand';
const inside = { width: given(1.2), depth: given(1.4), height: given(2) };
const lined = (depth: number) => booth(shell, { inside, linings: [lining(['left', 'right'], 1, sheet(wool, depth))] });

describe(id, () => {
  // 1.20 m less two linings of 0.35 m leave 0.50 m.
  it('gives the free width and the missing millimetres', () => {
    const [finding] = findingsById(spec({ booths: [lined(0.35)] }), id);
    expect(finding?.message).toContain('500 mm of width');
    expect(finding?.figures.missingM).toBeCloseTo(0.1, 9);
    expect(finding?.fix).toContain('100 mm');
  });

  it('is silent where 0.6 m stay free', () => {
    expect(findingsById(spec({ booths: [lined(0.3)] }), id)).toEqual([]);
    expect(findingsById(spec(), id)).toEqual([]);
  });

  it('tells both sides of a cupboard', () => {
    const small = { width: given(0.5), depth: given(0.4), height: given(2) };
    const [finding] = findingsById(spec({ booths: [booth(slab, { inside: small, linings: [] })] }), id);
    expect(finding?.message).toContain('500 mm of width and 400 mm of depth');
    expect(finding?.figures.freeM).toBeCloseTo(0.4, 9);
  });
});
