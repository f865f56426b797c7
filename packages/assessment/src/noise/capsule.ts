import {
  highPassAttenuation,
  levelOf,
  microphonePattern,
  patternRejection,
  speechSpectrum,
  sumLevels,
  weightedTotal,
} from '@boothwright/acoustics';
import type { Microphone, Session } from '@boothwright/language';
import { exactHz } from '../bands/grid.js';
import type { BandModel, ByBand } from '../result/result-document.js';

/** Noise inside by what a polar pattern can do about it. */
export interface InsideNoise {
  /** From all sides: through the walls, out of ducts. */
  readonly spread: ByBand;
  /** Machines inside, whose direct sound may come from the front. */
  readonly near: ByBand;
}

/** Levels after the high-pass of the recording chain, where there is one, dB by band. */
export function afterHighPass(levels: ByBand, cutoff: number | null): ByBand {
  if (cutoff === null) return levels;
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

/** What the polar pattern takes off noise from all sides, dB by band, by the field that the band has. */
export function rejectionByBand(microphone: Microphone, bandModels: readonly BandModel[]): number[] {
  const pattern = microphonePattern(microphone.pattern.value);
  const diffuse = patternRejection(pattern, 'diffuse');
  const few = patternRejection(pattern, 'few-modes');
  const closed = patternRejection(pattern, 'closed-box');
  return exactHz.map((_, band) => {
    const model = bandModels[band];
    if (model === 'statistical') return diffuse;
    return model === 'few-modes' ? few : closed;
  });
}

/** The noise of the room at the capsule, before the filter: pattern taken off what comes from all sides, dB by band. */
export function roomAtCapsule({ spread, near }: InsideNoise, rejection: readonly number[]): ByBand {
  return spread.map((level, band) => {
    const taken = level === null ? null : level - (rejection[band] as number);
    const beside = near[band] ?? null;
    if (taken === null || beside === null) return taken ?? beside;
    return sumLevels([taken, beside]);
  });
}

/** The voice that a recording holds, dB; null when no band of it is known. */
export function voiceAtCapsule(
  microphone: Microphone,
  session: Session,
  weighting: 'A' | 'Z',
  cutoff: number | null = microphone.highPass?.value ?? null,
): number | null {
  return weightedTotal(afterHighPass(voiceSpectrum(microphone, session), cutoff), weighting);
}
