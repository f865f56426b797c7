import { levelOf, speechSpectrum, sumLevels, weightedTotal } from '@boothwright/acoustics';
import type { Microphone, Session } from '@boothwright/language';
import { exactHz } from '../bands/grid.js';
import type { ByBand } from '../result/result-document.js';
import { highPassAttenuation } from './high-pass.js';

/** Levels after the high-pass of the recording chain, where there is one, dB by band. */
export function afterHighPass(levels: ByBand, microphone: Microphone): ByBand {
  const cutoff = microphone.highPass?.value;
  if (cutoff === undefined) return levels;
  return levels.map((level, band) =>
    level === null ? null : level - highPassAttenuation(exactHz[band] as number, cutoff),
  );
}

/** The voice where the capsule stands, dB by band: the standard spectrum at 1 m, + 20 lg(1 m / distance). */
export function voiceSpectrum(microphone: Microphone, session: Session): ByBand {
  return speechSpectrum(session.effort.value).map((level) =>
    level === null ? null : level + 2 * levelOf(1 / microphone.distance.value),
  );
}

/**
 * The noise that a recording holds, dB: the room after the high-pass and the microphone's own noise, added in energy.
 *
 * The own noise is stated A-weighted. Unweighted it is a lower bound; what a high-pass takes off it is not known and not
 * taken off. Null when no band of the room is known.
 */
export function noiseAtCapsule(inside: ByBand, microphone: Microphone, weighting: 'A' | 'Z'): number | null {
  const room = weightedTotal(afterHighPass(inside, microphone), weighting);
  const own = microphone.selfNoise?.value.decibels;
  if (room === null) return null;
  return own === undefined ? room : sumLevels([room, own]);
}

/** The voice that a recording holds, dB; null when no band of it is known. */
export function voiceAtCapsule(microphone: Microphone, session: Session, weighting: 'A' | 'Z'): number | null {
  return weightedTotal(afterHighPass(voiceSpectrum(microphone, session), microphone), weighting);
}
