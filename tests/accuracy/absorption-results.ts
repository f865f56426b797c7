import {
  type AbsorberLayer,
  absorberAbsorption,
  octaveAbsorption,
  stoneWoolFlowResistivity,
} from '@boothwright/acoustics';
import { type AbsorptionDataRow, figureOf, type OpenData } from './open-data.js';
import { laboratoryAir, octaveCentres } from './prediction.js';
import { mean, rootMeanSquare } from './statistics.js';

/** Sample of a reverberation room, m: about 11 m2 (common practice; no source prints it). */
export const sampleSize = { width: 3.6, height: 3 } as const;

/** Fibre of the mineral wool of the catalogue, m. */
const fibreDiameter = 4.75e-6;

/** What is known of a measured porous row. */
interface PorousRow {
  readonly id: string;
  /** m, where the row states it in its name only */
  readonly thickness?: number;
  /** kg/m3; the flow resistivity then follows from the law behind the mineral wool of the catalogue. */
  readonly density?: number;
  /** Material of the catalogue whose flow resistivity is taken, where the source states no density. */
  readonly material?: string;
  /** m of air behind */
  readonly air?: number;
}

const stated = (ids: readonly string[], air?: number): PorousRow[] =>
  ids.map((id) => ({ id, ...(air === undefined ? {} : { air }) }));
const as = (material: string, ids: readonly string[], air?: number): PorousRow[] =>
  ids.map((id) => ({ id, material, ...(air === undefined ? {} : { air }) }));

/** m of air behind a sample in mounting E-400, the sample itself included (common practice). */
const mountingE400 = 0.4;

/** Rows of shared/open-data/absorption.json of a porous layer whose material and thickness are known. */
const porousRows: readonly PorousRow[] = [
  ...stated(['bies-wool-16-25', 'bies-wool-16-50', 'bies-wool-16-75', 'bies-wool-16-100']),
  ...stated(['bies-wool-48-50', 'bies-wool-48-75', 'bies-wool-48-100']),
  ...stated(['long-gfboard-48-25-a', 'long-gfboard-48-50-a', 'long-gfboard-48-75-a', 'long-gfboard-48-100-a']),
  ...stated([
    'long-gfboard-48-25-e400',
    'long-gfboard-48-50-e400',
    'long-gfboard-48-75-e400',
    'long-gfboard-48-100-e400',
  ]),
  ...stated(['arau-rw-100-30', 'arau-rw-100-50', 'arau-rw-100-80']),
  { id: 'vor-stone-wool-50mm-40kgm3', density: 40 },
  { id: 'vor-stone-wool-50mm-80kgm3', density: 80 },
  { id: 'vor-mineral-wool-50mm-40kgm3', thickness: 0.05, density: 40 },
  { id: 'vor-mineral-wool-50mm-70kgm3', thickness: 0.05, density: 70, air: 0.3 },
  ...as('glass-wool', ['cox-gf-25', 'cox-gf-50', 'cox-gf-75', 'cox-gf-100', 'long-batt-89', 'long-batt-152']),
  ...as('glass-wool', ['cox-gf-25-air25'], 0.025),
  ...as('felt', ['arau-felt-25']),
  ...as('felt', ['arau-felt-25-air50'], 0.05),
];

/** A measured row beside its predictions, in the octaves of the comparison. */
export interface AbsorptionCurve {
  readonly row: AbsorptionDataRow;
  /** Whether the source states the density; else the flow resistivity is that of a catalogue material. */
  readonly densityStated: boolean;
  /** Pa s/m2 */
  readonly flowResistivity: number;
  readonly measured: readonly number[];
  readonly infinite: readonly number[];
  /** Of a sample of `sampleSize`; cut at 1 where the source cuts its values there. */
  readonly finite: readonly number[];
}

/** Predicts every porous row by Miki's regression, the fibre at rest, on a hard backing. */
export function absorptionCurves(data: OpenData): readonly AbsorptionCurve[] {
  return porousRows.map((known) => {
    const row = data.absorption.find(({ id }) => id === known.id);
    if (row === undefined) throw new Error(`no row ${known.id} in the table of absorption`);
    const thickness = row.thickness ?? known.thickness;
    const density = row.density ?? known.density;
    if (thickness === undefined) throw new Error(`thickness of row ${known.id} is not known`);
    const flowResistivity =
      density === undefined || known.material !== undefined
        ? figureOf(data.catalogue, known.material ?? '', 'resistivity')
        : stoneWoolFlowResistivity(density, fibreDiameter, 'longitudinal');
    const air = row.mounting === 'E400' ? mountingE400 - thickness : (known.air ?? 0);
    const fibre: AbsorberLayer = { kind: 'porous', model: 'miki', thickness, flowResistivity };
    const layers: AbsorberLayer[] = air > 0 ? [{ kind: 'air-gap', thickness: air }, fibre] : [fibre];
    const measured = octaveCentres.map((hz) => row.values[row.bandsHz.indexOf(hz)]!);
    const conditions = { air: laboratoryAir, backing: 'rigid' } as const;
    const octaves = (thirds: readonly number[]) => octaveAbsorption(thirds).slice(1);
    const infinite = octaves(absorberAbsorption(layers, { ...conditions, incidence: { kind: 'diffuse' } }));
    const sample = { kind: 'diffuse-on-sample', size: sampleSize } as const;
    const finite = octaves(absorberAbsorption(layers, { ...conditions, incidence: sample }));
    const cut = Math.max(...measured) === 1;
    return {
      row,
      densityStated: known.material === undefined,
      flowResistivity,
      measured,
      infinite,
      finite: cut ? finite.map((value) => Math.min(1, value)) : finite,
    };
  });
}

/** Bias and root mean square by band and over all of them. */
export function absorptionSummary(curves: readonly AbsorptionCurve[], of: 'infinite' | 'finite') {
  const errors = curves.map((curve) => curve[of].map((value, band) => value - curve.measured[band]!));
  return {
    curves: curves.length,
    bias: mean(errors.flat()),
    rms: rootMeanSquare(errors.flat()),
    biasByBand: octaveCentres.map((_, band) => mean(errors.map((each) => each[band]!))),
    rmsByBand: octaveCentres.map((_, band) => rootMeanSquare(errors.map((each) => each[band]!))),
  };
}
