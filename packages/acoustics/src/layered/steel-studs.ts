import { complianceInSeries, guidedFlangeCompliance } from '../double-leaf/resilient-connection.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { LineConnection } from './layer.js';

/** A light steel stud, a folded C section, and how the boards are screwed to it; lengths in m. */
export type SteelStud = {
  /** Centre to centre. */
  readonly spacing: number;
  /** Width of the flange that a board lies on. */
  readonly flangeWidth: number;
  /** Thickness of the folded sheet. */
  readonly sheetThickness: number;
  /** Along a stud. */
  readonly screwSpacing: number;
};

/** Of steel sheet; D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, as transcribed. */
const steel = { youngsModulus: 207e9, poissonRatio: 0.3 } as const;

/**
 * Light steel studs as a connection that yields between its screws.
 *
 * Equation: the compliance of two flanges in series, each a strip from the web to a screw in its middle, of
 * `guidedFlangeCompliance`; at a screw the connection is rigid. Units: m in, m2/N inside the result.
 * Source: derived. Valid for sections of about 0.4 to 1 mm; thick sections are nearer to a rigid stud, which is a
 * `LineConnection` without compliance. The web counts as rigid, and the resonances of the section are left out.
 * Errors: ArgumentError for a length that is not above 0.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { type Layer, steelStuds, wallTransmissionLoss } from '@boothwright/acoustics/layered';
 * import { soundTransmissionClass } from '@boothwright/acoustics/ratings';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * const field = { kind: 'finite', size: { width: 4, height: 2.5 } } as const;
 * const board: Layer = {
 *   kind: 'plate', thickness: 0.0125, density: 760, youngsModulus: 2.1e9, poissonRatio: 0.24, lossFactor: 0.05,
 * };
 * const wool: Layer = { kind: 'porous', thickness: 0.075, flowResistivity: 12200, density: 40 };
 * const studs = steelStuds([0, 2], { spacing: 0.6, flangeWidth: 0.035, sheetThickness: 0.0005, screwSpacing: 0.3 });
 * const wall = { layers: [board, wool, board], connections: [studs] };
 * soundTransmissionClass(wallTransmissionLoss(wall, { air, field }).total).stc; // 42
 * ```
 */
export function steelStuds(between: readonly [number, number], stud: SteelStud): LineConnection {
  if (typeof stud !== 'object' || stud === null) throw new ArgumentError('stud', stud, 'lengths of a steel stud');
  const { spacing, flangeWidth, sheetThickness, screwSpacing } = stud;
  requireNumber('spacing of studs', spacing, { above: 0, unit: 'metres' });
  requireNumber('width of the flange', flangeWidth, { above: 0, unit: 'metres' });
  requireNumber('thickness of the sheet', sheetThickness, { above: 0, unit: 'metres' });
  requireNumber('spacing of screws', screwSpacing, { above: 0, unit: 'metres' });
  const flange = guidedFlangeCompliance(flangeWidth / 2, sheetThickness, steel.youngsModulus, steel.poissonRatio);
  return { between, spacing, width: flangeWidth, compliance: complianceInSeries(flange, flange), screwSpacing };
}
