import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { defaultRimAbsorption } from './air-gap-fluid.js';
import { bandMeans } from './band-means.js';
import type { BandConditions } from './band-transmission-loss.js';
import { checkSurroundings, checkWallLayers } from './check-wall.js';
import { gapLosses } from './diffuse-transmission-loss.js';
import { leafInPlace } from './edge-loss.js';
import { grainDirections } from './grain-directions.js';
import { withSharedRates } from './lateral-motion.js';
import type { Field, Layer, PanelSize, Wall } from './layer.js';
import { type Leaf, leafAt } from './leaf.js';
import { lossesOfCoefficients } from './loss-of-coefficient.js';
import { isPresent } from './prepared-stack.js';
import { resonantTransmission } from './resonant-transmission.js';
import { lossesBetweenStuds, studOf } from './studs-of-wall.js';
import { defaultStiffnessSpread, unlikeLeaves } from './unlike-leaves.js';
import { leafAlone, type WallPart, wallPart, wallPaths } from './wall-paths.js';

/** Surroundings of a wall as built. */
export type WallConditions = BandConditions & {
  /** How far the leaves differ in bending stiffness, see `unlikeLeaves`; `defaultStiffnessSpread` when absent. */
  readonly stiffnessSpread?: number;
};

/** Transmission loss of a wall by band, whole and by its two kinds of path. */
export type WallTransmissionLoss = {
  /** dB in the 21 third-octave bands, airborne path and studs together. */
  readonly total: TransmissionLoss;
  /** dB, through the layers alone; studs only damp the leaves they are fixed to. */
  readonly airborne: TransmissionLoss;
  /** dB, through the studs alone; null for a wall without studs. */
  readonly connections: TransmissionLoss | null;
};

/**
 * Transmission loss of a wall as built, with or without studs, in the 21 third-octave bands, dB.
 *
 * Equation: tau = tau_airborne + Sum tau_stud, the first as in `bandTransmissionLoss` for leaves that differ as real ones
 * do (`unlikeLeaves`), with the modes of a single leaf by `resonantTransmission`; the studs as in `connectionTransmission`. When the driven leaf of a stud is not the last one, what it radiates goes on through the rest
 * of the wall: tau_stud is multiplied by tau(rest, from that leaf on)/tau(that leaf alone).
 * For a wall as built use this; `bandTransmissionLoss` is the bare transfer matrices without the modes of a single leaf,
 * without the spread of stiffness between leaves, and without studs.
 * Source and validity: see those functions and docs/models/frame-connection.md. Practical ceiling: it is the wall alone, and
 * what is measured in a laboratory or a building above 60 to 65 dB or so is bounded by flanking and leaks (common practice,
 * from memory): add those by `transmissionLossWithFlanking` and `compositeTransmissionLoss` before a higher figure is relied
 * on. No limit is built in; where nothing passes within the range of numbers, a band has 3077 dB.
 * Errors: ArgumentError for a wall without layers, a layer, air or field that cannot be, a missing list of connections or
 * a list of separate frames that is none, an absorption of the rim that is not from 0 to 1, a spread of stiffness that is not
 * from 0 up to 1, a number of samples that is not a whole number above 0, a tolerance of the bands that is not between 0 and 1, or a stud that is not fixed to two different
 * leaves, the outer one named first; Error when the sum over directions does not converge.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { type Layer, wallTransmissionLoss } from '@boothwright/acoustics/layered';
 * import { soundTransmissionClass } from '@boothwright/acoustics/ratings';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * const sheet: Layer = { kind: 'limp-sheet', surfaceMass: 8 };
 * const layers: Layer[] = [sheet, { kind: 'porous', thickness: 0.09, flowResistivity: 8000 }, sheet];
 * const field = { kind: 'finite', size: { width: 1.2, height: 2.1 } } as const;
 * const { total } = wallTransmissionLoss({ layers, connections: [] }, { air, field });
 * soundTransmissionClass(total).stc; // 47
 * ```
 */
export function wallTransmissionLoss(wall: Wall, conditions: WallConditions): WallTransmissionLoss {
  checkWall(wall);
  checkSurroundings(conditions);
  return lossesOfPanels(wall, conditions, [conditions.field])[0]!;
}

/** Surroundings of panels of one wall: `WallConditions` without the field, which is that of finite panels. */
export type PanelConditions = Omit<WallConditions, 'field'>;

/**
 * Transmission loss of one wall built in panels of several sizes, dB: what `wallTransmissionLoss` says of each of them,
 * in the order of `sizes`.
 *
 * The waves in the layers are those of an unlimited wall, so that they are followed once for all sizes; what a size
 * changes is the radiation, the standing waves in the cavities, the modes of a single leaf and the loss at the rim. Five sizes
 * take little longer than one.
 * Each result is within 0.02 dB of that of `wallTransmissionLoss`: the sum over directions is as fine as the most demanding
 * size needs, and rims whose losses are alike count as one. At low frequencies a small panel radiates less than a large one.
 * Source, validity and errors: see there. Errors besides: ArgumentError for a list of sizes that is none, or a width or
 * height that is not above 0.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { type Layer, wallTransmissionLosses } from '@boothwright/acoustics/layered';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * const layers: Layer[] = [{ kind: 'limp-sheet', surfaceMass: 8 }];
 * const sizes = [{ width: 1.2, height: 2.1 }, { width: 0.6, height: 2.1 }];
 * const [wide, narrow] = wallTransmissionLosses({ layers, connections: [] }, { air }, sizes);
 * narrow!.total[0] > wide!.total[0]; // true
 * ```
 */
export function wallTransmissionLosses(
  wall: Wall,
  conditions: PanelConditions,
  sizes: readonly PanelSize[],
): WallTransmissionLoss[] {
  checkWall(wall);
  if (!Array.isArray(sizes)) throw new ArgumentError('sizes of the panels', sizes, 'a list of widths and heights');
  const fields = sizes.map((size: PanelSize): Field => ({ kind: 'finite', size }));
  for (const field of fields) checkSurroundings({ ...conditions, field });
  return fields.length === 0 ? [] : lossesOfPanels(wall, conditions, fields);
}

/** One result for each of `fields`, which are of finite panels where there are several. */
function lossesOfPanels(wall: Wall, conditions: PanelConditions, fields: readonly Field[]): WallTransmissionLoss[] {
  const { air, rimAbsorption = defaultRimAbsorption } = conditions;
  const { stiffnessSpread = defaultStiffnessSpread } = conditions;
  const views = grainDirections(unlikeLeaves(wall.layers, air, stiffnessSpread)).map(({ layers, share }) => ({
    layers,
    share,
    studs: wall.connections.map((connection) => studOf(connection, layers, air)),
    single: singleLeaf(layers, air),
  }));
  const frames = [...views[0]!.studs, ...(wall.separateFrames ?? []).map((frame) => studOf(frame, wall.layers, air))];
  const panels = withSharedRates(
    fields.map((field) => {
      const whole = gapLosses(wall.layers, field, rimAbsorption, air);
      return { field, losses: lossesBetweenStuds(whole, frames, field, rimAbsorption, air) };
    }),
    wall.layers,
  );
  const parts = views.map(({ layers, studs }) => wallPart(layers, studs, panels));
  const means = bandMeans((hz) => {
    const airborne = panels.map(() => 0);
    const throughStuds = panels.map(() => 0);
    views.forEach(({ share, single }, view) => {
      const paths = wallPaths(parts[view]!, hz, air);
      const byModes = throughModes(parts[view]!, single, paths.airborne, hz, air);
      for (let panel = 0; panel < panels.length; panel++) {
        airborne[panel]! += share * (paths.airborne[panel]! + byModes[panel]!);
        throughStuds[panel]! += share * paths.studs[panel]!;
      }
    });
    return { values: wall.connections.length > 0 ? [...airborne, ...throughStuds] : airborne, converged: true };
  }, conditions);
  return panels.map((_, panel) => {
    const throughAir = means[panel]!;
    const throughStuds = means[panels.length + panel];
    return {
      total: lossesOfCoefficients(throughAir.map((mean, band) => mean + (throughStuds?.[band] ?? 0))),
      airborne: lossesOfCoefficients(throughAir),
      connections: throughStuds === undefined ? null : lossesOfCoefficients(throughStuds),
    };
  });
}

function checkWall(wall: Wall): void {
  if (typeof wall !== 'object' || wall === null) throw new ArgumentError('wall', wall, 'layers and connections');
  checkWallLayers(wall.layers);
  if (!Array.isArray(wall.connections)) {
    throw new ArgumentError('connections of the wall', wall.connections, 'a list of studs, empty for a wall without');
  }
  const frames: unknown = wall.separateFrames ?? [];
  if (!Array.isArray(frames)) throw new ArgumentError('separate frames of the wall', frames, 'a list of frames');
  wall.connections.forEach((stud, index) => {
    checkPlace(`connection ${index + 1}`, stud);
  });
  frames.forEach((frame, index) => {
    checkPlace(`separate frame ${index + 1}`, frame);
  });
}

function checkPlace(name: string, stud: unknown): void {
  if (typeof stud !== 'object' || stud === null) throw new ArgumentError(name, stud, 'between and spacing');
  const { between } = stud as { between?: unknown };
  if (!Array.isArray(between) || between.length !== 2 || !between.every(Number.isInteger)) {
    const found = Array.isArray(between) ? `[${between.join(', ')}]` : between;
    throw new ArgumentError(`between of ${name}`, found, 'the indices of two layers');
  }
}

/** The only leaf of a wall; undefined for a wall of none or several. */
function singleLeaf(layers: readonly Layer[], air: Air): Leaf | undefined {
  const index = layers.findIndex((layer) => layer.kind === 'plate' && isPresent(layer));
  if (index < 0) return undefined;
  const leaf = leafAt(layers, index, air);
  const rest = [...layers.slice(0, leaf.first), ...layers.slice(leaf.last + 1)];
  const isLeaf = (layer: Layer) => (layer.kind === 'plate' || layer.kind === 'limp-sheet') && isPresent(layer);
  return rest.some(isLeaf) ? undefined : leaf;
}

/**
 * What a single leaf lets through by its own modes beside the waves of the layers, by panel; a lining weakens it as much as
 * those.
 *
 * Below coincidence they get what the waves do not let through, so that a film so light that sound hardly notices it passes
 * no more than all. From coincidence on the same free waves are part of the wave picture, which the radiation factor of a small panel makes
 * too weak just above it: there only what the balance of modes has more counts.
 */
function throughModes(
  part: WallPart,
  leaf: Leaf | undefined,
  forced: readonly number[],
  hz: number,
  air: Air,
): readonly number[] {
  const { layers, panels } = part;
  if (leaf === undefined) return panels.map(() => 0);
  const inPlace = leafInPlace(leaf, hz, panels[0]!.field);
  const byModes = panels.map(({ field }) => resonantTransmission(inPlace, hz, air, field));
  if (byModes.every((share) => share === 0)) return byModes;
  const lined = leaf.last - leaf.first + 1 < layers.length;
  const bare = lined ? leafAlone(part, leaf.first, leaf.last, hz, air) : forced;
  return byModes.map((share, panel) => {
    const alone = bare[panel]!;
    const more = hz < leaf.coincidenceHz ? share * Math.max(0, 1 - alone) : Math.max(0, share - alone);
    return lined && share !== 0 ? (more * forced[panel]!) / alone : more;
  });
}
