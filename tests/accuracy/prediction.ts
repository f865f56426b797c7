import {
  type Air,
  airProperties,
  criticalFrequency,
  type Layer,
  massLawField,
  octaveTransmissionLoss,
  sharpConnectedDoubleLeaf,
  sharpDoubleLeaf,
  sharpTransmissionLoss,
  singlePanelOfLeaf,
  surfaceMass,
  thirdOctaveBands,
  type WallLeaf,
  wallTransmissionLoss,
} from '@boothwright/acoustics';
import type { Construction } from './constructions.js';

/** Hz, nominal octave centres of the comparison. */
export const octaveCentres = [125, 250, 500, 1000, 2000, 4000] as const;

/** Air of a laboratory (common practice). */
export const laboratoryAir: Air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

/** dB in the octaves of the comparison, out of 21 third-octave bands. */
function inOctaves(thirds: readonly number[]): number[] {
  return octaveTransmissionLoss(thirds).slice(1);
}

/** The prediction of this library, dB in octaves. */
export function predicted({ layers, connections, separateFrames, size }: Construction): number[] {
  const conditions = { air: laboratoryAir, field: { kind: 'finite', size } } as const;
  return inOctaves(wallTransmissionLoss({ layers, connections, separateFrames }, conditions).total);
}

/** The field-incidence mass law of everything together, dB in octaves. */
export function byMassLaw({ layers }: Construction): number[] {
  const mass = surfaceMass(layers);
  return inOctaves(thirdOctaveBands.map(({ exact }) => massLawField(exact, mass, laboratoryAir)));
}

/** Absorption of each face of a bare cavity in the closed form: hard boards (common practice). */
export const bareCavityAbsorption = 0.1;

/**
 * The closed forms of B.H. Sharp, dB in octaves: one leaf by its three lines, two leaves by theirs, studs as rigid lines.
 * A lining of one leaf is not known to them.
 */
export function byClosedForm(construction: Construction): number[] {
  const { layers, connections } = construction;
  const leaves = leavesOf(layers);
  const [first, second] = leaves;
  if (first === undefined) throw new Error(`${construction.id} has no leaf`);
  if (second === undefined) {
    const panel = singlePanelOfLeaf(first.leaf, laboratoryAir);
    return inOctaves(thirdOctaveBands.map(({ exact }) => sharpTransmissionLoss(panel, exact, laboratoryAir)));
  }
  const between = layers.slice(first.last + 1, second.first);
  const thickness = (kind: Layer['kind']) =>
    between.reduce((sum, layer) => sum + (layer.kind === kind && 'thickness' in layer ? layer.thickness : 0), 0);
  const fillDepth = thickness('porous');
  const wall = {
    leaves: [first.leaf, second.leaf],
    cavity: { depth: thickness('air-gap') + fillDepth, fillDepth },
    absorptionRatio: fillDepth > 0 ? 2 : 2 * bareCavityAbsorption,
  } as const;
  const conditions = { air: laboratoryAir };
  const [connection] = connections;
  if (connection === undefined) return inOctaves(sharpDoubleLeaf(wall, conditions));
  return inOctaves(sharpConnectedDoubleLeaf(wall, { kind: 'lines', spacing: connection.spacing }, conditions));
}

/** Leaves as the closed forms see them; boards in contact add their masses and keep the critical frequency of one. */
function leavesOf(layers: readonly Layer[]): { leaf: WallLeaf; first: number; last: number }[] {
  const leaves: { leaf: WallLeaf; first: number; last: number }[] = [];
  layers.forEach((layer, index) => {
    if (layer.kind !== 'plate' && layer.kind !== 'limp-sheet') return;
    const mass = surfaceMass([layer]);
    const before = leaves.at(-1);
    if (before?.last === index - 1) {
      before.leaf = { ...before.leaf, surfaceMass: before.leaf.surfaceMass + mass };
      before.last = index;
      return;
    }
    const leaf: WallLeaf =
      layer.kind === 'plate'
        ? {
            surfaceMass: mass,
            criticalFrequency: criticalFrequency(layer, laboratoryAir),
            lossFactor: layer.lossFactor,
          }
        : { surfaceMass: mass, criticalFrequency: Number.POSITIVE_INFINITY, lossFactor: 0 };
    leaves.push({ leaf, first: index, last: index });
  });
  return leaves;
}
