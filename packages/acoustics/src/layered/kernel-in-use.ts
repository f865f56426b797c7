import { simdKernel } from './simd-kernel.js';
import { typescriptKernel } from './typescript-kernel.js';
import type { WaveBlock } from './wave-block.js';
import type { WaveKernel } from './wave-kernel.js';

let made: WaveKernel | undefined;

/** The kernel that the engine can run best, made at the first call so that an import alone does nothing. */
export function waveKernel(): WaveKernel {
  made ??= simdKernel() ?? typescriptKernel();
  return made;
}

/** The block of `waveKernel`; fetched once before a loop. */
export function waveBlock(): WaveBlock {
  return waveKernel().block;
}
