import type { Air } from '../air/air-properties.js';
import { frictionOnly } from './air-gap-fluid.js';
import { expectConverged, transmissionsOf } from './diffuse-transmission-loss.js';
import { builtIn, leafInPlace } from './edge-loss.js';
import { integrateOverField } from './field-integral.js';
import { transmissionThroughStuds } from './frame-connection.js';
import { waveBlock } from './kernel-in-use.js';
import { type BuiltPanel, sharedMotions, withSharedRates } from './lateral-motion.js';
import type { Field, Layer } from './layer.js';
import type { Leaf } from './leaf.js';
import { type PreparedStack, stacksOfMotions } from './prepared-stack.js';
import { dampedByStuds, type Stud } from './studs-of-wall.js';
import { followTransmittedBlock, perIncidentPressures } from './transmission-coefficient.js';

/** A wall or the rest of one from a driven leaf on, in panels of several sizes; what no frequency changes. */
export type WallPart = {
  readonly layers: readonly Layer[];
  readonly studs: readonly Stud[];
  readonly panels: readonly BuiltPanel[];
  /** The same panels of a single leaf, which has no cavity. */
  readonly bare: readonly BuiltPanel[];
  /** What follows the leaf that a stud drives, that leaf first; undefined where there is nothing. */
  readonly behind: readonly (WallPart | undefined)[];
};

/** Transmission coefficients by the two kinds of path, by panel. */
export type PathCoefficients = { readonly airborne: readonly number[]; readonly studs: readonly number[] };

/** Takes a wall apart at the leaves that its studs drive. */
export function wallPart(layers: readonly Layer[], studs: readonly Stud[], panels: readonly BuiltPanel[]): WallPart {
  const behind = studs.map(({ driven }) =>
    driven.last === layers.length - 1 ? undefined : partFrom(driven.first, layers, studs, panels),
  );
  const bare = panels.map(({ field }) => ({ field, losses: frictionOnly }));
  return { layers, studs, panels, bare, behind };
}

function partFrom(
  first: number,
  layers: readonly Layer[],
  studs: readonly Stud[],
  panels: readonly BuiltPanel[],
): WallPart {
  const rest = layers.slice(first);
  const shifted = studs
    .filter(({ driving }) => driving.first >= first)
    .map(({ connection, driving, driven }) => ({
      connection,
      driving: shiftLeaf(driving, first),
      driven: shiftLeaf(driven, first),
    }));
  const restOf = panels.map(({ field, losses }) => ({
    field,
    losses: {
      ...losses,
      rimRates: (losses.rimRates ?? []).slice(first),
      bays: (losses.bays ?? []).slice(first),
    },
  }));
  return wallPart(rest, shifted, withSharedRates(restOf, rest));
}

function shiftLeaf(leaf: Leaf, by: number): Leaf {
  return { ...leaf, first: leaf.first - by, last: leaf.last - by };
}

/** Transmission coefficients of a wall at one frequency. */
export function wallPaths({ layers, studs, panels, behind }: WallPart, hz: number, air: Air): PathCoefficients {
  const throughStuds = panels.map(() => 0);
  if (studs.length === 0) {
    const { coefficients, converged } = transmissionsOf(layers, hz, air, panels);
    expectConverged(converged, hz);
    return { airborne: coefficients, studs: throughStuds };
  }
  const { field } = panels[0]!;
  const damped = dampedByStuds(builtIn(layers, hz, field), studs, hz);
  const freeVelocities = studs.map(() => panels.map(() => 0));
  const airborne = panels.map(() => 0);
  const motions = sharedMotions(panels, hz, air);
  const stacks = stacksOfMotions(damped, hz, air, motions);
  motions.forEach((motion, at) => {
    studs.forEach((stud, index) => {
      const values = airborneAndFreeVelocity(stacks[at]!, stud, hz, air, motion.fields);
      const ofStud = freeVelocities[index]!;
      motion.panels.forEach((panel, place) => {
        const weight = motion.weights[place]!;
        ofStud[panel]! += weight * values[motion.fields.length]!;
        if (index === 0) airborne[panel]! += weight * values[place]!;
      });
    });
  });
  studs.forEach(({ connection, driving, driven }, index) => {
    const [from, to] = [leafInPlace(driving, hz, field), leafInPlace(driven, hz, field)];
    const part = behind[index];
    const onward = part === undefined ? undefined : sharesOfRest(part, driven, hz, air);
    panels.forEach((panel, at) => {
      const velocity = freeVelocities[index]![at]!;
      const direct = transmissionThroughStuds(connection, from, to, velocity, hz, air, panel.field);
      throughStuds[at]! += direct * (onward?.[at] ?? 1);
    });
  });
  return { airborne, studs: throughStuds };
}

/** Transmission coefficient through the layers for each field, and last the mean-square velocity difference that drives a stud. */
function airborneAndFreeVelocity(
  stack: PreparedStack,
  { driving, driven }: Stud,
  hz: number,
  air: Air,
  fields: readonly Field[],
): readonly number[] {
  const marks = [driving, driven].map((leaf) => Math.max(...stack.operationOfLayer.slice(leaf.first, leaf.last + 1)));
  const { firstRe, firstIm, secondRe, secondIm } = waveBlock();
  const { attenuation } = stack;
  const { impedance } = air;
  const { values, converged } = integrateOverField(
    stack,
    fields,
    (count) => followTransmittedBlock(stack, count, marks[0], marks[1]),
    (count, out) => {
      perIncidentPressures(stack, count, out);
      for (let i = 0; i < count; i++) {
        // An incident intensity of 1 has a squared pressure of 2 rho c sin(theta) dtheta from each direction.
        const re = firstRe[i]! - secondRe[i]!;
        const im = firstIm[i]! - secondIm[i]!;
        const perPressure = out[i]!;
        out[count + i] = impedance * perPressure * (re * re + im * im);
        out[i] = perPressure * attenuation;
      }
    },
    2,
  );
  expectConverged(converged, hz);
  return values;
}

/** What the layers behind a driven leaf let through of what the leaf alone would radiate, by panel. */
function sharesOfRest(part: WallPart, { first, last }: Leaf, hz: number, air: Air): readonly number[] {
  const onward = wallPaths(part, hz, air);
  const alone = leafAlone(part, 0, last - first, hz, air);
  return alone.map((coefficient, panel) => (onward.airborne[panel]! + onward.studs[panel]!) / coefficient);
}

/** Transmission coefficients of the leaf from layer `first` to layer `last` without the others, by panel. */
export function leafAlone(
  { layers, bare }: WallPart,
  first: number,
  last: number,
  hz: number,
  air: Air,
): readonly number[] {
  const { coefficients, converged } = transmissionsOf(layers.slice(first, last + 1), hz, air, bare);
  expectConverged(converged, hz);
  return coefficients;
}
