import {
  airProperties,
  bandSamples,
  defaultSamplesPerBand,
  smallEnclosureLevelDifference,
  thirdOctaveBands,
} from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { bandModelsOf } from '../../src/booth/band-models.js';
import { isolationOf } from '../../src/booth/isolation.js';
import { pathsOf } from '../../src/booth/paths.js';
import { createMemo } from '../../src/memo/memo.js';
import { booth, given, octaves, shell, slab, vent } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const memo = createMemo();
const models = bandModelsOf(60, 86, 300);
const absorption = perBand(() => 5);
const paths = pathsOf(booth(shell, { vents: [vent('intake')] }), air, memo);
const isolation = isolationOf(paths, absorption, 3.105, models, air, memo);

/** Mean energy inside over a band, dB below the outside. */
function closedBox(band: number): number {
  const hz = bandSamples(thirdOctaveBands[band] as (typeof thirdOctaveBands)[number], defaultSamplesPerBand);
  const elements = paths.flatMap((path) =>
    path.elements.map((element) =>
      element.kind === 'leak' ? { ...element, attenuation: path.attenuation?.[band] ?? 0 } : element,
    ),
  );
  const found = smallEnclosureLevelDifference({ volume: 3.105, elements, air, hz, cancellation: 'none' });
  return -10 * Math.log10(found.reduce((sum, value) => sum + 10 ** (-value / 10), 0) / found.length);
}

describe('isolationOf(paths, absorption, volume, models)', () => {
  it('is -10 lg(sum S tau / A) above the first mode', () => {
    const passed = paths.reduce(
      (sum, { result }) => sum + result.areaM2 * 10 ** (-(result.transmissionLossDb[12] as number) / 10),
      0,
    );
    expect(isolation.difference[12]).toBeCloseTo(-10 * Math.log10(passed / 5), 9);
  });

  it('is the mean over the band of that of the closed box below the first mode', () => {
    expect(isolation.difference[0]).toBeCloseTo(closedBox(0), 9);
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
    const small = closedBox(2);
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

  it('takes a stated loss of a vent off the closed box too', () => {
    const changes = { duct: { kind: 'round' as const, diameter: given(0.3) }, run: given(0.1), bends: given(0) };
    const only = (insertionLoss?: ReturnType<typeof octaves>) =>
      isolationOf(
        pathsOf(booth(slab, { doors: [], vents: [vent('in', { ...changes, insertionLoss })] }), air, memo),
        absorption,
        3.105,
        models,
        air,
        memo,
      ).difference[0] as number;
    expect(only(octaves([25, 25, 25, 25, 25, 25, 25]))).toBeGreaterThan(only() + 0.5);
  });
});
