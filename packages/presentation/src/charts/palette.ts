/**
 * Mid-tones that keep a contrast of at least 3 : 1 on white and on a near-black editor, so that one picture serves both
 * themes. Blue against orange comes first because the common colour deficiencies keep it apart; no chart relies on
 * colour alone: lines differ in dash and carry their name.
 */
export const palette = {
  blue: '#2f86c9',
  orange: '#c8691c',
  green: '#1f9575',
  purple: '#b0669c',
  gold: '#94832a',
  grey: '#808080',
} as const;

/** In the order in which parts of a stack are coloured. */
export const seriesColours: readonly string[] = [
  palette.blue,
  palette.orange,
  palette.green,
  palette.purple,
  palette.gold,
  palette.grey,
];
