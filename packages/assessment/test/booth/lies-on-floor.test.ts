import { describe, expect, it } from 'vitest';
import { liesOnFloor } from '../../src/booth/lies-on-floor.js';
import { assess, onlyBooth } from '../fixtures/assessed.js';
import {
  airGap,
  assembly,
  booth,
  carpet,
  deck,
  given,
  place,
  plywood,
  sheet,
  shell,
  spec,
} from '../fixtures/spec-builder.js';

const flat = assembly('flat', sheet(carpet, 0.006), sheet(plywood, 0.018));
const hollow = assembly('hollow', airGap(0), sheet(plywood, 0.018));

function on(floor: typeof deck, changes: Parameters<typeof booth>[1] = {}) {
  const plain = booth(shell, changes);
  return { ...plain, faces: { ...plain.faces, floor: { assembly: floor, range: place() } } };
}

describe('liesOnFloor(booth)', () => {
  it('holds for layers without air beneath, and for air that is switched off', () => {
    expect(liesOnFloor(on(flat))).toBe(true);
    expect(liesOnFloor(on(hollow))).toBe(true);
  });

  it('does not hold for a deck with air beneath, on mounts, or without a described floor', () => {
    expect(liesOnFloor(on(deck))).toBe(false);
    expect(liesOnFloor(on(flat, { mounts: { range: place(), count: given(8), stiffness: given(2e5) } }))).toBe(false);
    const plain = booth();
    expect(liesOnFloor({ ...plain, faces: { ...plain.faces, floor: undefined } })).toBe(false);
  });

  it('takes the floor out of the paths, and says so', () => {
    const raised = spec({ booths: [on(deck)] });
    const lying = spec({ booths: [on(flat)] });
    const ids = (text: typeof raised) => onlyBooth(text).paths.map((path) => path.id);
    expect(ids(raised).filter((id) => !ids(lying).includes(id))).toHaveLength(1);
    expect(assess(lying).leavesOut.join(' ')).toContain('lies on the floor of the building');
    expect(assess(raised).leavesOut.join(' ')).not.toContain('lies on the floor of the building');
  });
});
