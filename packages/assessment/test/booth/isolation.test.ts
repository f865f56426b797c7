import { airProperties, smallEnclosureLevelDifference } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { exactHz, perBand } from '../../src/bands/grid.js';
import { bandModelsOf } from '../../src/booth/band-models.js';
import { isolationOf } from '../../src/booth/isolation.js';
import { pathsOf } from '../../src/booth/paths.js';
import { createMemo } from '../../src/memo/memo.js';
import { booth, given, shell, vent } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const memo = createMemo();
const models = bandModelsOf(60, 86, 300);
const absorption = perBand(() => 5);
const paths = pathsOf(booth(shell, { vents: [vent('intake')] }), air, memo);
const isolation = isolationOf(paths, absorption, 3.105, models, air, memo);

describe('isolationOf(paths, absorption, volume, models)', () => {
  it('is -10 lg(sum S tau / A) above the first mode', () => {
    const passed = paths.reduce(
      (sum, { result }) => sum + result.areaM2 * 10 ** (-(result.transmissionLossDb[12] as number) / 10),
      0,
    );
    expect(isolation.difference[12]).toBeCloseTo(-10 * Math.log10(passed / 5), 9);
  });

  it('is that of the closed box below the first mode', () => {
    const [expected] = smallEnclosureLevelDifference({
      volume: 3.105,
      elements: paths.flatMap((path) => path.elements),
      air,
      hz: [exactHz[0] as number],
    });
    expect(isolation.difference[0]).toBeCloseTo(expected as number, 9);
  });

  it('is the smaller of the two in the band of the first mode', () => {
    const dry = isolationOf(
      paths,
      perBand(() => 500),
      3.105,
      models,
      air,
      memo,
    ).difference[2] as number;
    const live = isolationOf(
      paths,
      perBand(() => 0.05),
      3.105,
      models,
      air,
      memo,
    ).difference[2] as number;
    const small = smallEnclosureLevelDifference({
      volume: 3.105,
      elements: paths.flatMap((path) => path.elements),
      air,
      hz: [exactHz[2] as number],
    })[0] as number;
    expect(dry).toBeCloseTo(small, 9);
    expect(live).toBeLessThan(small);
  });

  it('has shares that add to one in every band', () => {
    perBand((band) => isolation.shares.reduce((sum, share) => sum + (share[band] as number), 0)).forEach((sum) => {
      expect(sum).toBeCloseTo(1, 9);
    });
  });

  it('has a wider range below the first mode than in the statistical bands', () => {
    expect(isolation.halfWidth[2]).toBeGreaterThan(isolation.halfWidth[12] as number);
  });

  it('worsens when a door gap opens, most in the high bands', () => {
    const open = booth(shell, { doors: booth().doors.map((door) => ({ ...door, thresholdGap: given(3e-3) })) });
    const shut = isolationOf(pathsOf(booth(), air, memo), absorption, 3.105, models, air, memo);
    const leaky = isolationOf(pathsOf(open, air, memo), absorption, 3.105, models, air, memo);
    const loss = perBand((band) => (shut.difference[band] as number) - (leaky.difference[band] as number));
    expect(loss[20]).toBeGreaterThan(2);
    expect(loss[20]).toBeGreaterThan(loss[5] as number);
    for (const value of loss) expect(value).toBeGreaterThan(-1e-9);
  });
});
