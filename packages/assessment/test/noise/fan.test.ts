import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { bandModelsOf } from '../../src/booth/band-models.js';
import { ductPathLoss } from '../../src/booth/openings/duct-loss.js';
import { fanNoise, silentlyUnknownFans } from '../../src/noise/fan.js';
import { booth, quietFan, shell, unknownFan, vent } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const models = bandModelsOf(60, 86, 300);

it('fanNoise(booth) is power less duct losses plus 10 lg(4/A)', () => {
  const intake = vent('intake', { fan: quietFan });
  const noise = fanNoise(
    booth(shell, { vents: [intake] }),
    perBand(() => 8),
    models,
    air,
  );
  const loss = ductPathLoss(intake, air).alongDuct[10] as number;
  // 38 dB in the 500 Hz octave is 38 - 4.77 in each third.
  expect(noise?.byBand[10]).toBeCloseTo(38 - 10 * Math.log10(3) - loss + 10 * Math.log10(4 / 8), 9);
});

it('fanNoise(booth) has no answer without a stated sound power, and says whose is missing', () => {
  const silent = booth(shell, { vents: [vent('intake', { fan: unknownFan })] });
  expect(
    fanNoise(
      silent,
      perBand(() => 8),
      models,
      air,
    ),
  ).toBeUndefined();
  expect(silentlyUnknownFans(silent).map((entry) => entry.name)).toEqual(['intake']);
});

it('fanNoise(booth) adds two fans', () => {
  const one = fanNoise(
    booth(shell, { vents: [vent('a', { fan: quietFan })] }),
    perBand(() => 8),
    models,
    air,
  );
  const two = fanNoise(
    booth(shell, { vents: [vent('a', { fan: quietFan }), vent('b', { fan: quietFan })] }),
    perBand(() => 8),
    models,
    air,
  );
  expect((two?.byBand[10] as number) - (one?.byBand[10] as number)).toBeCloseTo(3.01, 2);
});
