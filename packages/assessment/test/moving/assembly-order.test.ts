import { describe, expect, test } from 'vitest';
import { assemblyOrder, type WallsToPutUp } from '../../src/moving/assembly-order.js';
import type { Side } from '../../src/moving/place.js';

const all: readonly Side[] = ['front', 'back', 'left', 'right'];

function walls(changes: Partial<WallsToPutUp> = {}): WallsToPutUp {
  return {
    walls: all.map((side) => ({ side, columns: 3 })),
    reachable: new Set(all),
    free: new Map(),
    fastened: undefined,
    doors: new Set(['front']),
    ...changes,
  };
}

function orderOf(input: WallsToPutUp) {
  const found = assemblyOrder(input);
  if (!found.possible) throw new Error(found.blockedBy.join('; '));
  return found.order;
}

describe('assemblyOrder(walls)', () => {
  test('a booth free on all sides: the back first, the door wall last', () => {
    expect(orderOf(walls()).map(({ side }) => side)).toEqual(['back', 'left', 'right', 'front']);
  });

  test('each wall after the first meets one that stands', () => {
    const order = orderOf(walls({ doors: new Set(['left']) })).map(({ side }) => side);
    expect(order[3]).toBe('left');
    expect(new Set([order[0], order[1]])).not.toEqual(new Set(['front', 'back']));
  });

  test('in a corner the two walls out of reach come first, fastened from inside, across the floor', () => {
    const order = orderOf(
      walls({
        reachable: new Set(['front', 'right']),
        fastened: 'inside',
        free: new Map([
          ['back', 0.05],
          ['left', 0.05],
        ]),
      }),
    );
    expect(order.slice(0, 2).map(({ side }) => side)).toEqual(['back', 'left']);
    expect(order[0]).toMatchObject({ from: 'inside', brought: 'across the floor' });
    expect(order[3]?.side).toBe('front');
  });

  test('in a corner nothing can be fastened from outside on the two sides out of reach', () => {
    const found = assemblyOrder(
      walls({
        reachable: new Set(['front', 'right']),
        fastened: 'outside',
        free: new Map([
          ['back', 0.05],
          ['left', 0.05],
        ]),
      }),
    );
    expect(found.possible).toBe(false);
    if (found.possible) return;
    expect(found.blockedBy[0]).toContain('back (50 mm to the room)');
    expect(found.blockedBy[0]).toContain('left (50 mm to the room)');
  });

  test('a back wall of one panel out of reach is held by latches on its neighbours', () => {
    const order = orderOf(
      walls({
        walls: all.map((side) => ({ side, columns: side === 'back' ? 1 : 3 })),
        reachable: new Set(['front', 'left', 'right']),
        fastened: 'outside',
      }),
    );
    expect(order[0]).toMatchObject({ side: 'back', heldAtCorners: true });
  });

  test('who fastens the last wall from inside must be able to leave by the door', () => {
    const found = assemblyOrder(
      walls({ reachable: new Set(['right']), fastened: 'inside', free: new Map([['front', 0.05]]) }),
    );
    expect(found.possible).toBe(false);
    if (!found.possible) expect(found.blockedBy[0]).toContain('the door is on the front with 50 mm before it');
    // With the door on the right, the only side with room, it goes, and the right comes last.
    const order = orderOf(walls({ reachable: new Set(['right']), fastened: 'inside', doors: new Set(['right']) }));
    expect(order[3]?.side).toBe('right');
  });

  test('unsaid, the last wall is fastened from outside where the door is out of reach', () => {
    const order = orderOf(walls({ reachable: new Set(['right']), doors: new Set(['front']) }));
    expect(order[3]).toMatchObject({ side: 'right', from: 'outside' });
    expect(order.slice(0, 3).every(({ from }) => from === 'inside')).toBe(true);
  });

  test('an open face is a way in', () => {
    const order = orderOf(
      walls({
        walls: (['back', 'left', 'right'] as const).map((side) => ({ side, columns: 2 })),
        reachable: new Set(['front']),
        doors: new Set(),
        fastened: 'inside',
      }),
    );
    expect(order).toHaveLength(3);
  });

  test('no side to stand at, no booth', () => {
    const found = assemblyOrder(walls({ reachable: new Set() }));
    expect(found).toMatchObject({ possible: false });
  });
});
