import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, impact, noise, roomTone, site, slab, spec } from '../fixtures/spec-builder.js';

const id = 'structure-borne-low-sound';
const shaken = site({ sources: [noise('street'), impact('footsteps')] });

describe(id, () => {
  it('fires where low sound decides a missed room tone and something shakes the building', () => {
    const [finding] = findingsById(spec({ site: shaken, requirements: [roomTone(-70, 'FS')] }), id);
    expect(finding?.severity).toBe('information');
    expect(finding?.figures.strongestHz).toBeLessThanOrEqual(100);
    expect(finding?.message).toContain('footsteps');
  });

  it('is silent without anything that shakes the building, without a missed room tone, and where the middle decides', () => {
    const requirements = [roomTone(-70, 'FS')];
    expect(findingsById(spec({ requirements }), id)).toEqual([]);
    expect(findingsById(spec({ site: shaken, requirements: [roomTone(100, 'none')] }), id)).toEqual([]);
    const talkers = site({ sources: [noise('talkers', [10, 20, 40, 70, 80, 70, 60]), impact('footsteps')] });
    expect(findingsById(spec({ site: talkers, requirements }), id)).toEqual([]);
  });

  it('fires in an unrelated booth of one heavy leaf beside a workshop', () => {
    const workshop = site({ sources: [noise('saw', [85, 80, 70, 60, 50, 40, 30]), impact('press')] });
    const den = { ...booth(slab), name: 'den' };
    const found = findingsById(spec({ booths: [den], site: workshop, requirements: [roomTone(20, 'A')] }), id);
    expect(found[0]?.message).toMatch(/^den: .*press/);
  });
});
