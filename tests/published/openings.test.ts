// Figures marked "as transcribed" were read in public transcriptions; the printed pages were not opened.
import { airProperties, inviscidSlitTransmissionLoss } from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const air = {
  ...airProperties({ temperature: 20, relativeHumidity: 0.5 }),
  density: 1.205,
  soundSpeed: 343,
  impedance: 413.315,
};

describe('slit resonances d + 2 e w = z lambda/2, Hopkins: Sound Insulation, 2007, Eq. 4.101, as transcribed', () => {
  test.each([
    [0.001, 0.05],
    [0.005, 0.1],
    [0.002, 0.075],
  ])('%d m wide, %d m deep: the lowest transmission loss is within 2 %% of the first one', (gap, depth) => {
    const hz = Array.from({ length: 3000 }, (_, i) => 800 + 1.2 * i);
    const loss = hz.map((f) => inviscidSlitTransmissionLoss({ gap, depth, position: 'mid' }, f, air));
    const found = hz[loss.indexOf(Math.min(...loss))]!;
    const e = (Math.log((8 * air.soundSpeed) / (2 * Math.PI * found * gap)) - 0.57722) / Math.PI;
    expect(Math.abs(found / (air.soundSpeed / 2 / (depth + 2 * e * gap)) - 1)).toBeLessThan(0.02);
  });
});
