import { describe, expect, it } from 'vitest';
import { bestDeeperLining, deeperLinings } from '../../src/room-sound/deeper-linings.js';
import { booth, given, lining, sheet, slab, wool } from '../fixtures/spec-builder.js';

const one = booth(slab, { linings: [lining(['left', 'right'], 1, sheet(wool, 0.05))] });
const thickness = (layers: readonly { readonly thickness?: { readonly value: number } | undefined }[] | undefined) =>
  layers?.at(-1)?.thickness?.value;

describe('deeperLinings(booth)', () => {
  const all = deeperLinings(one);
  const named = (words: string) => all.find((each) => each.words.includes(words));

  it('offers every face but the floor and every door, each alone', () => {
    expect(all.map(({ words }) => words)).toEqual([
      '100 mm instead of 50 mm of fibre on the left wall',
      '100 mm instead of 50 mm of fibre on the right wall',
      '100 mm of fibre on the front wall',
      '100 mm of fibre on the back wall',
      '100 mm of fibre under the roof',
      '100 mm of fibre on the door entry',
    ]);
  });

  it('leaves the other faces of the same lining as they are', () => {
    const { linings } = named('left wall')!.booth;
    const on = (face: 'left' | 'right') => linings.find(({ faces }) => faces.includes(face));
    expect(thickness(on('left')?.layers as never)).toBeCloseTo(0.1, 12);
    expect(thickness(on('right')?.layers as never)).toBeCloseTo(0.05, 12);
  });

  it('hangs fibre on the inside of a door leaf', () => {
    const { layers } = named('door')!.booth.doors[0]!.leaf;
    expect(layers).toHaveLength(slab.layers.length + 1);
    expect(thickness(layers as never)).toBeCloseTo(0.1, 12);
  });

  it('offers nothing that would leave less than 0.6 m between linings', () => {
    const narrow = { ...one, inside: { ...one.inside, width: given(0.72) } };
    expect(deeperLinings(narrow).some(({ words }) => /left|right/.test(words))).toBe(false);
  });
});

describe('bestDeeperLining(booth, measure)', () => {
  it('takes the smallest measure, and none where nothing can be measured', () => {
    const best = bestDeeperLining(one, ({ doors }) => (doors[0]!.leaf.layers.length > 1 ? 1 : 2));
    expect(best?.words).toContain('door');
    expect(best?.value).toBe(1);
    expect(bestDeeperLining(one, () => null)).toBeNull();
  });
});
