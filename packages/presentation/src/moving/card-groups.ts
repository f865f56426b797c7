import type { MovingCard } from '@boothwright/assessment';

/** Cards that read the same for those who carry. */
export interface CardGroup {
  readonly kind: 'wall' | 'roof' | 'floor' | 'leaf';
  readonly cards: readonly MovingCard[];
}

/**
 * Panels of walls, roof or floor that the same number of people hold the same way through every place. More than
 * `most` such groups are drawn together by people alone, but for panels that go only just or not at all.
 */
export function cardGroups(cards: readonly MovingCard[], most = 6): CardGroup[] {
  const fine = groupedBy(cards, (card) => [kindOf(card), card.people, ...card.ways.map(wayKey)].join(' '));
  if (fine.length <= most) return fine;
  return groupedBy(cards, (card) =>
    [
      kindOf(card),
      card.people,
      ...card.ways.flatMap((way) => (way.passes === 'goes' ? [] : [`${way.way} ${wayKey(way)}`])),
    ].join(' '),
  );
}

function groupedBy(cards: readonly MovingCard[], keyOf: (card: MovingCard) => string): CardGroup[] {
  const groups = new Map<string, MovingCard[]>();
  for (const card of cards) {
    const key = keyOf(card);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [card]);
    else group.push(card);
  }
  return [...groups.values()].map((group) => ({ kind: kindOf(group[0] as MovingCard), cards: group }));
}

/** Angles that differ by a degree are held the same way. */
function wayKey({ passes, pose, diagonal }: MovingCard['ways'][number]): string {
  return `${passes} ${pose} ${diagonal}`;
}

function kindOf({ face, panel }: MovingCard): CardGroup['kind'] {
  if (panel === null) return 'leaf';
  return face === 'roof' || face === 'floor' ? face : 'wall';
}
