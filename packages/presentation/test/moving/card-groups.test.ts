import type { MovingCard, PanelWay } from '@boothwright/assessment';
import { describe, expect, test } from 'vitest';
import { cardGroups } from '../../src/moving/card-groups.js';
import { groupText } from '../../src/moving/group-text.js';
import { panelNumbers } from '../../src/moving/panel-numbers.js';

function way(changes: Partial<PanelWay> = {}): PanelWay {
  return {
    way: 'doorway',
    passes: 'goes',
    pose: 'upright',
    angleDeg: 0,
    diagonal: false,
    leftM: 0.0429,
    lengthM: 0.6,
    longestM: null,
    text: '',
    ...changes,
  };
}

function card(panel: number, changes: Partial<MovingCard> = {}): MovingCard {
  return {
    panel,
    name: `front ${panel}`,
    face: 'front',
    widthM: 0.6,
    heightM: 2.136,
    thicknessM: 0.095,
    massKg: 31,
    massKnown: true,
    people: 2,
    props: false,
    ways: [way()],
    raised: null,
    ...changes,
  };
}

describe('cardGroups(cards)', () => {
  test('draws panels together that are held the same way', () => {
    const odd = card(3, { ways: [way({ passes: 'does-not-go' })] });
    const roof = card(4, { face: 'roof', props: true });
    const groups = cardGroups([card(1), card(2, { widthM: 0.55 }), odd, roof]);
    expect(groups.map(({ cards }) => cards.map(({ panel }) => panel))).toEqual([[1, 2], [3], [4]]);
  });

  test('many groups are drawn together unless something goes only just or not at all', () => {
    const poses = ['upright', 'on-its-side', 'flat', 'tilted', 'leaning', 'leaning-on-its-side'] as const;
    const cards = [
      ...poses.map((pose, index) => card(index + 1, { ways: [way({ pose })] })),
      card(7, { ways: [way({ passes: 'tight', leftM: 0.01 })] }),
    ];
    expect(cardGroups(cards)).toHaveLength(2);
    expect(cardGroups(cards)[1]?.cards.map(({ panel }) => panel)).toEqual([7]);
  });
});

describe('groupText(group)', () => {
  const text = (...cards: MovingCard[]) => groupText(cardGroups(cards)[0]!);

  test('says number, size, mass, people and the way through, millimetres never rounded up', () => {
    expect(text(card(1), card(2), card(3, { widthM: 0.55, massKg: 28 }))).toBe(
      'panels 1–3 (walls): 550–600 × 2136 × 95 mm, 28–31 kg, two people; upright, 42 mm left at the doorway',
    );
  });

  test('one way of holding it for every place is said once, with the tightest place', () => {
    const ways = [way({ leftM: 0.3 }), way({ way: 'lift', leftM: 0.05 })];
    expect(text(card(1, { ways }))).toContain('upright everywhere, 50 mm left at the lift');
  });

  test('says the place that a panel does not go through', () => {
    const ways = [way(), way({ way: 'stair', passes: 'does-not-go', leftM: -0.1 })];
    expect(text(card(1, { ways }))).toContain('doorway upright, 42 mm left; NOT through the stair');
  });

  test('a roof takes props, a leaf is named, and a mass with a part missing is a lower bound', () => {
    expect(text(card(1, { face: 'roof', props: true }))).toContain('panel 1 (roof)');
    expect(text(card(1, { face: 'roof', props: true }))).toContain('two people and props');
    expect(groupText({ kind: 'leaf', cards: [{ ...card(1), panel: null, name: 'leaf of door entry' }] })).toMatch(
      /^leaf of door entry: /,
    );
    expect(text(card(1, { massKnown: false }))).toContain('more than 31 kg');
  });
});

test.each([
  [[3], 'panel 3'],
  [[9, 7, 1, 2, 3, 4], 'panels 1–4, 7, 9'],
  [[1, 2], 'panels 1, 2'],
])('panelNumbers(%j) draws runs of three together', (numbers, text) => {
  expect(panelNumbers(numbers)).toBe(text);
});
