import { ArgumentError } from '../errors/argument-error.js';

/** Where a main duct lies. */
export type DuctPlace = 'above a plasterboard ceiling' | 'above an acoustic ceiling' | 'in the room';

/** Largest speeds in m/s, rectangular and round. Source: as in `ductSpeedForRoomCriterion`. */
const rows = {
  'above a plasterboard ceiling': { 45: [17.8, 25.4], 35: [12.7, 17.8], 25: [8.6, 12.7] },
  'above an acoustic ceiling': { 45: [12.7, 22.9], 35: [8.9, 15.2], 25: [6.1, 10.2] },
  'in the room': { 45: [10.2, 19.8], 35: [7.4, 13.2], 25: [4.8, 8.6] },
} as const;

/** Share of the speed of the main duct. Source: as in `ductSpeedForRoomCriterion`. */
const shares = { main: 1, branch: 0.8, 'final run': 0.5 } as const;

/**
 * Largest air speed in a duct that goes with a room criterion, m/s.
 *
 * Rule: the printed speed of the main duct; 80 % of it in a branch, 50 % in the final run to an outlet. Units: m/s.
 * Source: ASHRAE Handbook, HVAC Applications, 2015, chapter 48, Table 8 (as transcribed).
 * Valid: advice on planning, no prediction of a level; the criteria 25, 35 and 45 only.
 * Errors: ArgumentError for a criterion, place, section or part that isn't in the table.
 */
export function ductSpeedForRoomCriterion(
  criterion: 25 | 35 | 45,
  {
    place,
    section,
    part,
  }: {
    readonly place: DuctPlace;
    readonly section: 'rectangular' | 'round';
    readonly part: 'main' | 'branch' | 'final run';
  },
): number {
  const row = rows[place];
  if (!row) throw new ArgumentError('place of the duct', `"${String(place)}"`, Object.keys(rows).join(', '));
  const speeds = row[criterion];
  if (!speeds) throw new ArgumentError('room criterion', criterion, '25, 35 or 45');
  if (section !== 'rectangular' && section !== 'round') {
    throw new ArgumentError('section of the duct', `"${String(section)}"`, 'rectangular or round');
  }
  const share = shares[part];
  if (!share) throw new ArgumentError('part of the duct', `"${String(part)}"`, 'main, branch or final run');
  return speeds[section === 'round' ? 1 : 0] * share;
}
