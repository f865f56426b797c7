/** A printed row of the sound that duct walls keep in or out. */
export type DuctWallRow = {
  readonly name: string;
  /** Sound that leaves the duct, or that enters it. */
  readonly way: 'out' | 'in';
  /** dB in the 8 octaves 63 Hz to 8 kHz; null where nothing is printed. */
  readonly losses: readonly (number | null)[];
  /** What the printed figures say besides, octave by octave. */
  readonly notes: readonly string[];
};

const source = 'ASHRAE Handbook, HVAC Applications, 2019, chapter 49';

/**
 * Transmission loss of the walls of four ducts.
 * Source: ASHRAE Handbook, HVAC Applications, 2019, chapter 49, Tables 29, 30 and 33 (as transcribed; the table of each
 * round row was not told apart). Valid: for these ducts; a joint or a branch in a round duct spoils its loss.
 */
export const ductWallRows: readonly DuctWallRow[] = [
  {
    name: 'rectangular, 305 x 305 mm, 24 gauge',
    way: 'out',
    losses: [21, 24, 27, 30, 33, 36, 41, 45],
    notes: [source],
  },
  {
    name: 'rectangular, 305 x 305 mm, 24 gauge',
    way: 'in',
    losses: [16, 16, 16, 25, 30, 33, 38, 42],
    notes: [source],
  },
  {
    name: 'round, 200 mm, 26 gauge',
    way: 'out',
    losses: [45, 53, 55, 52, 44, 35, 34, null],
    notes: [source, '63 Hz is printed as above 45', '125 Hz is printed in brackets'],
  },
  {
    name: 'spiral, 300 mm',
    way: 'out',
    losses: [52, 51, 53, 51, 50, 46, 36, null],
    notes: [source],
  },
];
