/**
 * Approximate mean absorption coefficient of a room from what it looks like, for when nothing was measured.
 *
 * Units: dimensionless, all bands alike.
 * Source: ISO 11546-2:1995, Table C.2, with the same rows in ISO 3744 and ISO 3746 (read in a transcription).
 * Valid: for an estimate of the order of size.
 */
export const ordinaryMeanAbsorption = [
  { absorption: 0.05, room: 'nearly empty, hard smooth walls' },
  { absorption: 0.1, room: 'partly empty, smooth walls' },
  { absorption: 0.15, room: 'with furniture' },
  { absorption: 0.2, room: 'irregular, with furniture' },
  { absorption: 0.25, room: 'upholstered furniture, or little absorption' },
  { absorption: 0.35, room: 'absorption on ceiling and walls' },
  { absorption: 0.5, room: 'much absorption on ceiling and walls' },
] as const;
