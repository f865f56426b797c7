import {
  type Air,
  compositeTransmissionLoss,
  firstCavityMode,
  smallEnclosureLimit,
  type TransmissionLoss,
} from '@boothwright/acoustics';
import type { Booth, BoothSpec } from '@boothwright/language';
import { airResult } from '../air/air-result.js';
import { ratingsOf } from '../assembly/ratings.js';
import { buildResult } from '../build/build-result.js';
import type { Memo } from '../memo/memo.js';
import { fanNoise, silentlyUnknownFans } from '../noise/fan.js';
import { levelTotals } from '../noise/level-totals.js';
import { notPredicted } from '../noise/not-predicted.js';
import type { AirborneSource } from '../noise/outside-spectrum.js';
import { roomTone } from '../noise/room-tone.js';
import { sourceInside } from '../noise/source-inside.js';
import { partlyUnknownOctaves, summedHalfWidth, summedSpectra } from '../noise/summed-spectra.js';
import type { BoothResult } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { voiceOutside } from '../voice/voice-outside.js';
import { absorptionAreaOf } from './absorption-area.js';
import { bandModelsOf } from './band-models.js';
import type { BoothPath } from './booth-path.js';
import { geometryOf, insideSize, openFaces, surfaceOf, volumeOf } from './geometry.js';
import { type Isolation, isolationOf } from './isolation.js';
import { modesOf } from './modes.js';
import { pathsOf } from './paths.js';
import { reverberationOf } from './reverberation.js';

/** A booth with its result and what findings and requirements need beside it. */
export interface AssessedBooth {
  readonly booth: Booth;
  readonly result: BoothResult;
  readonly paths: readonly BoothPath[];
  readonly isolation: Isolation;
  /** dB per band, of the total noise inside */
  readonly totalHalfWidth: readonly number[];
  /** Octaves in which some airborne source or fan is unknown, so that the total is a lower bound, nominal Hz. */
  readonly unknownOctaves: readonly number[];
  /** Names of vents whose fan has no stated sound power. */
  readonly unknownFans: readonly string[];
}

/** Everything about one booth of the spec. */
export function assessBooth(booth: Booth, spec: BoothSpec, air: Air, memo: Memo): AssessedBooth {
  const { site, session } = spec;
  const size = insideSize(booth);
  const volume = volumeOf(size);
  const people = session?.people.value ?? 0;
  const area = absorptionAreaOf(booth, people, air, memo);
  const reverberation = reverberationOf(volume, area, surfaceOf(size), air, openFaces(booth).length > 0);
  const firstModeHz = firstCavityMode([...size], air);
  const bandModels = bandModelsOf(smallEnclosureLimit([...size], air), firstModeHz, reverberation.validFromHz);
  const paths = pathsOf(booth, air, memo);
  const isolation = isolationOf(paths, area.total, volume, bandModels, air, memo);
  const composite = compositeTransmissionLoss(
    paths.map(({ result }) => ({
      area: result.areaM2,
      transmissionLoss: result.transmissionLossDb as TransmissionLoss,
    })),
  );

  const airborne = (site?.sources ?? []).filter((source): source is AirborneSource => source.kind !== 'impact');
  const bySource = airborne.map((source) => sourceInside(source, isolation));
  const fan = fanNoise(booth, area.total, bandModels, air);
  const spectra = [...bySource.map((source) => source.inside.byBand), ...(fan === undefined ? [] : [fan.byBand])];
  const totalHalfWidth = summedHalfWidth(spectra, [
    ...bySource.map(() => isolation.halfWidth),
    ...(fan === undefined ? [] : [fan.halfWidth]),
  ]);
  const total = summedSpectra(spectra);
  const result: BoothResult = {
    title: booth.title ?? null,
    range: textRange(booth.range),
    geometry: geometryOf(booth),
    firstModeHz,
    schroederHz: reverberation.validFromHz,
    modesHz: modesOf(size, air),
    bandModels,
    compositeTransmissionLossDb: composite,
    ratings: ratingsOf(composite),
    paths: paths.map((path) => path.result),
    noise: {
      bySource,
      fan: fan === undefined ? null : levelTotals(fan.byBand, fan.halfWidth, 'fan through its duct'),
      total: levelTotals(total, totalHalfWidth, 'all airborne sources that the text gives'),
      notPredicted: notPredicted(site),
      roomTone:
        booth.microphone === undefined || session === undefined
          ? null
          : roomTone(total, totalHalfWidth, booth.microphone, session),
    },
    voiceOutside: voiceOutside(paths, area.total, isolation.shares, bandModels, site, session, air),
    reverberation,
    air: airResult(booth, session, volume),
    build: buildResult(booth, session, spec.budget),
  };
  return {
    booth,
    result,
    paths,
    isolation,
    totalHalfWidth,
    unknownOctaves: partlyUnknownOctaves(spectra),
    unknownFans: silentlyUnknownFans(booth).map((vent) => vent.name),
  };
}
