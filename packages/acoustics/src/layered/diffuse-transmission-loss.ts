import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { defaultRimAbsorption, type GapLosses, rimLossRate } from './air-gap-fluid.js';
import { checkSurroundings, checkWallLayers } from './check-wall.js';
import { builtIn } from './edge-loss.js';
import { integrateOverField } from './field-integral.js';
import { grainDirections } from './grain-directions.js';
import { type BuiltPanel, sharedMotions } from './lateral-motion.js';
import type { Field, Layer, PanelSize } from './layer.js';
import { lossOfCoefficient } from './loss-of-coefficient.js';
import { stacksOfMotions } from './prepared-stack.js';
import { followTransmittedBlock, transmittedShares } from './transmission-coefficient.js';

/** Surroundings of a wall: the air and the field that meets it. */
export type FieldConditions = {
  readonly air: Air;
  readonly field: Field;
  /** Absorption coefficient of the rim of the cavities, 0..1, for a panel of finite size; `defaultRimAbsorption` when absent. */
  readonly rimAbsorption?: number;
};

/** A transmission coefficient summed over directions, with an account of how it was reached. */
export type DiffuseTransmission = {
  readonly coefficient: number;
  readonly converged: boolean;
  readonly evaluations: number;
};

/**
 * Transmission coefficient of a stack in a diffuse field at one frequency.
 *
 * Equation: tau_d = 2 Integral_0^(pi/2) tau(theta) [sigma(k sin theta) cos theta] cos theta sin theta dtheta with the
 * radiation factor sigma of the receiving face for a finite panel; tau_d = Integral_0^limit tau dsin^2 / sin^2(limit) for
 * a limited field.
 * Source: M. Villot, C. Guigou, L. Gagliardini, J. Sound Vib. 245 (2001) 433 (from memory); limited field: common
 * practice. The panel stays infinite for the waves in its plates: its own modes are left out, which `wallTransmissionLoss`
 * adds for a single leaf. Cavities hold standing waves as `lateralMotion` says; air gaps are damped by friction and, in a
 * panel of finite size, at their rim; plates lose at their edges (`edgeLossFactor`); a grain is summed over its directions.
 * `converged` is false when the error estimate of the integration did not come below 0.02 dB within its limit.
 * Errors: ArgumentError for a list without layers, or a layer, air, field or frequency that cannot be.
 */
export function diffuseTransmission(
  layers: readonly Layer[],
  hz: number,
  conditions: FieldConditions,
): DiffuseTransmission {
  checkWallLayers(layers);
  checkSurroundings(conditions);
  const { air, field, rimAbsorption = defaultRimAbsorption } = conditions;
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  return transmissionWith(layers, hz, air, field, gapLosses(layers, field, rimAbsorption, air));
}

/** The same with stated losses of the air gaps. */
export function transmissionWith(
  layers: readonly Layer[],
  hz: number,
  air: Air,
  field: Field,
  losses: GapLosses,
): DiffuseTransmission {
  const { coefficients, ...rest } = transmissionsOf(layers, hz, air, [{ field, losses }]);
  return { coefficient: coefficients[0]!, ...rest };
}

/** The same for several panels of these layers; what does not depend on their size is worked out once. */
export function transmissionsOf(
  layers: readonly Layer[],
  hz: number,
  air: Air,
  panels: readonly BuiltPanel[],
): Omit<DiffuseTransmission, 'coefficient'> & { readonly coefficients: readonly number[] } {
  const motions = sharedMotions(panels, hz, air);
  const coefficients = panels.map(() => 0);
  let evaluations = 0;
  let converged = true;
  for (const direction of grainDirections(builtIn(layers, hz, panels[0]!.field))) {
    const stacks = stacksOfMotions(direction.layers, hz, air, motions);
    motions.forEach((motion, index) => {
      const stack = stacks[index]!;
      const part = integrateOverField(
        stack,
        motion.fields,
        (count) => followTransmittedBlock(stack, count),
        (count, out) => transmittedShares(stack, count, out),
        1,
      );
      motion.panels.forEach((panel, place) => {
        coefficients[panel]! += direction.share * motion.weights[place]! * part.values[place]!;
      });
      evaluations += part.evaluations;
      converged &&= part.converged;
    });
  }
  return { coefficients, converged, evaluations };
}

/** Friction in every gap, and the rim of a panel of finite size. */
export function gapLosses(layers: readonly Layer[], field: Field, rimAbsorption: number, air: Air): GapLosses {
  requireNumber('absorption of the rim', rimAbsorption, { atLeast: 0, atMost: 1 });
  const rate = field.kind === 'finite' ? rimLossRate(rimAbsorption, field.size.width, field.size.height, air) : 0;
  return { friction: true, rimRates: layers.map(() => rate), bays: baysOf(layers, field) };
}

/** The panel's own size for each layer that is shut in between two leaves. */
function baysOf(layers: readonly Layer[], field: Field): (PanelSize | undefined)[] {
  if (field.kind === 'limited') return [];
  const isLeaf = (layer: Layer) => layer.kind === 'plate' || layer.kind === 'limp-sheet';
  const first = layers.findIndex(isLeaf);
  const last = layers.findLastIndex(isLeaf);
  return layers.map((layer, index) => (index > first && index < last && !isLeaf(layer) ? field.size : undefined));
}

/**
 * Transmission loss of a stack in a diffuse field at single frequencies, dB; see `diffuseTransmission`.
 * Errors: Error when the sum over directions does not converge; it is never passed over in silence.
 */
export function diffuseTransmissionLoss(
  layers: readonly Layer[],
  hz: readonly number[],
  conditions: FieldConditions,
): TransmissionLoss {
  return hz.map((frequency) => {
    const result = diffuseTransmission(layers, frequency, conditions);
    expectConverged(result.converged, frequency);
    return lossOfCoefficient(result.coefficient);
  }) as readonly number[] as TransmissionLoss;
}

/** Errors: Error that names the frequency. */
export function expectConverged(converged: boolean, hz: number): void {
  if (!converged) throw new Error(`sum over directions did not converge at ${hz} Hz, expected an error below 0.02 dB`);
}
