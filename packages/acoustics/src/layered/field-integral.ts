import { type AdaptiveResult, integrateAdaptive } from '../math/integrate-adaptive.js';
import { angleBreaks, type Follow } from './angle-breaks.js';
import type { Field } from './layer.js';
import { type PreparedStack, type WaveState, waveState } from './prepared-stack.js';
import { lookUpRadiation, radiationTable } from './radiation-table.js';

/** Error allowed in a power summed over directions, as a share of it: 0.02 dB. */
export const angularTolerance = 0.005;
/** Evaluations of a stack after which one frequency counts as not converged. */
export const angularEvaluationLimit = 60_000;

/** Quantities of a wave at one angle, written into `out`; `state` holds the waves at the near side. */
export type Response = (cosine: number, state: WaveState, out: Float64Array) => void;

/**
 * Integrates responses over the directions of a diffuse field.
 *
 * Component 0 of `response` is a transmitted share of power: its integral is 2 Integral r [sigma q] q sin theta dtheta for
 * a finite panel (q = cos theta, sigma of `finiteRadiationFactor`), and Integral r dsin^2 / sin^2(limit) for a limited
 * field. Further components are squared amplitudes per squared incident pressure: their integral is over solid angle,
 * 2 Integral r sin theta dtheta, for an incident intensity of 1.
 */
export function integrateOverField(
  stack: PreparedStack,
  field: Field,
  follow: Follow,
  response: Response,
  components: number,
): AdaptiveResult {
  const state = waveState();
  const limit = field.kind === 'limited' ? (field.maximumAngleDeg * Math.PI) / 180 : Math.PI / 2;
  const from = field.kind === 'limited' ? Math.cos(limit) : 0;
  const table = field.kind === 'finite' ? radiationTable(stack.wavenumber, field.size) : undefined;
  const perSine = 2 / Math.sin(limit) ** 2;
  return integrateAdaptive(
    (cosine, out) => {
      follow(cosine, state);
      response(cosine, state, out);
      out[0]! *= table === undefined ? perSine * cosine : 2 * cosine * cosine * lookUpRadiation(table, cosine);
      for (let c = 1; c < components; c++) out[c]! *= perSine;
    },
    components,
    angleBreaks(stack, from, 1, follow, state),
    angularTolerance,
    angularEvaluationLimit,
  );
}

/**
 * Rejects a field that cannot exist.
 * Errors: RangeError that says what was found and what was expected.
 */
export function checkField(field: Field): void {
  if (field.kind === 'limited') {
    if (!(field.maximumAngleDeg > 0 && field.maximumAngleDeg <= 90)) {
      throw new RangeError(
        `limiting angle is ${field.maximumAngleDeg}, expected a number of degrees above 0 and up to 90`,
      );
    }
    return;
  }
  const { width, height } = field.size;
  if (!(width > 0 && height > 0 && Number.isFinite(width) && Number.isFinite(height))) {
    throw new RangeError(`panel is ${width} by ${height}, expected two numbers of metres above 0`);
  }
}
