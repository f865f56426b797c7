import { waveKernel } from './kernel-in-use.js';
import type { PreparedStack, WaveState } from './prepared-stack.js';

/** `WaveKernel.propagateBlock` of the kernel in use. */
export function propagateBlock(stack: PreparedStack, count: number, first = -1, second = -1): void {
  waveKernel().propagateBlock(stack, count, first, second);
}

/** Starts `count` transmitted waves of pressure 1 at the far side of a stack, at the cosines that stand in the block. */
export function startTransmitted(airImpedance: number, count: number): void {
  const { cosine, pressureRe, pressureIm, velocityRe, velocityIm } = waveKernel().block;
  const admittance = 1 / airImpedance;
  for (let i = 0; i < count; i++) {
    pressureRe[i] = 1;
    pressureIm[i] = 0;
    velocityRe[i] = cosine[i]! * admittance;
    velocityIm[i] = 0;
  }
}

/**
 * Follows a wave at cos(theta) = `at` through the stack, from `state` at the far side to `state` at the near side.
 * `marks` names up to two operations whose velocity is kept.
 */
export function propagate(stack: PreparedStack, at: number, state: WaveState, marks?: readonly number[]): void {
  const kernel = waveKernel();
  const { cosine, pressureRe, pressureIm, velocityRe, velocityIm, firstRe, firstIm, secondRe, secondIm } = kernel.block;
  cosine[0] = at;
  pressureRe[0] = state.pressureRe;
  pressureIm[0] = state.pressureIm;
  velocityRe[0] = state.velocityRe;
  velocityIm[0] = state.velocityIm;
  kernel.propagateBlock(stack, 1, marks?.[0], marks?.[1]);
  state.pressureRe = pressureRe[0]!;
  state.pressureIm = pressureIm[0]!;
  state.velocityRe = velocityRe[0]!;
  state.velocityIm = velocityIm[0]!;
  if (marks === undefined) return;
  state.markedRe[0] = firstRe[0]!;
  state.markedIm[0] = firstIm[0]!;
  state.markedRe[1] = secondRe[0]!;
  state.markedIm[1] = secondIm[0]!;
}
