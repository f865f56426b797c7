import { thirdOctaveBands } from '../bands/bands.js';
import { ArgumentError } from '../errors/argument-error.js';
import { gaussLegendre, type QuadratureRule } from '../math/gauss-legendre.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { defaultRimAbsorption } from './air-gap-fluid.js';
import { bandSamples } from './band-samples.js';
import { checkSurroundings, checkWallLayers } from './check-wall.js';
import { type FieldConditions, gapLosses } from './diffuse-transmission-loss.js';
import { builtIn } from './edge-loss.js';
import { directionRange } from './field-integral.js';
import { waveBlock } from './kernel-in-use.js';
import { byLateralMotion } from './lateral-motion.js';
import type { Layer } from './layer.js';
import { lossOfCoefficient } from './loss-of-coefficient.js';
import { prepareStack } from './prepared-stack.js';
import { lookUpRadiation, radiationTable } from './radiation-table.js';
import { followTransmittedBlock, transmittedShares } from './transmission-coefficient.js';
import { blockSize } from './wave-block.js';

/** How many frequencies stand for a band and how many angles for a diffuse field. */
export type FixedRule = {
  readonly samplesPerBand: number;
  /** Points of the Gauss-Legendre rule in cos(theta). */
  readonly angles: number;
};

/**
 * Transmission loss of a stack in the 21 third-octave bands by a rule without error control, dB.
 *
 * Equation: as in `bandTransmissionLoss`, with the integral over cos(theta) by a Gauss-Legendre rule of `angles` points at
 * each of the `bandSamples`.
 * Use: the same work for every wall, for comparison with other programs that sum by such a rule, and for benchmarks. For
 * predictions take `bandTransmissionLoss`: a rule of 64 angles can miss a sharp resonance by more than 1 dB, which it cannot,
 * and on the well damped walls of docs/benchmarks.md it takes about 0.3 of the time of 8 samples a band and 64 angles.
 * Errors: ArgumentError for a list without layers, or a layer, air, field, absorption of the rim or count that cannot be.
 */
export function fixedRuleTransmissionLoss(
  layers: readonly Layer[],
  conditions: FieldConditions,
  { samplesPerBand, angles }: FixedRule,
): TransmissionLoss {
  if (!(Number.isInteger(angles) && angles > 0)) {
    throw new ArgumentError('number of angles', angles, 'a whole number above 0');
  }
  checkWallLayers(layers);
  checkSurroundings(conditions);
  const { air, field, rimAbsorption = defaultRimAbsorption } = conditions;
  const losses = gapLosses(layers, field, rimAbsorption, air);
  const { from, perSine } = directionRange(field);
  const half = (1 - from) / 2;
  const rule = ruleOf(angles);
  const cosines = Float64Array.from(rule.nodes, (x) => from + half * (1 + x));
  const weights = Float64Array.from(rule.weights, (weight, i) => half * weight * perSine * cosines[i]!);
  const shares = new Float64Array(blockSize);
  const { cosine } = waveBlock();
  return asTransmissionLoss(
    thirdOctaveBands.map((band) => {
      let sum = 0;
      for (const hz of bandSamples(band, samplesPerBand)) {
        const table =
          field.kind === 'finite' ? radiationTable((2 * Math.PI * hz) / air.soundSpeed, field.size) : undefined;
        const inPlace = builtIn(layers, hz, field);
        for (const motion of byLateralMotion(losses, hz, air)) {
          const stack = prepareStack(inPlace, hz, air, motion.losses);
          for (let start = 0; start < angles; start += blockSize) {
            const count = Math.min(blockSize, angles - start);
            for (let i = 0; i < count; i++) cosine[i] = cosines[start + i]!;
            followTransmittedBlock(stack, count);
            transmittedShares(stack, count, shares);
            for (let i = 0; i < count; i++) {
              const q = cosines[start + i]!;
              const radiated = table === undefined ? 1 : q * lookUpRadiation(table, q);
              sum += motion.weight * weights[start + i]! * shares[i]! * radiated;
            }
          }
        }
      }
      return lossOfCoefficient(sum / samplesPerBand);
    }),
  );
}

const rules = new Map<number, QuadratureRule>();

/** Rules are made once: 64 points cost as much as several frequencies. The store holds values of a pure function. */
function ruleOf(count: number): QuadratureRule {
  const known = rules.get(count);
  if (known !== undefined) return known;
  const rule = gaussLegendre(count);
  if (rules.size < mostRules) rules.set(count, rule);
  return rule;
}

const mostRules = 16;
