import type { Neighbour, Requirement } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { given, octaves, place, session, site, spec } from '../fixtures/spec-builder.js';

const named = (name: string) => ({ name, nameRange: place(), range: place() });
/** Invented: a bedroom above, through a floor of which only the loss is known. */
const nursery: Neighbour = {
  ...named('nursery'),
  side: given('above' as const),
  separation: { kind: 'loss', loss: octaves([25, 30, 38, 45, 50, 52, 54]) },
  area: given(11.8),
  volume: given(27),
  reverberation: given(0.5),
  distance: undefined,
};
const limit = (decibels: number, where: string | undefined): Requirement => ({
  kind: 'voice-outside',
  text: `voice-outside <= ${decibels} dBA`,
  range: place(),
  limit: given({ decibels, weighting: 'A' as const }),
  where,
});
const shouting = session({ effort: given('shout' as const) });
const verdictAt = (decibels: number, where: string | undefined, neighbours = [nursery]) =>
  onlyVerdict(spec({ site: site({ neighbours }), session: shouting, requirements: [limit(decibels, where)] }));

describe('require voice-outside', () => {
  it('judges at the neighbour that it names', () => {
    const inRoom = verdictAt(20, undefined);
    const above = verdictAt(20, 'nursery');
    expect((inRoom.value?.value as number) - (above.value?.value as number)).toBeGreaterThan(30);
    expect(above.explanation).toContain('in nursery');
    expect(above.explanation).toContain('full shout');
    expect(above.explanation).toContain('rigid contact');
    const { voiceAt } = onlyBooth(spec({ site: site({ neighbours: [nursery] }), session: shouting }));
    expect(above.value).toEqual(voiceAt[1]?.session?.dBA);
  });

  it('says what the text must tell before a neighbour can be judged', () => {
    const open = verdictAt(20, 'nursery', [{ ...nursery, volume: undefined, separation: undefined }]);
    expect(open.verdict).toBe('not-assessed');
    expect(open.explanation).toContain('what separates it');
    expect(open.explanation).toContain('`volume`');
    expect(verdictAt(20, 'attic').explanation).toContain('No `neighbour` of the site is named attic');
  });
});
