import { describe, expect, it } from 'vitest';
import { assess, findingsById } from '../fixtures/assessed.js';
import {
  airGap,
  assembly,
  booth,
  byMass,
  door,
  given,
  gypsum,
  noise,
  place,
  roomTone,
  sheet,
  site,
  spec,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

const heavy = assembly('heavy', sheet(gypsum, 0.025), sheet(wool, 0.1), airGap(0.05), sheet(gypsum, 0.025));
const unused = assembly('unused', byMass(vinyl, 3), airGap(0.02), byMass(vinyl, 3));
const voices = site({ sources: [noise('voices', [30, 40, 55, 60, 58, 52, 45])] });

function leaky(threshold: number) {
  const plain = booth(heavy);
  const faces = { ...plain.faces, floor: { assembly: heavy, range: place() } };
  return { ...plain, faces, doors: [door(heavy, { thresholdGap: given(threshold), perimeterGap: given(0) })] };
}

const missed = (limit: number, changes = {}) =>
  spec({
    walls: [unused, heavy],
    booths: [leaky(5e-3)],
    site: voices,
    requirements: [roomTone(limit, 'A')],
    ...changes,
  });

describe('findings, in the order of what to change first', () => {
  it('have the fix with the largest effect on a missed requirement before one that hardly helps', () => {
    const { findings } = assess(missed(10));
    const leak = findings.findIndex(({ id }) => id === 'leak-caps-wall');
    const other = findings.findIndex(({ message }) => message.startsWith('unused'));
    expect(leak).toBe(0);
    expect(other).toBeGreaterThan(leak);
    expect(findings[other]?.fix).toContain('it is not where to start');
    expect(findings[other]?.figures.requirementGain).toBe(0);
  });

  it('tell what the booth reads before and after, which is what the changed booth reads', () => {
    const [finding] = findingsById(missed(10), 'leak-caps-wall');
    const shut = assess(missed(10, { booths: [leaky(0)] })).requirements[0];
    const { requirementBefore, requirementAfter } = finding?.figures ?? {};
    expect(requirementAfter).toBeCloseTo(shut?.value?.value as number, 9);
    expect(requirementBefore).toBeGreaterThan((requirementAfter as number) + 1);
    expect(finding?.fix).toContain('takes `require room-tone <= 10 A` from');
  });

  it('say nothing of requirements when none is missed, and keep the order of the text', () => {
    const { findings } = assess(missed(90));
    for (const finding of findings) expect(finding.figures.requirementGain).toBeUndefined();
    const places = findings.map(({ range }) => range.from);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });
});
