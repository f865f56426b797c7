import {
  type Air,
  bandSamples,
  defaultSamplesPerBand,
  type EnclosureElement,
  handOverLevelDifference,
  smallEnclosureLevelDifference,
  thirdOctaveBands,
} from '@boothwright/acoustics';
import { exactHz, perBand } from '../bands/grid.js';
import type { Memo } from '../memo/memo.js';
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
  const small = smallDifferences(paths, volume, lowBands, air, memo);
  const alone = paths.map((path) => smallDifferences([path], volume, lowBands, air, memo));

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

function smallDifferences(
  paths: readonly BoothPath[],
  volume: number,
  bands: readonly number[],
  air: Air,
  memo: Memo,
): Map<number, number> {
  return new Map(
    bands.map((band) => {
      const elements = paths.flatMap((path) => path.elements.map((element) => attenuated(element, path, band)));
      const key = `enclosure ${JSON.stringify([volume, elements, band, air])}`;
      return [band, memo.of(key, () => bandDifference(elements, volume, band, air))];
    }),
  );
}

/** Difference of the mean energies of one band: resonances are narrower than a third octave. */
function bandDifference(elements: readonly EnclosureElement[], volume: number, band: number, air: Air): number {
  const hz = bandSamples(thirdOctaveBands[band] as (typeof thirdOctaveBands)[number], defaultSamplesPerBand);
  const differences = smallEnclosureLevelDifference({ volume, elements, air, hz, cancellation: 'none' });
  return -10 * Math.log10(differences.reduce((sum, value) => sum + 10 ** (-value / 10), 0) / differences.length);
}

function attenuated(element: EnclosureElement, { attenuation }: BoothPath, band: number): EnclosureElement {
  if (attenuation === undefined || element.kind !== 'leak') return element;
  return { ...element, attenuation: Math.max(0, attenuation[band] as number) };
}
