import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, given, shell, site, slab, spec } from '../fixtures/spec-builder.js';

const id = 'taller-than-the-room';
const roomOf = (height: number) => site({ room: { width: given(3.6), depth: given(3.1), height: given(height) } });

describe(id, () => {
  it('names the missing millimetres: 2000 mm inside, 94.5 mm roof, 42 mm floor in 2.10 m', () => {
    const [finding] = findingsById(spec({ site: roomOf(2.1) }), id);
    expect(finding?.figures.missingM).toBeCloseTo(2 + 0.0945 + 0.042 - 2.1, 9);
    expect(finding?.message).toContain('37 mm are missing');
    expect(finding?.explanation).toContain('hands');
  });

  it('is silent where it just fits, and where the room is not known', () => {
    expect(findingsById(spec({ site: roomOf(2.1366) }), id)).toEqual([]);
    expect(findingsById(spec({ site: site({ room: undefined }) }), id)).toEqual([]);
  });

  it('fires on the stated outside height of an unrelated booth', () => {
    const outside = { width: given(1.4), depth: given(1.6), height: given(2.6) };
    const cellar = { ...booth(slab, { outside }), name: 'cellar' };
    expect(findingsById(spec({ booths: [cellar], site: roomOf(2.5) }), id)[0]?.message).toContain('100 mm are missing');
    expect(findingsById(spec({ booths: [booth(shell)], site: roomOf(2.5) }), id)).toEqual([]);
  });
});
