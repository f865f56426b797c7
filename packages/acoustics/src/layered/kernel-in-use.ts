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

/** The block of `waveKernel`. */
export const block: WaveBlock = {
  get cosine() {
    return waveKernel().block.cosine;
  },
  get pressureRe() {
    return waveKernel().block.pressureRe;
  },
  get pressureIm() {
    return waveKernel().block.pressureIm;
  },
  get velocityRe() {
    return waveKernel().block.velocityRe;
  },
  get velocityIm() {
    return waveKernel().block.velocityIm;
  },
  get firstRe() {
    return waveKernel().block.firstRe;
  },
  get firstIm() {
    return waveKernel().block.firstIm;
  },
  get secondRe() {
    return waveKernel().block.secondRe;
  },
  get secondIm() {
    return waveKernel().block.secondIm;
  },
};
