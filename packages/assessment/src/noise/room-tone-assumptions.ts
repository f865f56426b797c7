import { speechBasis } from '@boothwright/acoustics';
import type { Microphone, Session } from '@boothwright/language';
import { knownBands } from '../bands/band-names.js';
import type { ByBand } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { voiceSpectrum } from './capsule.js';

interface Assumed {
  readonly session: Session;
  readonly microphone: Microphone;
  readonly inside: ByBand;
  readonly rejection: readonly number[];
}

/** Everything without which a figure in dBFS says nothing, in words. */
export function roomToneAssumptions({ session, microphone, inside, rejection }: Assumed): string[] {
  const effort = session.effort.value;
  const cutoff = microphone.highPass?.value;
  const own = microphone.selfNoise?.value.decibels;
  return [
    `RMS without weighting, ${cutoff === undefined ? 'no high-pass filter' : `after a second-order high-pass at ${decimals(cutoff, 0)} Hz`}`,
    `gain set so that a ${effort} voice at ${decimals(microphone.distance.value * 1000, 0)} mm reads ${decimals(session.voiceLevel.value.decibels, 0)} dBFS`,
    `voice from ${knownBands(voiceSpectrum(microphone, session))}, noise from ${knownBands(inside)}`,
    `voice: ${speechBasis(effort).text}`,
    own === undefined
      ? 'self-noise of the microphone not given and not counted'
      : `self-noise ${decimals(own, 0)} dBA taken as white noise from 20 Hz to 20 kHz`,
    patternWords(microphone, rejection),
    'a softer read with more gain raises the figure dB for dB',
  ];
}

function patternWords({ pattern }: Microphone, rejection: readonly number[]): string {
  if (pattern.value === 'omni') return 'the microphone hears all directions alike';
  const most = Math.max(...rejection);
  return `${pattern.value} microphone: ${decimals(most, 1)} dB off room noise where it comes from all sides, less where single modes rule, none below them; bass lift at close range not counted`;
}
