import type { Air } from '../air/air-properties.js';
import { thirdOctaveBands } from '../bands/bands.js';
import { defaultRimAbsorption, type GapLosses, rimLossRate } from './air-gap-fluid.js';
import { bandSamples, defaultSamplesPerBand } from './band-samples.js';
import type { BandConditions } from './band-transmission-loss.js';
import { expectConverged, gapLosses, transmissionWith } from './diffuse-transmission-loss.js';
import { checkField, integrateOverField } from './field-integral.js';
import { connectionTransmission, couplingLossFactor } from './frame-connection.js';
import { checkLayers, type Field, type Layer, type LineConnection, type Wall } from './layer.js';
import { type Leaf, leafAt } from './leaf.js';
import { prepareStack } from './prepared-stack.js';
import { followTransmittedBlock, perIncidentPressures } from './transmission-coefficient.js';
import { block } from './wave-block.js';

/** Transmission loss of a wall by band, whole and by its two kinds of path. */
export type WallTransmissionLoss = {
  /** dB in the 21 third-octave bands, airborne path and studs together. */
  readonly total: number[];
  /** dB, through the layers alone; studs only damp the leaves they are fixed to. */
  readonly airborne: number[];
  /** dB, through the studs alone; null for a wall without studs. */
  readonly connections: number[] | null;
};

/**
 * Transmission loss of a wall with studs in the 21 third-octave bands, dB.
 *
 * Equation: tau = tau_airborne + Sum tau_stud, the first as in `bandTransmissionLoss`, the studs as in
 * `connectionTransmission`. When the driven leaf of a stud is not the last one, what it radiates goes on through the rest
 * of the wall: tau_stud is multiplied by tau(rest, from that leaf on)/tau(that leaf alone).
 * Source and validity: see those functions and docs/models/frame-connection.md.
 * Errors: RangeError when a stud is not fixed to two different leaves, the outer one named first.
 */
export function wallTransmissionLoss(
  wall: Wall,
  { air, field, samplesPerBand = defaultSamplesPerBand, rimAbsorption = defaultRimAbsorption }: BandConditions,
): WallTransmissionLoss {
  checkLayers(wall.layers);
  checkField(field);
  const studs = wall.connections.map((connection) => studOf(connection, wall.layers, air));
  const losses = lossesBetweenStuds(
    gapLosses(wall.layers, field, rimAbsorption, air),
    studs,
    field,
    rimAbsorption,
    air,
  );
  const total: number[] = [];
  const airborne: number[] = [];
  const connections: number[] = [];
  for (const band of thirdOctaveBands) {
    const samples = bandSamples(band, samplesPerBand);
    let throughAir = 0;
    let throughStuds = 0;
    for (const hz of samples) {
      const paths = wallPaths(wall.layers, studs, hz, air, field, losses);
      throughAir += paths.airborne;
      throughStuds += paths.studs;
    }
    airborne.push(-10 * Math.log10(throughAir / samples.length));
    connections.push(-10 * Math.log10(throughStuds / samples.length));
    total.push(-10 * Math.log10((throughAir + throughStuds) / samples.length));
  }
  return { total, airborne, connections: studs.length > 0 ? connections : null };
}

type Stud = { readonly connection: LineConnection; readonly driving: Leaf; readonly driven: Leaf };

function studOf(connection: LineConnection, layers: readonly Layer[], air: Air): Stud {
  const { between, spacing, width } = connection;
  if (!(spacing > 0 && Number.isFinite(spacing))) {
    throw new RangeError(`spacing of studs is ${spacing}, expected a number of metres above 0`);
  }
  if (width !== undefined && !(width >= 0 && width <= spacing)) {
    throw new RangeError(`width of studs is ${width}, expected a number of metres from 0 to their spacing`);
  }
  const driving = leafAt(layers, between[0], air);
  const driven = leafAt(layers, between[1], air);
  if (driven.first <= driving.last) {
    throw new RangeError(
      `studs are fixed to layers ${between[0] + 1} and ${between[1] + 1}, expected layers of two different leaves, the outer one first`,
    );
  }
  return { connection, driving, driven };
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
  if (field.kind === 'limited') return losses;
  for (const { connection, driving, driven } of studs) {
    const height = Math.max(field.size.width, field.size.height);
    const rate = rimLossRate(rimAbsorption, connection.spacing, height, air);
    for (let i = driving.last + 1; i < driven.first; i++) rates[i] = Math.max(rates[i] ?? 0, rate);
  }
  return { ...losses, rimRates: rates };
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
  const stack = prepareStack(dampedByStuds(layers, studs, hz), hz, air, losses);
  let airborne = 0;
  let throughStuds = 0;
  for (const stud of studs) {
    const marks = [stud.driving, stud.driven].map((leaf) =>
      Math.max(...stack.operationOfLayer.slice(leaf.first, leaf.last + 1)),
    );
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
    airborne = values[0]!;
    const direct = connectionTransmission(stud.connection, stud.driving, stud.driven, values[1]!, hz, air, field);
    throughStuds += direct * shareOfRest(layers, studs, stud.driven, hz, air, field, losses);
  }
  return { airborne, studs: throughStuds };
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
  });
  const alone = transmissionWith(layers.slice(leaf.first, leaf.last + 1), hz, air, field, losses);
  expectConverged(alone.converged, hz);
  return (onward.airborne + onward.studs) / alone.coefficient;
}

function shiftLeaf(leaf: Leaf, by: number): Leaf {
  return { ...leaf, first: leaf.first - by, last: leaf.last - by };
}
