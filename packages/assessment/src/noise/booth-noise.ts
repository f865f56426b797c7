import { type Air, sabineConstant } from '@boothwright/acoustics';
import type { Booth, BoothSpec, Site } from '@boothwright/language';

import type { AbsorptionArea } from '../booth/absorption-area.js';
import type { Isolation } from '../booth/isolation.js';
import type { Memo } from '../memo/memo.js';
import type { FanSettingName, NoiseAtFanSetting } from '../result/noise-result.js';
import type { BandModel, BoothResult } from '../result/result-document.js';
import { airAtOpenings } from './air-at-openings.js';
import { airInDucts } from './air-in-ducts.js';
import { equipmentHalfWidth, equipmentNoise } from './equipment.js';
import { fanNoise, silentlyUnknownFans } from './fan.js';
import { fanSettingsOf, sessionSetting, speedShare, ventsWithFan } from './fan-settings.js';
import { type HourStates, hourStatesOf, statesOfSession } from './hour-states.js';
import { levelTotals } from './level-totals.js';
import { mountsResult } from './mounts.js';
import { loudestMix, type NoiseMix, noiseMix, type SoundInside } from './noise-mix.js';
import { machinesUnknown, notPredicted } from './not-predicted.js';

import { roomTone } from './room-tone.js';
import { sourceInside } from './source-inside.js';

type Noise = BoothResult['noise'];

/** What the noise of a booth is computed from, beside its text. */
export interface NoiseInputs {
  readonly booth: Booth;
  readonly spec: BoothSpec;
  readonly area: AbsorptionArea;
  readonly bandModels: readonly BandModel[];
  readonly isolation: Isolation;
  /** kg, with people and contents */
  readonly loadedMass: number;
  readonly air: Air;
  readonly memo: Memo;
  /** Whether the setting of the session is all that is asked for, as where a fix is tried; `bySetting` has no other then. */
  readonly sessionOnly?: boolean;
}

/** The noise of one mix of sources, as far as it differs from that of another. */
export interface NoiseOfState {
  readonly noise: Noise;
  readonly totalHalfWidth: readonly number[];
  readonly unknownOctaves: readonly number[];
}

export interface BoothNoise extends NoiseOfState {
  /** Names of vents whose fan runs and has no stated sound power, and of machines without one. */
  readonly unknownFans: readonly string[];
  readonly unknownMachines: readonly string[];
  /** By mix of sources, in the order of `hours.states`; empty when no source has hours. */
  readonly states: readonly NoiseOfState[];
  readonly hours: HourStates;
}

/** Everything that is heard inside, at the setting of the session and in its loudest hour, or the loudest of the day. */
export function boothNoise(inputs: NoiseInputs): BoothNoise {
  const { booth, spec, area, bandModels, isolation, air } = inputs;
  const { site, session } = spec;
  const sources = site?.sources ?? [];
  const setting = sessionSetting(booth, session);
  const equipment = equipmentNoise(booth, area, bandModels, air);
  const heard = sources.map((source) => (source.kind === 'impact' ? null : sourceInside(source, isolation)));
  const through = (indices: readonly number[]): SoundInside[] =>
    indices.flatMap((index) => {
      const each = heard[index];
      return each === undefined || each === null
        ? []
        : [{ byBand: each.result.inside.byBand, halfWidth: each.halfWidth, near: false }];
    });
  const machines = equipment.map(
    ({ atMicrophone }): SoundInside => ({
      byBand: atMicrophone.byBand,
      halfWidth: equipmentHalfWidth(bandModels),
      near: true,
    }),
  );
  const asked = inputs.sessionOnly ? [setting] : fanSettingsOf(booth);
  const settings = new Map(asked.map((each) => [each, ownAt(each, inputs)]));
  const own = settings.get(setting) ?? ownAt(setting, inputs);
  const hours = hourStatesOf(sources);
  const mixes = hours.states.map((state) => noiseMix([...through(state), ...machines, ...own.sounds]));
  const judged = statesOfSession(hours, session);
  const worst = judged[loudestMix(judged.map((state) => mixes[state] as NoiseMix))] as number;
  const worstSources = hours.states[worst] ?? [];
  const mounts = mountsResult(booth, inputs.loadedMass);
  const missing = notPredicted(site, booth, setting, mounts);
  const tone = (mix: NoiseMix) =>
    booth.microphone === undefined || session === undefined
      ? null
      : roomTone(mix.atMicrophone, mix.halfWidth, booth.microphone, session, bandModels);
  const worstTone = tone(mixes[worst] as NoiseMix);
  const shared: Omit<Noise, 'bySource' | 'total' | 'roomTone' | 'notPredicted'> = {
    equipment,
    fan: own.fan,
    fanParts: own.parts,
    airInDucts: own.airInDucts,
    airAtOpenings: own.airAtOpenings,
    airParts: own.airParts,
    bySetting: [...settings].map(([each, sounds]): NoiseAtFanSetting => {
      const mix = noiseMix([...through(worstSources), ...machines, ...sounds.sounds]);
      return {
        setting: each,
        session: each === setting,
        speed: Math.max(0, ...ventsWithFan(booth).map(({ fan }) => speedShare(fan, each))),
        fan: sounds.fan,
        airInDucts: sounds.airInDucts,
        airAtOpenings: sounds.airAtOpenings,
        total: levelTotals(mix.total, mix.halfWidth, `everything airborne with the fan ${each}`),
        roomToneDbFS: (each === setting ? worstTone : tone(mix))?.dBFS ?? null,
      };
    }),
    mounts,
    hours: null,
  };
  const noiseOf = (mix: NoiseMix, present: readonly number[], bySource: Noise['bySource']): NoiseOfState => ({
    noise: {
      ...shared,
      bySource,
      total: levelTotals(mix.total, mix.halfWidth, totalBasis(hours, present, site)),
      roomTone: mix === mixes[worst] ? worstTone : tone(mix),
      notPredicted: missing.filter(({ kind, range }) =>
        kind === 'structure' ? present.some((index) => sources[index]?.range.from === range.from) : true,
      ),
    },
    totalHalfWidth: mix.halfWidth,
    unknownOctaves: mix.unknownOctaves,
  });
  const all = heard.flatMap((each, index) => (each ? { ...each.result, inTotal: worstSources.includes(index) } : []));
  const base = noiseOf(mixes[worst] as NoiseMix, worstSources, all);
  const someHours = sources.some((source) => source.hours !== undefined);
  return {
    ...base,
    noise: { ...base.noise, notPredicted: missing },
    unknownFans: setting === 'off' ? [] : silentlyUnknownFans(booth).map(({ name }) => name),
    unknownMachines: machinesUnknown(booth).map(({ name }) => name),
    hours,
    states: someHours
      ? hours.states.map((present, state) =>
          noiseOf(
            mixes[state] as NoiseMix,
            present,
            present.flatMap((index) => heard[index]?.result ?? []),
          ),
        )
      : [],
  };
}

/** Fans and air at one setting. */
function ownAt(setting: FanSettingName, { booth, spec, area, bandModels, isolation, air, memo }: NoiseInputs) {
  const fan = fanNoise(booth, setting, {
    absorptionArea: area.total,
    bandModels,
    isolation,
    roomArea: roomAreaOf(spec.site, air),
    air,
  });
  const moving = airInDucts(booth, setting, area.total, bandModels, air, memo);
  const hiss = airAtOpenings(booth, setting, area.total, bandModels, air, memo);
  const sounds = [fan, moving, hiss].flatMap((each): SoundInside[] =>
    each === undefined ? [] : [{ byBand: each.byBand, halfWidth: each.halfWidth, near: false }],
  );
  return {
    fan: fan === undefined ? null : levelTotals(fan.byBand, fan.halfWidth, 'fan through its duct and the room'),
    parts: fan?.parts ?? [],
    airInDucts: moving === undefined ? null : levelTotals(moving.byBand, moving.halfWidth, 'moving air in ducts'),
    airAtOpenings:
      hiss === undefined ? null : levelTotals(hiss.byBand, hiss.halfWidth, 'air where it enters and leaves'),
    airParts: [...(moving?.parts ?? []), ...(hiss?.parts ?? [])],
    sounds,
  };
}

/** Absorption area of the room around the booth by Sabine's formula, m2; null when its size is not given. */
export function roomAreaOf(site: Site | undefined, air: Air): number | null {
  if (site?.room === undefined) return null;
  const { width, depth, height } = site.room;
  return (sabineConstant(air) * width.value * depth.value * height.value) / site.reverberation.value;
}

function totalBasis(hours: HourStates, present: readonly number[], site: Site | undefined): string {
  if (hours.states.length < 2) return 'all airborne sounds that the text gives';
  const names = present.flatMap((index) => site?.sources[index]?.name ?? []);
  return `airborne sounds of the hours with ${names.length === 0 ? 'no source' : names.join(', ')}`;
}
