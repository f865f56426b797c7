import {
  microphoneSelfNoiseTotal,
  recordedNoiseLevel,
  sumLevels,
  thirdLevelsToOctaves,
  weightedTotal,
} from '@boothwright/acoustics';
import type { Microphone, Session } from '@boothwright/language';
import type { RoomTone } from '../result/noise-result.js';
import type { BandModel, ByBand } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { voiceLevelHalfWidth } from '../uncertainty/model-uncertainty.js';
import { afterHighPass, type InsideNoise, rejectionByBand, roomAtCapsule, voiceAtCapsule } from './capsule.js';
import { shifted } from './level-totals.js';
import { roomToneAssumptions } from './room-tone-assumptions.js';

/**
 * The shape that the single figure of a microphone's noise stands for. Evidence: common practice, the hiss of an amplifier;
 * a condenser's noise rises at low frequencies, which a figure in dBA hardly holds.
 */
export const selfNoiseShape = 'white';

/** Settings of the high-pass that recorders and microphones have, Hz (common practice); null is none. */
export const usualHighPasses: readonly (number | null)[] = [null, 80, 100, 120];

/**
 * Room tone as a recording shows it, dBFS RMS without weighting.
 *
 * Equation: dBFS = voice setting - (L_voice - L_noise), both unweighted at the capsule after the high-pass. The voice is
 * the standard spectrum of the stated effort at 1 m, raised by 20 lg(1 m / distance). The noise is that of the room, less
 * what the polar pattern takes off where sound comes from all sides, and the microphone's own from 20 Hz to 20 kHz, a white
 * noise of the stated A-weighted level, off which the filter takes nothing worth counting.
 * Units: dB re 20 uPa, m, Hz. Source: free-field distance law and ANSI S3.5 speech (see the acoustics package), ideal polar
 * patterns; the chain is common practice.
 * Valid: for a talker on the axis. The bass lift of a close directional microphone, which raises the voice and not the
 * noise, and the sound of the booth on the voice are left out.
 */
export function roomTone(
  inside: InsideNoise,
  halfWidth: readonly number[],
  microphone: Microphone,
  session: Session,
  bandModels: readonly BandModel[],
): RoomTone | null {
  const rejection = rejectionByBand(microphone, bandModels);
  const cutoff = microphone.highPass?.value ?? null;
  const setTo = session.voiceLevel.value.decibels;
  const own = microphone.selfNoise?.value.decibels;
  const ownUnweighted = own === undefined ? null : microphoneSelfNoiseTotal(own, selfNoiseShape);
  const room = roomAtCapsule(inside, rejection);
  const voices = new Map<string, number | null>();
  const voiceOf = (weighting: 'A' | 'Z', filter: number | null) => {
    const key = `${weighting} ${filter}`;
    const known = voices.get(key);
    if (known !== undefined) return known;
    const level = voiceAtCapsule(microphone, session, weighting, filter);
    voices.set(key, level);
    return level;
  };
  const chain = (levels: ByBand, weighting: 'A' | 'Z', filter: number | null) => {
    const voice = voiceOf(weighting, filter);
    const roomLevel = weightedTotal(afterHighPass(levels, filter), weighting);
    if (voice === null || roomLevel === null) return null;
    const self = weighting === 'A' ? (own ?? null) : ownUnweighted;
    const noise = self === null ? roomLevel : sumLevels([roomLevel, self]);
    return { voice, noise, reads: recordedNoiseLevel({ voice, noise, voiceSetTo: setTo }) };
  };
  const set = chain(room, 'Z', cutoff);
  const low = chain(shifted(room, halfWidth, -1), 'Z', cutoff);
  const high = chain(shifted(room, halfWidth, 1), 'Z', cutoff);
  if (set === null || low === null || high === null) return null;
  const filtered = afterHighPass(room, cutoff);
  const others = [...new Set([...usualHighPasses, cutoff])].sort((a, b) => (a ?? 0) - (b ?? 0));
  const assumptions = roomToneAssumptions({ session, microphone, inside: room, rejection });
  return {
    dBFS: {
      value: set.reads,
      low: set.reads - combinedHalfWidth(set.noise - low.noise, voiceLevelHalfWidth),
      high: set.reads + combinedHalfWidth(high.noise - set.noise, voiceLevelHalfWidth),
      basis: 'noise inside and level of the talker, independent; docs/models/recording-chain.md',
    },
    weightedDbFS: chain(room, 'A', cutoff)?.reads ?? null,
    voiceAtCapsuleDbZ: set.voice,
    noiseAtCapsuleDbZ: set.noise,
    voiceSetToDbFS: setTo,
    effort: session.effort.value,
    distanceM: microphone.distance.value,
    highPassHz: cutoff,
    pattern: microphone.pattern.value,
    patternRejectionDb: rejection,
    roomByBand: filtered,
    selfNoiseDbZ: ownUnweighted,
    shares: sharesOf(filtered, ownUnweighted, set.noise),
    filters: others.flatMap((highPassHz) => {
      const result = chain(room, 'Z', highPassHz);
      return result === null ? [] : [{ highPassHz, dBFS: result.reads }];
    }),
    assumptions,
    note: assumptions.join('; '),
  };
}

/** Shares of the unweighted energy at the capsule. An octave of which a third is unknown counts what is known of it. */
function sharesOf(room: ByBand, own: number | null, total: number): RoomTone['shares'] {
  const silent = room.map((level) => level ?? Number.NEGATIVE_INFINITY);
  const share = (level: number | null) =>
    level === null || level === Number.NEGATIVE_INFINITY ? 0 : 10 ** ((level - total) / 10);
  return { octaves: thirdLevelsToOctaves(silent).map(share), microphone: share(own) };
}
