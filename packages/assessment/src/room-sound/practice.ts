/**
 * Decay of the low bands over the mean of 500 Hz to 2 kHz, and what a small booth aims at in the middle, s. Evidence: the
 * project's own proposal for 2 to 8 m3; nothing published says it.
 */
export const proposedDecay = {
  ratio125: 2,
  ratio250: 1.3,
  midFrom: 0.06,
  midTo: 0.2,
} as const;

/** The ratio that a mode is held to: that of the octave it lies in, whose edge is 177 Hz. */
export function proposedRatioAt(hz: number): number {
  return hz < 125 * Math.SQRT2 ? proposedDecay.ratio125 : proposedDecay.ratio250;
}

/** A change that shortens a decay by less than this share is not where to start. Evidence: the project's own. */
export const worthwhileShare = 0.1;
