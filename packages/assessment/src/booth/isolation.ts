import {
  type Air,
  bandSamples,
  defaultSamplesPerBand,
  handOverLevelDifference,
  smallEnclosureByPath,
  thirdOctaveBands,
} from '@boothwright/acoustics';
import { exactHz, perBand } from '../bands/grid.js';
import type { Memo } from '../memo/memo.js';
import { keyText } from '../memo/once-per.js';
import type { BandModel, ByBand } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { fieldHalfWidth } from '../uncertainty/model-uncertainty.js';
import type { BoothPath } from './booth-path.js';
import type { LowModels } from './low-deciders.js';

/** How much quieter it is inside than outside, the same for every airborne source that surrounds the booth. */
export interface Isolation {
  /** L_outside - L_inside, dB */
  readonly difference: readonly number[];
  /** Share of the energy inside, [path][band] */
  readonly shares: readonly ByBand[];
  /** dB per band */
  readonly halfWidth: readonly number[];
  /** Level difference by each model of the low bands. */
  readonly lowModels: LowModels;
}

/**
 * Level difference by band.
 *
 * Statistical: D = -10 lg(sum over paths of S_i 10^(-R_i/10) / A), the definition of the sound reduction index solved for
 * the level received (common practice). Closed box: the pressure of one air spring behind every wall at once, see the
 * acoustics package, as the mean energy inside over the band and with no credit for faces that move in opposite phase.
 * In the hand-over bands the smaller difference counts.
 * Shares: of the energy where the statistical formula speaks; in the closed box the sounds add as volumes, so the share
 * is that of each path acting alone, scaled to a sum of one.
 * Units: areas and absorption area in m2, volume in m3, result in dB.
 */
export function isolationOf(
  paths: readonly BoothPath[],
  absorptionArea: readonly number[],
  volume: number,
  bandModels: readonly BandModel[],
  air: Air,
  memo: Memo,
): Isolation {
  const energies = paths.map((path) =>
    path.result.transmissionLossDb.map((loss) => path.result.areaM2 * 10 ** (-loss / 10)),
  );
  const total = perBand((band) => energies.reduce((sum, energy) => sum + (energy[band] as number), 0));
  const statistical = perBand((band) => -10 * Math.log10((total[band] as number) / (absorptionArea[band] as number)));
  const lowBands = exactHz.flatMap((_, band) => (isLow(bandModels[band]) ? [band] : []));
  const { small, alone } = smallDifferences(paths, volume, lowBands, air, memo);

  const difference = perBand((band) => {
    const sealed = small.get(band);
    const model = bandModels[band];
    if (sealed === undefined || model === undefined || model === 'not-assessed') return statistical[band] as number;
    return handOverLevelDifference(model, sealed, statistical[band] as number);
  });
  const useSmall = (band: number) => small.has(band) && difference[band] === small.get(band);
  const weights = paths.map((_, path) =>
    perBand((band) =>
      useSmall(band)
        ? 10 ** (-(alone[path]?.get(band) ?? Number.POSITIVE_INFINITY) / 10)
        : (energies[path]?.[band] as number),
    ),
  );
  const shares = weights.map((weight) =>
    perBand((band) => (weight[band] as number) / weights.reduce((sum, other) => sum + (other[band] as number), 0)),
  );
  const halfWidth = perBand((band) => {
    const paths_ = paths.reduce(
      (sum, path, index) => sum + (shares[index]?.[band] as number) * (path.halfWidth[band] as number),
      0,
    );
    const model = bandModels[band];
    return combinedHalfWidth(paths_, model === undefined || model === 'not-assessed' ? 0 : fieldHalfWidth[model]);
  });
  const lowModels = { closedBox: perBand((band) => small.get(band) ?? null), statistical };
  return { difference, shares, halfWidth, lowModels };
}

function isLow(model: BandModel | undefined): boolean {
  return model === 'small-enclosure' || model === 'hand-over';
}

/** Level difference of the closed box in the low bands, by band: of all paths, and of each alone. */
interface SmallDifferences {
  readonly small: ReadonlyMap<number, number>;
  readonly alone: readonly ReadonlyMap<number, number>[];
}

function smallDifferences(
  paths: readonly BoothPath[],
  volume: number,
  bands: readonly number[],
  air: Air,
  memo: Memo,
): SmallDifferences {
  const walls = paths.map(({ elements, attenuation }) => [
    elements.map((element) =>
      element.kind === 'wall' ? [keyText(element.layers), element.area, element.size] : element,
    ),
    bands.map((band) => attenuation?.[band] ?? null),
  ]);
  return memo.of(`enclosure ${JSON.stringify([volume, walls, bands])} ${keyText(air)}`, () =>
    computed(paths, volume, bands, air),
  );
}

/** Differences of the mean energies of each band: resonances are narrower than a third octave. */
function computed(paths: readonly BoothPath[], volume: number, bands: readonly number[], air: Air): SmallDifferences {
  const samples = bands.map((band) =>
    bandSamples(thirdOctaveBands[band] as (typeof thirdOctaveBands)[number], defaultSamplesPerBand),
  );
  const hz = samples.flat();
  if (hz.length === 0 || paths.every(({ elements }) => elements.length === 0)) {
    return { small: new Map(), alone: paths.map(() => new Map()) };
  }
  const { all, alone } = smallEnclosureByPath({
    volume,
    air,
    hz,
    cancellation: 'none',
    paths: paths.map(({ elements, attenuation }) => ({
      elements,
      ...(attenuation === undefined
        ? {}
        : {
            attenuation: samples.flatMap((each, index) =>
              each.map(() => Math.max(0, attenuation[bands[index] as number] as number)),
            ),
          }),
    })),
  });
  const byBand = (differences: readonly number[]) => {
    let at = 0;
    return new Map(
      samples.map((each, index) => {
        const sum = each.reduce((total) => total + 10 ** (-(differences[at++] as number) / 10), 0);
        return [bands[index] as number, -10 * Math.log10(sum / each.length)];
      }),
    );
  };
  return { small: byBand(all), alone: alone.map(byBand) };
}
