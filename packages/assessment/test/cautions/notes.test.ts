import { describe, expect, it } from 'vitest';
import { assess, cautionsById } from '../fixtures/assessed.js';
import { booth, given, shell, site, spec } from '../fixtures/spec-builder.js';

const ids = ['sprinklers-and-detectors', 'children-and-pets', 'cutting-dust', 'off-gassing', 'headphones'];

describe('notes on hazards of any booth', () => {
  it('stand after the cautions that this text brings up', () => {
    const severities = assess(spec()).cautions.map(({ severity }) => severity);
    const first = severities.indexOf('note');
    expect(first).toBeGreaterThan(0);
    expect(severities.slice(first)).toEqual(severities.slice(first).map(() => 'note'));
  });

  it('are there for an ordinary booth, each with whom to ask', () => {
    for (const id of [...ids, 'owner-and-insurer']) expect(cautionsById(spec(), id)).toHaveLength(1);
  });

  it('give the floor area in square feet and the room above', () => {
    const outside = { width: given(1.34), depth: given(1.54), height: given(2.14) };
    const text = spec({ booths: [booth(shell, { outside })], site: site() });
    // 1.34 m x 1.54 m = 2.06 m2 = 22.2 ft2; 2.45 m - 2.14 m = 310 mm
    expect(cautionsById(text, 'sprinklers-and-detectors')[0]?.number).toBe(
      '2.1 m2 (22 ft2) of floor, 310 mm below the ceiling',
    );
  });

  it('keep silent where their cause is missing', () => {
    const bare = booth(shell, {
      doors: [],
      microphone: undefined,
      faces: {
        front: undefined,
        back: undefined,
        left: undefined,
        right: undefined,
        roof: undefined,
        floor: undefined,
      },
    });
    for (const id of ['sprinklers-and-detectors', 'children-and-pets', 'cutting-dust', 'headphones'])
      expect(cautionsById(spec({ booths: [bare] }), id)).toEqual([]);
  });
});
