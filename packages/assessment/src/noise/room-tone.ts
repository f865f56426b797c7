import { speechBasis } from '@boothwright/acoustics';
import type { Microphone, Session } from '@boothwright/language';
import { knownBands } from '../bands/band-names.js';
import type { ByBand, RoomTone } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { voiceLevelHalfWidth } from '../uncertainty/model-uncertainty.js';
import { noiseAtCapsule, voiceAtCapsule, voiceSpectrum } from './capsule.js';
import { shifted } from './level-totals.js';

/**
 * Room tone as a recording shows it, dBFS RMS without weighting.
 *
 * Equation: dBFS = voice setting - (L_voice - L_noise), both unweighted at the capsule after the high-pass. The voice is
 * the standard spectrum of the stated effort at 1 m, raised by 20 lg(1 m / distance). The microphone's own noise is added
 * to the noise as its stated A-weighted level, which is a lower bound of its unweighted level.
 * Units: dB re 20 uPa, m, Hz. Source: free-field distance law and ANSI S3.5 speech (see the acoustics package); the chain
 * is common practice.
 * Valid: for a talker on the axis of a pressure microphone. The bass lift of directional microphones, and what they
 * reject, are left out.
 */
export function roomTone(
  inside: ByBand,
  halfWidth: readonly number[],
  microphone: Microphone,
  session: Session,
): RoomTone | null {
  const distance = microphone.distance.value;
  const cutoff = microphone.highPass?.value;
  const voice = voiceAtCapsule(microphone, session, 'Z');
  const own = microphone.selfNoise?.value.decibels;
  const noiseOf = (levels: ByBand) => noiseAtCapsule(levels, microphone, 'Z');
  const noise = noiseOf(inside);
  const low = noiseOf(shifted(inside, halfWidth, -1));
  const high = noiseOf(shifted(inside, halfWidth, 1));
  if (voice === null || noise === null || low === null || high === null) return null;
  const setTo = session.voiceLevel.value.decibels;
  const value = setTo - (voice - noise);
  return {
    dBFS: {
      value,
      low: value - combinedHalfWidth(noise - low, voiceLevelHalfWidth),
      high: value + combinedHalfWidth(high - noise, voiceLevelHalfWidth),
      basis: 'noise inside and level of the talker, independent; docs/models/noise-inside.md',
    },
    voiceAtCapsuleDbZ: voice,
    noiseAtCapsuleDbZ: noise,
    voiceSetToDbFS: setTo,
    distanceM: distance,
    highPassHz: cutoff ?? null,
    note: note(session, setTo, distance, cutoff, own, voiceSpectrum(microphone, session), inside),
  };
}

function note(
  session: Session,
  setTo: number,
  distance: number,
  cutoff: number | undefined,
  own: number | undefined,
  voice: ByBand,
  inside: ByBand,
): string {
  return [
    `RMS without weighting, ${cutoff === undefined ? 'no high-pass filter' : `after a second-order high-pass at ${decimals(cutoff, 0)} Hz`}`,
    `gain set so that a ${session.effort.value} voice at ${decimals(distance * 1000, 0)} mm reads ${decimals(setTo, 0)} dBFS`,
    `voice from ${knownBands(voice)}, noise from ${knownBands(inside)}`,
    `voice: ${speechBasis(session.effort.value).text}`,
    own === undefined
      ? 'self-noise of the microphone not given and not counted'
      : `self-noise ${decimals(own, 0)} dBA counted as its stated figure`,
    'no bass lift and no rejection of a directional microphone; a softer read with more gain raises the figure dB for dB',
  ].join('; ');
}
