import type { Air } from '../air/air-properties.js';
import { checkField, integrateOverField } from './field-integral.js';
import { checkLayers, type Field, type Layer } from './layer.js';
import { prepareStack } from './prepared-stack.js';
import { followTransmittedWave, transmittedShare } from './transmission-coefficient.js';

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
 * practice. The panel stays infinite for the waves inside it: its own modes are left out, and with them the region of its
 * first few resonances.
 * `converged` is false when the error estimate of the integration did not come below 0.02 dB within its limit.
 */
export function diffuseTransmission(
  layers: readonly Layer[],
  hz: number,
  { air, field }: { readonly air: Air; readonly field: Field },
): DiffuseTransmission {
  checkLayers(layers);
  checkField(field);
  const stack = prepareStack(layers, hz, air);
  const { values, converged, evaluations } = integrateOverField(
    stack,
    field,
    (cosine, state) => followTransmittedWave(stack, cosine, state),
    (cosine, state, out) => {
      out[0] = transmittedShare(cosine, air.impedance, state);
    },
    1,
  );
  return { coefficient: values[0]!, converged, evaluations };
}

/**
 * Transmission loss of a stack in a diffuse field at single frequencies, dB; see `diffuseTransmission`.
 * Errors: Error when the sum over directions does not converge; it is never passed over in silence.
 */
export function diffuseTransmissionLoss(
  layers: readonly Layer[],
  hz: readonly number[],
  conditions: { readonly air: Air; readonly field: Field },
): number[] {
  return hz.map((frequency) => {
    const result = diffuseTransmission(layers, frequency, conditions);
    expectConverged(result.converged, frequency);
    return -10 * Math.log10(result.coefficient);
  });
}

/** Errors: Error that names the frequency. */
export function expectConverged(converged: boolean, hz: number): void {
  if (!converged) throw new Error(`sum over directions did not converge at ${hz} Hz, expected an error below 0.02 dB`);
}
