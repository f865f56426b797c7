import {
  type Air,
  compositeTransmissionLoss,
  firstCavityMode,
  smallEnclosureLimit,
  type TransmissionLoss,
} from '@boothwright/acoustics';
import type { Booth, BoothSpec } from '@boothwright/language';
import { airResult } from '../air/air-result.js';
import { ventilationResult } from '../air/ventilation-result.js';
import { ratingsOf } from '../assembly/ratings.js';
import { buildResult } from '../build/build-result.js';
import type { Memo } from '../memo/memo.js';
import { movingResult } from '../moving/moving-result.js';
import { boothNoise, roomAreaOf } from '../noise/booth-noise.js';
import type { HourStates } from '../noise/hour-states.js';
import { reflectionsResult, reflectionsWhyNot } from '../reflections/reflections-result.js';
import type { BoothResult } from '../result/result-document.js';
import { roomSound } from '../room-sound/room-sound.js';
import { textRange } from '../text/text-range.js';
import { voiceAt } from '../voice/voice-at.js';
import { voiceOutside } from '../voice/voice-outside.js';
import { voiceTransfer } from '../voice/voice-transfer.js';
import { absorptionAreaOf } from './absorption-area.js';
import { bandModelsOf } from './band-models.js';
import type { BoothPath } from './booth-path.js';
import { geometryOf, insideSize, openFaces, surfaceOf, volumeOf } from './geometry.js';
import { type Isolation, isolationOf } from './isolation.js';
import { lowBandsOf } from './low-bands.js';
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
  /** Names of vents whose fan runs and has no stated sound power, and of machines inside without one. */
  readonly unknownFans: readonly string[];
  readonly unknownMachines: readonly string[];
  /** The booth in every mix of sources that the day brings; empty when no source has hours. */
  readonly states: readonly AssessedBooth[];
  readonly hours: HourStates;
}

/**
 * Everything about one booth of the spec. `kept` is the result of the same booth before a change of its layers or openings,
 * where only levels are asked for: what no level depends on is taken from it and not worked out again.
 */
export function assessBooth(booth: Booth, spec: BoothSpec, air: Air, memo: Memo, kept?: BoothResult): AssessedBooth {
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

  const closedBoxToHz = smallEnclosureLimit([...size], air);
  const limits = { closedBoxToHz, firstModeHz, schroederHz: reverberation.validFromHz };
  const build = kept?.build ?? buildResult(booth, site, session, spec.budget, memo);
  const heard = boothNoise({
    booth,
    spec,
    area,
    bandModels,
    isolation,
    loadedMass: build.loadedMassKg,
    air,
    memo,
    sessionOnly: kept !== undefined,
  });
  const roomArea = roomAreaOf(site, air);
  const voice = roomArea === null ? null : voiceTransfer(paths, area.total, isolation.shares, bandModels, roomArea);
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
    noise: heard.noise,
    lowBands: kept?.lowBands ?? lowBandsOf(booth, paths, volume, limits, isolation, bandModels, air, memo),
    voiceAt: voiceAt(voice, site, session, air, memo),
    voiceOutside: voiceOutside(voice, site, session),
    reverberation,
    roomSound: kept !== undefined ? kept.roomSound : roomSound(booth, people, reverberation.validFromHz, air, memo),
    ventilation: kept?.ventilation ?? ventilationResult(booth, air, memo),
    air: kept !== undefined ? kept.air : airResult(booth, session, site, volume, air, memo),
    build,
    moving: kept !== undefined ? kept.moving : movingResult(booth, site, build, memo),
    reflections: kept !== undefined ? kept.reflections : reflectionsResult(booth, air, memo),
    reflectionsWhy: reflectionsWhyNot(booth),
  };
  const assessed: AssessedBooth = {
    booth,
    result,
    paths,
    isolation,
    totalHalfWidth: heard.totalHalfWidth,
    unknownOctaves: heard.unknownOctaves,
    unknownFans: heard.unknownFans,
    unknownMachines: heard.unknownMachines,
    states: [],
    hours: heard.hours,
  };
  const states = heard.states.map(({ noise, totalHalfWidth, unknownOctaves }) => ({
    ...assessed,
    result: { ...result, noise },
    totalHalfWidth,
    unknownOctaves,
  }));
  return { ...assessed, states };
}
