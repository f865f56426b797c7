import type { Unread } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { assess } from '../fixtures/assessed.js';
import { budget, deck, given, place, requirement, shell, slab, spec } from '../fixtures/spec-builder.js';

const mass = requirement({ kind: 'mass', text: 'require mass', limit: given(1000) });
const cost = requirement({ kind: 'cost', text: 'require cost', limit: given(1000), currency: 'EUR' });
const stc = requirement({ kind: 'rating', text: 'require stc', rating: 'stc', assembly: slab, limit: given(20) });

function verdicts(part: Unread['part'], name?: string) {
  const unread = [{ part, name, message: 'a layer could not be read', range: place() }];
  const walls = [shell, deck, slab];
  const { requirements, leavesOut } = assess(
    spec({ walls, requirements: [mass, cost, stc], budget: budget([1, 100]), unread }),
  );
  expect(leavesOut[0]).toContain('errors');
  return requirements.map(({ verdict }) => verdict);
}

describe('a verdict beside an error in the text', () => {
  it('is withdrawn where a build-up that it uses could not be read', () => {
    expect(verdicts('assembly', 'shell')).toEqual(['not-assessed', 'met', 'met']);
    expect(verdicts('assembly', 'slab')).toEqual(['met', 'met', 'not-assessed']);
  });

  it('is withdrawn where a material that it uses could not be read', () => {
    expect(verdicts('material', 'plywood')).toEqual(['not-assessed', 'met', 'met']);
    expect(verdicts('material', 'gypsum')).toEqual(['not-assessed', 'met', 'not-assessed']);
    expect(verdicts('material', 'of-nobody')).toEqual(['met', 'met', 'met']);
  });

  it('is withdrawn for the booth and for the list alone', () => {
    expect(verdicts('booth', 'alcove')).toEqual(['not-assessed', 'met', 'met']);
    expect(verdicts('booth', 'another')).toEqual(['met', 'met', 'met']);
    expect(verdicts('budget')).toEqual(['met', 'not-assessed', 'met']);
  });

  it('is withdrawn everywhere for an error that can reach anything', () => {
    expect(verdicts('let', 'gap')).toEqual(['not-assessed', 'not-assessed', 'not-assessed']);
    expect(verdicts('outside')).toEqual(['not-assessed', 'not-assessed', 'not-assessed']);
  });

  it('stands beside another requirement that could not be read', () => {
    expect(verdicts('require')).toEqual(['met', 'met', 'met']);
  });

  it('names the error', () => {
    const unread = [{ part: 'let' as const, name: 'gap', message: 'a thickness is a length', range: place() }];
    const { requirements } = assess(spec({ requirements: [mass], unread }));
    expect(requirements[0]?.explanation).toContain('a thickness is a length');
    expect(requirements[0]?.value).not.toBeNull();
  });
});
