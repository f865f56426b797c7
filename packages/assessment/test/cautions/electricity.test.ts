import { describe, expect, it } from 'vitest';
import { cautionsById } from '../fixtures/assessed.js';
import { smallBooth } from '../fixtures/booth-text.js';

const id = 'electricity-and-heat';
const still = 'hole air on left { diameter 5 mm; depth 95 mm }';

describe(id, () => {
  it('adds the watts of the session and of what stands inside', () => {
    const text = smallBooth({
      session: 'heat 20 W',
      booth: 'equipment screen at 0.6 m, 0.3 m, 1.2 m { kind screen; heat 80 W }',
    });
    expect(cautionsById(text, id)[0]?.number).toContain('100 W');
  });

  it('speaks of a fan alone, and keeps silent without watts and fan', () => {
    expect(cautionsById(smallBooth(), id)).toHaveLength(1);
    expect(cautionsById(smallBooth({ vents: still }), id)).toEqual([]);
  });
});
