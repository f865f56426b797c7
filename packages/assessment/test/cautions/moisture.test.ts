import { describe, expect, it } from 'vitest';
import { cautionsById } from '../fixtures/assessed.js';
import { given, site, spec } from '../fixtures/spec-builder.js';

// Air of 20 degC and 50 % has its dew point at 9.3 degC (psychrometric tables, common knowledge).
describe('moisture', () => {
  const of = (changes: Parameters<typeof site>[0]) => cautionsById(spec({ site: site(changes) }), 'moisture');

  it('says that water condenses on a surface below the dew point of the room, with both figures', () => {
    const found = of({ coldSurface: given(6) });
    expect(found).toHaveLength(1);
    expect(found[0]?.hazard).toContain('condenses');
    expect(found[0]?.number).toContain('dew point 9.3 degC');
    expect(found[0]?.number).toContain('surface 6.0 degC');
  });

  it('speaks of a surface just above the dew point, and not of a warm one', () => {
    expect(of({ coldSurface: given(11) })[0]?.hazard).toContain('near');
    expect(of({ coldSurface: given(16) })).toEqual([]);
  });

  it('asks for the surface of a cold room, and leaves a heated one alone', () => {
    expect(of({ temperature: given(9) })[0]?.number).toContain('cold-surface');
    expect(of({ temperature: given(20) })).toEqual([]);
  });
});
