import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { frictionOnly, type GapLosses } from './air-gap-fluid.js';
import { waveBlock } from './kernel-in-use.js';
import { checkLayers, type Layer } from './layer.js';
import { type PreparedStack, prepareStack, type WaveState, waveState } from './prepared-stack.js';
import { propagate, propagateBlock, startTransmitted } from './propagate.js';

/**
 * Transmitted over incident power of a plane wave on an infinite stack with air on both sides, 0..1.
 *
 * Equation: tau = |2/(A + B q/(rho c) + C rho c/q + D)|^2, q = cos theta, with the elements of `stackMatrix`.
 * Source: common practice, see `transferMatrix`. The same from either side.
 */
export function transmissionCoefficient(
  layers: readonly Layer[],
  hz: number,
  sinTheta: number,
  air: Air,
  losses: GapLosses = frictionOnly,
): number {
  checkLayers(layers);
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('sine of the angle of incidence', sinTheta, { atLeast: 0, atMost: 1 });
  const cosine = Math.sqrt(Math.max(0, 1 - sinTheta * sinTheta));
  const state = waveState();
  const stack = prepareStack(layers, hz, air, losses);
  followTransmittedWave(stack, cosine, state);
  return transmittedShare(stack, cosine, state);
}

/** Fills `state` with the waves at the near side that go with a transmitted wave; see `attenuation` of the stack. */
export function followTransmittedWave(
  stack: PreparedStack,
  cosine: number,
  state: WaveState,
  marks?: readonly number[],
): void {
  state.pressureRe = 1;
  state.pressureIm = 0;
  state.velocityRe = cosine / stack.airImpedance;
  state.velocityIm = 0;
  propagate(stack, cosine, state, marks);
}

/** Transmitted over incident power. */
export function transmittedShare(stack: PreparedStack, cosine: number, state: WaveState): number {
  return stack.attenuation * perIncidentPressure(stack, cosine, state);
}

/** What brings squares of the waves in `state` to an incident pressure of 1; the incident wave is (p + v rho c/q)/2. */
export function perIncidentPressure(stack: PreparedStack, cosine: number, state: WaveState): number {
  const re = cosine * state.pressureRe + stack.airImpedance * state.velocityRe;
  const im = cosine * state.pressureIm + stack.airImpedance * state.velocityIm;
  return (4 * cosine * cosine) / (re * re + im * im);
}

/** `followTransmittedWave` for the first `count` cosines of the block. */
export function followTransmittedBlock(stack: PreparedStack, count: number, first?: number, second?: number): void {
  startTransmitted(stack.airImpedance, count);
  propagateBlock(stack, count, first, second);
}

/** `perIncidentPressure` of the first `count` waves of the block. */
export function perIncidentPressures(stack: PreparedStack, count: number, out: Float64Array): void {
  const { cosine, pressureRe, pressureIm, velocityRe, velocityIm } = waveBlock();
  const { airImpedance } = stack;
  for (let i = 0; i < count; i++) {
    const q = cosine[i]!;
    const re = q * pressureRe[i]! + airImpedance * velocityRe[i]!;
    const im = q * pressureIm[i]! + airImpedance * velocityIm[i]!;
    out[i] = (4 * q * q) / (re * re + im * im);
  }
}

/** `transmittedShare` of the first `count` waves of the block. */
export function transmittedShares(stack: PreparedStack, count: number, out: Float64Array): void {
  perIncidentPressures(stack, count, out);
  for (let i = 0; i < count; i++) out[i]! *= stack.attenuation;
}
