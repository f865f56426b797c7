/** A fix that brings less than this on every missed requirement is not where to start, dB. Evidence: judgement. */
export const worthwhileGainDb = 0.5;
