import { ArgumentError } from '../errors/argument-error.js';

/** A range of air speeds, m/s. */
export type SpeedRange = { readonly from: number; readonly to: number };

/** Speeds in ft/min by the NC range that starts at the number. Source: as in `grilleSpeedForNoiseCriterion`. */
const rows = {
  15: { supply: [250, 300], return: [300, 360] },
  20: { supply: [300, 350], return: [360, 420] },
  25: { supply: [350, 425], return: [420, 510] },
  30: { supply: [425, 500], return: [510, 600] },
  35: { supply: [500, 575], return: [600, 690] },
  40: { supply: [575, 650], return: [690, 780] },
} as const;

const metresPerSecondPerFootPerMinute = 0.3048 / 60;

/**
 * Air speed at a register or grille that goes with a noise criterion, m/s.
 *
 * Rule: the printed range of speeds for NC `from` to `from` + 5. Units: m/s.
 * Source: M. D. Egan, Architectural Acoustics, table of recommended air velocities at registers and grilles (as
 * transcribed; the author is from memory).
 * Valid: lined ducts, slots of 13 mm or more; no damper behind the grille: one can add more than 10 dB.
 * Errors: ArgumentError for a criterion or a side that isn't in the table.
 */
export function grilleSpeedForNoiseCriterion(from: 15 | 20 | 25 | 30 | 35 | 40, side: 'supply' | 'return'): SpeedRange {
  const row = rows[from];
  if (!row) throw new ArgumentError('noise criterion', from, '15, 20, 25, 30, 35 or 40, the lower end of 5');
  const range = row[side];
  if (!range) throw new ArgumentError('side', `"${String(side)}"`, 'supply or return');
  return { from: range[0] * metresPerSecondPerFootPerMinute, to: range[1] * metresPerSecondPerFootPerMinute };
}
