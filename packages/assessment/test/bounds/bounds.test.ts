import { describe, expect, it } from 'vitest';
import { outOfBounds } from '../../src/bounds/bounds.js';
import { assess } from '../fixtures/assessed.js';
import { airGap, assembly, booth, byMass, given, requirement, shell, spec, vinyl } from '../fixtures/spec-builder.js';

describe('outOfBounds(what, value, bound)', () => {
  it('is silent within and says what was found and what is possible outside', () => {
    expect(outOfBounds('the air in wall', 2, 'layerThickness', 'm')).toBeNull();
    expect(outOfBounds('the air in wall', 3, 'layerThickness', 'm')).toBe(
      'the air in wall is 3 m, and only 0 to 2 m can be assessed',
    );
    expect(outOfBounds('the air in wall', Number.NaN, 'layerThickness', 'm')).toContain('no number');
  });
});

describe('assess(spec) of what cannot be assessed', () => {
  it('leaves out a build-up, says why, and judges the rest', () => {
    const absurd = assembly('absurd', byMass(vinyl, 5), airGap(1e6), byMass(vinyl, 5));
    const stc = requirement({ kind: 'rating', text: 'require stc', rating: 'stc', assembly: absurd, limit: given(30) });
    const result = assess(spec({ walls: [absurd, shell], booths: [], requirements: [stc] }));
    expect(Object.keys(result.assemblies)).toEqual(['shell']);
    expect(result.leavesOut[0]).toContain('absurd is not assessed');
    expect(result.requirements[0]).toMatchObject({ verdict: 'not-assessed', unit: 'STC' });
    expect(result.requirements[0]?.explanation).toContain('1000000 m');
  });

  it('leaves out a booth without an inside, and keeps its requirements open', () => {
    const flat = booth(shell, { inside: { width: given(0), depth: given(1), height: given(2) } });
    const mass = requirement({ kind: 'mass', text: 'require mass', limit: given(100) });
    const result = assess(spec({ booths: [flat], requirements: [mass] }));
    expect(result.booths).toEqual({});
    expect(result.requirements[0]).toMatchObject({ verdict: 'not-assessed', booth: 'alcove' });
    expect(result.requirements[0]?.explanation).toContain('inside width');
  });
});
