import type { Level } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import {
  assembly,
  byMass,
  given,
  gypsum,
  noise,
  place,
  requirement,
  roomTone,
  sheet,
  shell,
  site,
  spec,
  streetLevels,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

const id = 'rating-hides-low-frequency';
const stc = (limit: number, of = shell) =>
  requirement({
    kind: 'rating',
    text: `require stc of ${of.name} >= ${limit}`,
    rating: 'stc',
    assembly: of,
    limit: given(limit),
  });
const isolation = requirement({
  kind: 'isolation',
  text: 'require isolation >= 5 dB against street',
  limit: given<Level>({ decibels: 5, weighting: 'none' }),
  against: 'street',
  againstRange: place(),
});

describe(id, () => {
  it('fires when STC is met and 63 or 125 Hz passes the NC target', () => {
    const [finding] = findingsById(spec({ requirements: [stc(20), roomTone(15, 'NC')] }), id);
    expect([63, 125]).toContain(finding?.figures.bandHz);
    expect(finding?.figures.excessDb).toBeCloseTo(
      (finding?.figures.insideDb as number) - (finding?.figures.limitDb as number),
      9,
    );
  });

  it('is silent when the low octaves keep to the target', () => {
    const quiet = site({
      sources: [
        noise(
          'street',
          streetLevels.map((level) => level - 25),
        ),
      ],
    });
    expect(findingsById(spec({ site: quiet, requirements: [stc(20), roomTone(15, 'NC')] }), id)).toEqual([]);
  });

  it('has no target in a criterion without a curve', () => {
    for (const criterion of [10, 75]) {
      const found = findingsById(spec({ requirements: [stc(20), roomTone(criterion, 'NC')] }), id);
      expect(found.filter(({ message }) => message.includes('noise inside'))).toEqual([]);
    }
  });

  it('is silent when the single number is missed anyway', () => {
    expect(findingsById(spec({ requirements: [stc(60), roomTone(15, 'NC')] }), id)).toEqual([]);
  });

  it('fires for an isolation that is met', () => {
    expect(findingsById(spec({ requirements: [isolation, roomTone(15, 'NC')] }), id)).toHaveLength(1);
  });

  it('fires without a target on a thin filled gap, by the traffic rating, and not on one heavy leaf', () => {
    const light = assembly('light', byMass(vinyl, 5), sheet(wool, 0.05), byMass(vinyl, 5));
    const heavy = assembly('heavy', sheet(gypsum, 0.03));
    const of = (wall: typeof light) =>
      findingsById(spec({ walls: [wall], booths: [], site: undefined, requirements: [stc(10, wall)] }), id);
    const [finding] = of(light);
    expect(finding?.figures.ctr50To5000).toBeLessThanOrEqual(-10);
    expect(of(heavy)).toEqual([]);
  });
});
