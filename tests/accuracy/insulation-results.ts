import { type Construction, type ConstructionType, constructionsOf } from './constructions.js';
import type { InsulationRow, OpenData } from './open-data.js';
import { byClosedForm, byMassLaw, octaveCentres, predicted } from './prediction.js';
import { classFromOctaves, mean, median, rootMeanSquare } from './statistics.js';

/** One measured curve beside what is predicted for it; dB in the octaves of the comparison. */
export interface Curve {
  readonly construction: Construction;
  readonly row: InsulationRow;
  readonly measured: readonly number[];
  readonly predicted: readonly number[];
  readonly massLaw: readonly number[];
  readonly closedForm: readonly number[];
  /** Predicted less measured. */
  readonly errors: readonly number[];
  readonly measuredClass: number;
  readonly predictedClass: number;
}

/** Predicts every curve that is compared. */
export function insulationCurves(data: OpenData): readonly Curve[] {
  return constructionsOf(data).map((construction) => {
    const row = data.insulation.find(({ id }) => id === construction.id);
    if (row === undefined) throw new Error(`no row ${construction.id} in the table of transmission loss`);
    const measured = octaveCentres.map((hz) => {
      const value = row.values[row.bandsHz.indexOf(hz)];
      if (value === undefined) throw new Error(`row ${row.id} has no value at ${hz} Hz`);
      return value;
    });
    const own = predicted(construction);
    return {
      construction,
      row,
      measured,
      predicted: own,
      massLaw: byMassLaw(construction),
      closedForm: byClosedForm(construction),
      errors: differences(own, measured),
      measuredClass: classFromOctaves(octaveCentres, measured),
      predictedClass: classFromOctaves(octaveCentres, own),
    };
  });
}

/** Band by band, dB. */
export function differences(a: readonly number[], b: readonly number[]): number[] {
  return a.map((value, band) => value - b[band]!);
}

/** A line of the table of types. */
export interface Group {
  readonly name: string;
  readonly types: readonly ConstructionType[];
}

const twoLeaf = ['stud wall', 'joist floor', 'independent leaves', 'double pane'] as const;

/** Groups of the report, in its order; doors are in none but their own. */
export const groups: readonly Group[] = [
  { name: 'single leaves', types: ['single leaf'] },
  { name: 'stud walls', types: ['stud wall'] },
  { name: 'joist floor', types: ['joist floor'] },
  { name: 'independent leaves', types: ['independent leaves'] },
  { name: 'double panes', types: ['double pane'] },
  { name: 'all two-leaf', types: twoLeaf },
  { name: 'lined leaves', types: ['lined leaf'] },
  { name: 'all but doors', types: ['single leaf', ...twoLeaf, 'lined leaf'] },
  { name: 'doors, seals not stated', types: ['door'] },
];

/** Statistics of some curves; dB. */
export interface Summary {
  readonly curves: number;
  readonly bias: number;
  readonly rms: number;
  readonly biasByBand: readonly number[];
  readonly rmsByBand: readonly number[];
  /** Size of the error of the class: median and worst of the curves. */
  readonly classErrors: Spread;
  readonly massLawRms: number;
  readonly massLawClassErrors: Spread;
  readonly closedFormRms: number;
  readonly closedFormClassErrors: Spread;
}

/** Middle and largest of some sizes. */
export interface Spread {
  readonly median: number;
  readonly worst: number;
}

/** Statistics of the curves of a group. */
export function summaryOf(curves: readonly Curve[], { types }: Group): Summary {
  const chosen = curves.filter(({ construction }) => types.includes(construction.type));
  const spread = (of: 'predicted' | 'massLaw' | 'closedForm'): Spread => {
    const sizes = chosen.map((curve) => Math.abs(classFromOctaves(octaveCentres, curve[of]) - curve.measuredClass));
    return { median: median(sizes), worst: Math.max(...sizes) };
  };
  const errors = chosen.flatMap((curve) => curve.errors);
  const inBand = (band: number) => chosen.map((curve) => curve.errors[band]!);
  return {
    curves: chosen.length,
    bias: mean(errors),
    rms: rootMeanSquare(errors),
    biasByBand: octaveCentres.map((_, band) => mean(inBand(band))),
    rmsByBand: octaveCentres.map((_, band) => rootMeanSquare(inBand(band))),
    classErrors: spread('predicted'),
    massLawClassErrors: spread('massLaw'),
    closedFormClassErrors: spread('closedForm'),
    massLawRms: rootMeanSquare(chosen.flatMap((curve) => differences(curve.massLaw, curve.measured))),
    closedFormRms: rootMeanSquare(chosen.flatMap((curve) => differences(curve.closedForm, curve.measured))),
  };
}
