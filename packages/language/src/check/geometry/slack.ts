/** Metres within which sizes count as the same: a joiner's tolerance. */
export const SLACK = 0.002;
