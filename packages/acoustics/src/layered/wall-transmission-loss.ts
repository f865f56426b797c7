import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { defaultRimAbsorption, frictionOnly, type GapLosses, rimLossRate } from './air-gap-fluid.js';
import { bandMeans } from './band-means.js';
import type { BandConditions } from './band-transmission-loss.js';
import { checkSurroundings, checkWallLayers } from './check-wall.js';
import { expectConverged, gapLosses, transmissionWith } from './diffuse-transmission-loss.js';
import { builtIn, leafInPlace } from './edge-loss.js';
import { integrateOverField } from './field-integral.js';
import { connectionTransmission, couplingLossFactor } from './frame-connection.js';
import { grainDirections } from './grain-directions.js';
import { block } from './kernel-in-use.js';
import { byLateralMotion } from './lateral-motion.js';
import type { Field, Layer, LineConnection, Wall } from './layer.js';
import { type Leaf, leafAt } from './leaf.js';
import { lossesOfCoefficients } from './loss-of-coefficient.js';
import { isPresent, type PreparedStack, prepareStack } from './prepared-stack.js';
import { resonantTransmission } from './resonant-transmission.js';
import { followTransmittedBlock, perIncidentPressures } from './transmission-coefficient.js';
import { defaultStiffnessSpread, unlikeLeaves } from './unlike-leaves.js';

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
 * from 0 up to 1, a number of samples that is not a whole number above 0, or a stud that is not fixed to two different
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
  const {
    air,
    field,
    samplesPerBand,
    rimAbsorption = defaultRimAbsorption,
    stiffnessSpread = defaultStiffnessSpread,
  } = conditions;
  const views = grainDirections(unlikeLeaves(wall.layers, air, stiffnessSpread)).map(({ layers, share }) => ({
    layers,
    share,
    studs: wall.connections.map((connection) => studOf(connection, layers, air)),
    single: singleLeaf(layers, air),
  }));
  const frames = [...views[0]!.studs, ...(wall.separateFrames ?? []).map((frame) => studOf(frame, wall.layers, air))];
  const whole = gapLosses(wall.layers, field, rimAbsorption, air);
  const losses = lossesBetweenStuds(whole, frames, field, rimAbsorption, air);
  const means = bandMeans((hz) => {
    let airborne = 0;
    let throughStuds = 0;
    for (const { layers, share, studs, single } of views) {
      const paths = wallPaths(layers, studs, hz, air, field, losses);
      airborne += share * (paths.airborne + throughModes(layers, single, paths.airborne, hz, air, field));
      throughStuds += share * paths.studs;
    }
    return { values: wall.connections.length > 0 ? [airborne, throughStuds] : [airborne], converged: true };
  }, samplesPerBand);
  const [throughAir, throughStuds] = [means[0]!, means[1]];
  return {
    total: lossesOfCoefficients(throughAir.map((mean, band) => mean + (throughStuds?.[band] ?? 0))),
    airborne: lossesOfCoefficients(throughAir),
    connections: throughStuds === undefined ? null : lossesOfCoefficients(throughStuds),
  };
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

type Stud = { readonly connection: LineConnection; readonly driving: Leaf; readonly driven: Leaf };

function studOf(connection: LineConnection, layers: readonly Layer[], air: Air): Stud {
  const { between, spacing, width, compliance } = connection;
  requireNumber('spacing of studs', spacing, { above: 0, unit: 'metres' });
  if (width !== undefined) requireNumber('width of studs', width, { atLeast: 0, atMost: spacing, unit: 'metres' });
  const { screwSpacing } = connection;
  if (screwSpacing !== undefined) requireNumber('spacing of screws', screwSpacing, { above: 0, unit: 'metres' });
  if (compliance !== undefined) requireNumber('compliance of studs', compliance, { atLeast: 0, unit: 'm2/N' });
  const driving = leafAt(layers, between[0], air);
  const driven = leafAt(layers, between[1], air);
  if (driven.first <= driving.last) {
    throw new ArgumentError(
      'place of the studs',
      `between layers ${between[0] + 1} and ${between[1] + 1}`,
      'layers of two different leaves, the outer one first',
    );
  }
  return { connection, driving, driven };
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
 * What a single leaf lets through by its own modes beside the waves of the layers; a lining weakens it as much as those.
 *
 * Below coincidence they get what the waves do not let through, so that a film so light that sound hardly notices it passes
 * no more than all. From coincidence on the same free waves are part of the wave picture, which the radiation factor of a small panel makes
 * too weak just above it: there only what the balance of modes has more counts.
 */
function throughModes(
  layers: readonly Layer[],
  leaf: Leaf | undefined,
  forced: number,
  hz: number,
  air: Air,
  field: Field,
): number {
  if (leaf === undefined || field.kind === 'limited') return 0;
  const byModes = resonantTransmission(leafInPlace(leaf, hz, field), hz, air, field);
  if (byModes === 0) return 0;
  const more = (alone: number) =>
    hz < leaf.coincidenceHz ? byModes * Math.max(0, 1 - alone) : Math.max(0, byModes - alone);
  if (leaf.last - leaf.first + 1 === layers.length) return more(forced);
  const alone = transmissionWith(layers.slice(leaf.first, leaf.last + 1), hz, air, field, frictionOnly);
  expectConverged(alone.converged, hz);
  return (more(alone.coefficient) * forced) / alone.coefficient;
}

/** Studs divide the cavity between their leaves into bays, which have more rim for their area. */
function lossesBetweenStuds(
  losses: GapLosses,
  studs: readonly Stud[],
  field: Field,
  rimAbsorption: number,
  air: Air,
): GapLosses {
  const rates = Array.from(losses.rimRates ?? []);
  const bays = Array.from(losses.bays ?? []);
  if (field.kind === 'limited') return losses;
  for (const { connection, driving, driven } of studs) {
    const height = Math.max(field.size.width, field.size.height);
    const rate = rimLossRate(rimAbsorption, connection.spacing, height, air);
    for (let i = driving.last + 1; i < driven.first; i++) {
      rates[i] = Math.max(rates[i] ?? 0, rate);
      bays[i] = { width: Math.min(connection.spacing, bays[i]?.width ?? connection.spacing), height };
    }
  }
  return { ...losses, rimRates: rates, bays };
}

/** Transmission coefficients of a wall by its two kinds of path at one frequency. */
function wallPaths(
  layers: readonly Layer[],
  studs: readonly Stud[],
  hz: number,
  air: Air,
  field: Field,
  losses: GapLosses,
): { airborne: number; studs: number } {
  if (studs.length === 0) {
    const { coefficient, converged } = transmissionWith(layers, hz, air, field, losses);
    expectConverged(converged, hz);
    return { airborne: coefficient, studs: 0 };
  }
  const damped = dampedByStuds(builtIn(layers, hz, field), studs, hz);
  const freeVelocities = studs.map(() => 0);
  let airborne = 0;
  for (const motion of byLateralMotion(losses, hz, air)) {
    const stack = prepareStack(damped, hz, air, motion.losses);
    studs.forEach((stud, index) => {
      const [through, freeVelocity] = airborneAndFreeVelocity(stack, stud, hz, air, field);
      freeVelocities[index]! += motion.weight * freeVelocity;
      if (index === 0) airborne += motion.weight * through;
    });
  }
  let throughStuds = 0;
  studs.forEach(({ connection, driving, driven }, index) => {
    const [from, to] = [leafInPlace(driving, hz, field), leafInPlace(driven, hz, field)];
    const direct = connectionTransmission(connection, from, to, freeVelocities[index]!, hz, air, field);
    throughStuds += direct * shareOfRest(layers, studs, driven, hz, air, field, losses);
  });
  return { airborne, studs: throughStuds };
}

/** Transmission coefficient through the layers, and the mean-square velocity difference that drives a stud. */
function airborneAndFreeVelocity(
  stack: PreparedStack,
  { driving, driven }: Stud,
  hz: number,
  air: Air,
  field: Field,
): [number, number] {
  const marks = [driving, driven].map((leaf) => Math.max(...stack.operationOfLayer.slice(leaf.first, leaf.last + 1)));
  const { values, converged } = integrateOverField(
    stack,
    field,
    (count) => followTransmittedBlock(stack, count, marks[0], marks[1]),
    (count, out) => {
      perIncidentPressures(stack, count, out);
      for (let i = 0; i < count; i++) {
        // An incident intensity of 1 has a squared pressure of 2 rho c sin(theta) dtheta from each direction.
        const re = block.firstRe[i]! - block.secondRe[i]!;
        const im = block.firstIm[i]! - block.secondIm[i]!;
        out[count + i] = air.impedance * out[i]! * (re * re + im * im);
        out[i]! *= stack.attenuation;
      }
    },
    2,
  );
  expectConverged(converged, hz);
  return [values[0]!, values[1]!];
}

/** Layers whose plates also lose the energy that the studs carry off. */
function dampedByStuds(layers: readonly Layer[], studs: readonly Stud[], hz: number): readonly Layer[] {
  const damped = Array.from(layers);
  const add = (leaf: Leaf, loss: number) => {
    for (let i = leaf.first; i <= leaf.last; i++) {
      const layer = damped[i]!;
      if (layer.kind === 'plate') damped[i] = { ...layer, lossFactor: layer.lossFactor + loss };
    }
  };
  for (const { connection, driving, driven } of studs) {
    add(driving, couplingLossFactor(driving, driven, connection, hz));
    add(driven, couplingLossFactor(driven, driving, connection, hz));
  }
  return damped;
}

/** What the layers behind a driven leaf let through of what the leaf alone would radiate. */
function shareOfRest(
  layers: readonly Layer[],
  studs: readonly Stud[],
  leaf: Leaf,
  hz: number,
  air: Air,
  field: Field,
  losses: GapLosses,
): number {
  const rest = layers.slice(leaf.first);
  if (leaf.last === layers.length - 1) return 1;
  const shifted = studs
    .filter((stud) => stud.driving.first >= leaf.first)
    .map((stud) => ({
      connection: stud.connection,
      driving: shiftLeaf(stud.driving, leaf.first),
      driven: shiftLeaf(stud.driven, leaf.first),
    }));
  const onward = wallPaths(rest, shifted, hz, air, field, {
    ...losses,
    rimRates: (losses.rimRates ?? []).slice(leaf.first),
    bays: (losses.bays ?? []).slice(leaf.first),
  });
  const alone = transmissionWith(layers.slice(leaf.first, leaf.last + 1), hz, air, field, frictionOnly);
  expectConverged(alone.converged, hz);
  return (onward.airborne + onward.studs) / alone.coefficient;
}

function shiftLeaf(leaf: Leaf, by: number): Leaf {
  return { ...leaf, first: leaf.first - by, last: leaf.last - by };
}
