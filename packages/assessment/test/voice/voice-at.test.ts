import { airProperties, sabineConstant } from '@boothwright/acoustics';
import type { Neighbour } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { createMemo } from '../../src/memo/memo.js';
import { voiceAt } from '../../src/voice/voice-at.js';
import type { VoiceTransfer } from '../../src/voice/voice-transfer.js';
import { given, octaves, place, session, shell, site } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
/** The room around the booth is 40 dB quieter than 1 m from the lips. */
const toRoom: VoiceTransfer = { loss: perBand(() => 40), halfWidth: perBand(() => 3) };
const named = (name: string) => ({ name, nameRange: place(), range: place() });
const neighbour = (changes: Partial<Neighbour> = {}): Neighbour => ({
  ...named('nursery'),
  side: given('above' as const),
  separation: { kind: 'loss', loss: octaves([20, 20, 20, 30, 30, 30, 30]) },
  area: given(10),
  volume: given(30),
  reverberation: given(0.6),
  distance: undefined,
  ...changes,
});
const at = (other: Neighbour, talk = session()) =>
  voiceAt(toRoom, site({ neighbours: [other] }), talk, air, createMemo())[1];

describe('voiceAt(...) at a neighbour', () => {
  it('is the room less the loss of the element, over the absorption of the room behind it', () => {
    const room = voiceAt(toRoom, site(), session(), air, createMemo())[0]?.session?.byBand as number[];
    const absorption = (sabineConstant(air) * 30) / 0.6;
    const found = at(neighbour())?.session?.byBand as number[];
    expect(found[13]).toBeCloseTo((room[13] as number) - 30 + 10 * Math.log10(10 / absorption), 9);
    expect(found[6]).toBeCloseTo((room[6] as number) - 20 + 10 * Math.log10(10 / absorption), 9);
  });

  it('spreads over a half sphere outdoors', () => {
    const yard = (metres: number) =>
      at(neighbour({ side: given('outdoors' as const), volume: undefined, distance: given(metres) }))?.session
        ?.byBand[13] as number;
    expect(yard(5) - yard(10)).toBeCloseTo(20 * Math.log10(2), 9);
    const room = voiceAt(toRoom, site(), session(), air, createMemo())[0]?.session?.byBand[13] as number;
    const expected = room - 30 - 6 + 10 - 10 * Math.log10(2 * Math.PI * 25) + 10 * Math.log10(air.impedance / 400);
    expect(yard(5)).toBeCloseTo(expected, 9);
  });

  it('takes a build-up as well as a table, with a wider range', () => {
    const built = at(neighbour({ separation: { kind: 'assembly', assembly: shell } }));
    const stated = at(neighbour());
    const width = (each: typeof built) => (each?.session?.dBA?.high as number) - (each?.session?.dBA?.value as number);
    expect(width(built)).toBeGreaterThan(width(stated));
  });

  it('leaves bands unknown that the table leaves out, and names what is missing', () => {
    const low = at(neighbour({ separation: { kind: 'loss', loss: octaves([25, 30, 35, null, 45, 50, 55]) } }));
    expect(low?.session?.byBand.slice(9, 12)).toEqual([null, null, null]);
    const bare = at(neighbour({ area: undefined }));
    expect(bare?.missing).toEqual(['the `area` of that element']);
    expect(bare?.session).toBeNull();
  });

  it('rises with the effort from casual to the full shout of 89 dBA', () => {
    const levels = at(neighbour())?.byEffort.map(({ dBA }) => dBA?.value as number) as number[];
    expect(levels).toHaveLength(6);
    expect([...levels].sort((a, b) => a - b)).toEqual(levels);
    expect(at(neighbour())?.byEffort.at(-1)).toMatchObject({ effort: 'full-shout', at1mDbA: expect.closeTo(89, 6) });
  });

  it('needs the room around the booth', () => {
    const [room, above] = voiceAt(null, site({ neighbours: [neighbour()] }), session(), air, createMemo());
    expect(room?.missing[0]).toContain('`room`');
    expect(above?.missing[0]).toContain('`room`');
  });
});
