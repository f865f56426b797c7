import { airProperties } from '@boothwright/acoustics';
import type { Fan } from '@boothwright/language';
import { expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { bandModelsOf } from '../../src/booth/band-models.js';
import { ductPathLoss } from '../../src/booth/openings/duct-loss.js';
import { type FanSurroundings, fanNoise, silentlyUnknownFans } from '../../src/noise/fan.js';
import { booth, given, quietFan, shell, unknownFan, vent } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
/** A booth that keeps out 30 dB, in a room of unknown size. */
const around: FanSurroundings = {
  absorptionArea: perBand(() => 8),
  bandModels: bandModelsOf(60, 86, 300),
  isolation: {
    difference: perBand(() => 30),
    shares: [],
    lowModels: { closedBox: [], statistical: [] },
    halfWidth: perBand(() => 2),
  },
  roomArea: null,
  air,
};
const withFan = (fan: Fan) => booth(shell, { vents: [vent('intake', { fan })] });
const at500 = (fan: Fan, setting: 'off' | 'low' | 'high' = 'high', surroundings = around) =>
  fanNoise(withFan(fan), setting, surroundings)?.byBand[10] as number;
/** 38 dB in the 500 Hz octave is 38 - 4.77 in each third. */
const power = 38 - 10 * Math.log10(3);
const reverberant = 10 * Math.log10(4 / 8);

it('fanNoise(booth) is power less duct losses plus 10 lg(4/A)', () => {
  const loss = ductPathLoss(vent('intake'), air).alongDuct[10] as number;
  expect(at500(quietFan)).toBeCloseTo(power - loss + reverberant, 9);
});

it('fanNoise(booth) has no answer without a stated sound power, and says whose is missing', () => {
  const silent = withFan(unknownFan);
  expect(fanNoise(silent, 'high', around)).toBeUndefined();
  expect(silentlyUnknownFans(silent).map((entry) => entry.name)).toEqual(['intake']);
});

it('fanNoise(booth) adds two fans', () => {
  const two = booth(shell, { vents: [vent('a', { fan: quietFan }), vent('b', { fan: quietFan })] });
  expect((fanNoise(two, 'high', around)?.byBand[10] as number) - at500(quietFan)).toBeCloseTo(3.01, 2);
});

it('fanNoise(booth) falls by 50 lg of the speed and is gone when the fan stands still', () => {
  // Low is 60 % of full speed: 50 lg 0.6 = -11.09 dB.
  expect(at500(quietFan, 'low') - at500(quietFan)).toBeCloseTo(-11.09, 2);
  expect(fanNoise(withFan(quietFan), 'off', around)).toBeUndefined();
});

it('fanNoise(booth) counts what lies between the fan and the booth', () => {
  const { endReflection } = ductPathLoss(vent('intake'), air);
  const placed = (place: 'outside' | 'in-wall' | 'inside') => at500({ ...quietFan, place: given(place) });
  expect(placed('outside')).toBe(at500(quietFan));
  expect(placed('in-wall')).toBeCloseTo(power - (endReflection[10] as number) + reverberant, 9);
  expect(placed('inside')).toBeCloseTo(power + reverberant, 9);
});

it('fanNoise(booth) also comes in through the booth, from the room that the fan stands in', () => {
  const noise = fanNoise(withFan(quietFan), 'high', { ...around, roomArea: 9 });
  const room = noise?.parts.find(({ way }) => way === 'room');
  // Into a room of 9 m2 and then 30 dB less.
  expect(room?.byBand[10]).toBeCloseTo(power + 10 * Math.log10(4 / 9) - 30, 9);
  const alone = at500(quietFan);
  expect(noise?.byBand[10]).toBeCloseTo(
    10 * Math.log10(10 ** (alone / 10) + 10 ** ((room?.byBand[10] as number) / 10)),
    9,
  );
  const elsewhere = booth(shell, {
    vents: [vent('intake', { fan: quietFan, opensTo: given<'outdoors'>('outdoors') })],
  });
  expect(fanNoise(elsewhere, 'high', { ...around, roomArea: 9 })?.parts.map(({ way }) => way)).toEqual(['duct']);
});
