import { complianceInSeries, type LineConnection, steelStuds } from '@boothwright/acoustics';
import type { FrameLayer, ResilientFixings } from '@boothwright/language';

/** What ties two sheets where a frame stands, without the sheets. */
export type Stud = Omit<LineConnection, 'between'>;

/**
 * Studs of a frame as a line connection: as soft as stated, or as the flanges of folded steel between their screws, or rigid.
 *
 * Equation: C' = 1/K' for a stated stiffness K' in N/m2; `steelStuds` for a gauge. On channels or clips see `onFixings`.
 * Units: m, m2/N. Source: springs in series (mechanics), see docs/models/frame-connection.md.
 */
export function studOf(frame: FrameLayer, fixings?: ResilientFixings): Stud {
  const bare = bareStud(frame);
  return fixings === undefined ? bare : onFixings(bare, fixings);
}

function bareStud({ width, spacing, lumber, screws }: FrameLayer): Stud {
  const lines = { spacing: spacing.value, width: width.value };
  const { gauge, studStiffness } = lumber;
  if (studStiffness !== undefined) return { ...lines, compliance: 1 / studStiffness.value };
  if (gauge === undefined || screws === undefined) return lines;
  const { between: _, ...stud } = steelStuds([0, 1], {
    spacing: spacing.value,
    flangeWidth: width.value,
    sheetThickness: gauge.value,
    screwSpacing: screws.value,
  });
  return stud;
}

/**
 * The same studs with channels or clips between them and a board.
 *
 * Equation: C' = C'stud + e/k, e the distance of the fixings along a stud, k the stiffness of one: point springs spread along
 * the line. The board is screwed to them and not to the stud, so that no screw is rigid. Units: m, N/m, m2/N.
 * Valid while e is shorter than the bending waves of the board, for a 12.5 mm gypsum board and 400 mm up to 240 Hz;
 * above, separate points carry somewhat less than the line.
 */
export function onFixings({ screwSpacing: _, ...stud }: Stud, { spacing, stiffness }: ResilientFixings): Stud {
  return { ...stud, compliance: complianceInSeries(stud.compliance ?? 0, spacing.value / stiffness.value) };
}
