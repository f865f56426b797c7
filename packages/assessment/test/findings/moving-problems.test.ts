import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

// Outside 1.389 x 1.589 x 2.1245 m (walls of 94.5 mm, deck of 30 mm); walls carry up to 2.03 m.
const stand = 'stands at 1 m, 1 m; panels { width 600 mm; fastened inside; roof lift }';
const room = (height: number) => `room 4 m x 3.6 m x ${height} m`;

/** What must be said of the first text, and not of the second, which misses it narrowly. */
const cases: readonly [string, string, ReturnType<typeof smallBooth>, ReturnType<typeof smallBooth>][] = [
  [
    'panel-does-not-go-through',
    'hatch',
    smallBooth({ booth: stand, site: `${room(2.5)}; passage hatch { width 0.55 m; headroom 0.55 m }` }),
    smallBooth({ booth: stand, site: `${room(2.5)}; passage hatch { width 0.90 m; headroom 2.20 m }` }),
  ],
  [
    'roof-cannot-go-on',
    'roof',
    smallBooth({ booth: stand, site: room(2.16) }),
    smallBooth({ booth: stand, site: room(2.4) }),
  ],
  [
    'booth-hits-obstacle',
    'pipe',
    smallBooth({ booth: stand, site: `${room(2.5)}; obstacle pipe at 0 m, 1.2 m, 2.0 m { size 4 m x 0.2 m x 0.1 m }` }),
    smallBooth({ booth: stand, site: `${room(2.5)}; obstacle pipe at 0 m, 0.7 m, 2.0 m { size 4 m x 0.2 m x 0.1 m }` }),
  ],
  [
    'door-cannot-open',
    'entry',
    smallBooth({ booth: stand.replace('1 m, 1 m', '1 m, 0.3 m'), site: room(2.5) }),
    smallBooth({ booth: stand.replace('1 m, 1 m', '1 m, 0.7 m'), site: room(2.5) }),
  ],
  [
    'no-order',
    'outside',
    smallBooth({
      booth: 'stands at 0.1 m, 0.8 m; panels { width 600 mm; fastened outside; roof lift }',
      site: 'room 1.7 m x 2.6 m x 2.5 m',
    }),
    smallBooth({
      booth: 'stands at 0.1 m, 0.8 m; panels { width 600 mm; fastened inside; roof lift }',
      site: 'room 1.7 m x 2.6 m x 2.5 m',
    }),
  ],
];

describe('findings of moving', () => {
  it.each(cases)('%s is found, and not in its near miss', (id, word, found, nearMiss) => {
    const [finding] = findingsById(found, id);
    expect(finding?.message).toContain(word);
    expect(finding?.fix.length).toBeGreaterThan(10);
    expect(findingsById(nearMiss, id)).toEqual([]);
  });

  it('fires in an unrelated box that does not fit between the walls', () => {
    const text = bigBox({ booth: 'stands at 1 m, 1 m', site: 'room 3 m x 6 m x 3.2 m' });
    expect(findingsById(text, 'booth-outside-the-room')[0]?.message).toMatch(/^box:/);
    expect(findingsById(bigBox({ booth: 'stands at 1 m, 1 m' }), 'booth-outside-the-room')).toEqual([]);
  });
});
