import type { Layer, LineConnection } from '@boothwright/acoustics';
import type { Construction } from './constructions.js';
import { type Curve, differences, type Group } from './insulation-results.js';
import { predicted } from './prediction.js';
import { mean, rootMeanSquare } from './statistics.js';

/** One assumption changed at a time; a construction that it does not touch comes back itself. */
export interface Variant {
  readonly words: string;
  readonly change: (construction: Construction) => Construction;
}

const plates =
  (change: (plate: Extract<Layer, { kind: 'plate' }>) => Layer) =>
  (construction: Construction): Construction => {
    if (!construction.layers.some(({ kind }) => kind === 'plate')) return construction;
    const layers = construction.layers.map((layer) => (layer.kind === 'plate' ? change(layer) : layer));
    return { ...construction, layers };
  };

const stiffness = (factor: number) =>
  plates((plate) => ({
    ...plate,
    youngsModulus: plate.youngsModulus * factor,
    ...(plate.crossModulus === undefined ? {} : { crossModulus: plate.crossModulus * factor }),
    ...(plate.shearModulus === undefined ? {} : { shearModulus: plate.shearModulus * factor }),
  }));

const area =
  (factor: number) =>
  (construction: Construction): Construction => {
    const { width, height } = construction.size;
    return { ...construction, size: { width: width * Math.sqrt(factor), height: height * Math.sqrt(factor) } };
  };

const fibre =
  (factor: number) =>
  (construction: Construction): Construction => {
    if (!construction.layers.some(({ kind }) => kind === 'porous')) return construction;
    const layers = construction.layers.map((layer) =>
      layer.kind === 'porous' ? { ...layer, flowResistivity: layer.flowResistivity * factor } : layer,
    );
    return { ...construction, layers };
  };

const studs =
  (of: (stud: LineConnection) => boolean, change: (stud: LineConnection) => LineConnection) =>
  (construction: Construction): Construction =>
    construction.connections.some(of)
      ? { ...construction, connections: construction.connections.map((stud) => (of(stud) ? change(stud) : stud)) }
      : construction;

const isSteel = ({ compliance }: LineConnection) => compliance !== undefined;

/** The assumptions that no source prints, each changed by as much as it may well be wrong. */
export const variants: readonly Variant[] = [
  {
    words: 'loss factors of plates halved',
    change: plates((plate) => ({ ...plate, lossFactor: plate.lossFactor / 2 })),
  },
  {
    words: 'loss factors of plates doubled',
    change: plates((plate) => ({ ...plate, lossFactor: plate.lossFactor * 2 })),
  },
  { words: 'moduli of plates less 20 %', change: stiffness(0.8) },
  { words: 'moduli of plates plus 20 %', change: stiffness(1.2) },
  { words: 'samples of half the area', change: area(0.5) },
  { words: 'samples of twice the area', change: area(2) },
  { words: 'flow resistivity of fibre halved', change: fibre(0.5) },
  { words: 'flow resistivity of fibre doubled', change: fibre(2) },
  {
    words: 'steel studs rigid',
    change: studs(isSteel, ({ between, spacing, width }) => ({
      between,
      spacing,
      ...(width === undefined ? {} : { width }),
    })),
  },
  {
    words: 'steel studs yield twice as far',
    change: studs(isSteel, (stud) => ({ ...stud, compliance: 2 * (stud.compliance ?? 0) })),
  },
  {
    words: 'ties half as far apart again',
    change: studs(
      () => true,
      (stud) => ({ ...stud, spacing: 1.5 * stud.spacing }),
    ),
  },
];

/** Errors of every curve when an assumption is changed, in the order of the curves; dB. */
export function errorsWith(curves: readonly Curve[], { change }: Variant): readonly (readonly number[])[] {
  return curves.map(({ construction, measured, errors }) => {
    const changed = change(construction);
    return changed === construction ? errors : differences(predicted(changed), measured);
  });
}

/** Bias and root mean square of the curves of a group, out of errors in the order of the curves; dB. */
export function biasAndRms(curves: readonly Curve[], errors: readonly (readonly number[])[], { types }: Group) {
  const chosen = errors.filter((_, index) => types.includes(curves[index]!.construction.type)).flat();
  return { bias: mean(chosen), rms: rootMeanSquare(chosen) };
}
