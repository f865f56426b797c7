import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { frictionOnly, losslessGaps } from '../../src/layered/air-gap-fluid.js';
import type { Layer } from '../../src/layered/layer.js';
import { type PreparedStack, prepareStack } from '../../src/layered/prepared-stack.js';
import { simdKernel } from '../../src/layered/simd-kernel.js';
import { typescriptKernel } from '../../src/layered/typescript-kernel.js';
import { blockSize } from '../../src/layered/wave-block.js';
import type { WaveKernel } from '../../src/layered/wave-kernel.js';
import { anyFrequency, anyStack, losslessStack } from './layer-arbitraries.js';
import { roomAir as air, stacks } from './stacks.js';

const plain = typescriptKernel();
const vector = simdKernel();

const columns = ['pressureRe', 'pressureIm', 'velocityRe', 'velocityIm'] as const;
const marked = ['firstRe', 'firstIm', 'secondRe', 'secondIm'] as const;

function run({ block, propagateBlock }: WaveKernel, stack: PreparedStack, cosines: readonly number[]) {
  const last = stack.operations.length - 1;
  cosines.forEach((cosine, i) => {
    block.cosine[i] = cosine;
    block.pressureRe[i] = 1;
    block.pressureIm[i] = 0;
    block.velocityRe[i] = cosine / air.impedance;
    block.velocityIm[i] = 0;
  });
  for (const name of marked) block[name].fill(0);
  propagateBlock(stack, cosines.length, 0, last);
  return [...columns, ...marked].map((name) => Array.from(block[name].subarray(0, cosines.length)));
}

/** Largest distance of the waves of both kernels, as a share of the larger part of pressure or of velocity. */
function apart(stack: PreparedStack, cosines: readonly number[]): number {
  const [one, other] = [run(plain, stack, cosines), run(vector!, stack, cosines)];
  let worst = 0;
  for (let pair = 0; pair < one.length; pair += 2) {
    for (let i = 0; i < cosines.length; i++) {
      const size = Math.hypot(one[pair]![i]!, one[pair + 1]![i]!);
      const distance = Math.hypot(one[pair]![i]! - other[pair]![i]!, one[pair + 1]![i]! - other[pair + 1]![i]!);
      if (!(distance <= 1e-300)) worst = Math.max(worst, Number.isNaN(distance) ? 1 : distance / size);
    }
  }
  return worst;
}

const angles = Array.from({ length: blockSize }, (_, i) => (i + 0.5) / blockSize);
const someAngles = fc.array(fc.double({ min: 1e-6, max: 1, noNaN: true }), { minLength: 1, maxLength: blockSize });

describe('simdKernel()', () => {
  it('exists in this engine', () => {
    expect(vector).toBeDefined();
  });

  it('agrees with the kernel in TypeScript to 1e-9 for walls of very different character', () => {
    for (const layers of Object.values(stacks)) {
      for (const losses of [frictionOnly, losslessGaps]) {
        for (const hz of [50, 333, 1234, 5000])
          expect(apart(prepareStack(layers, hz, air, losses), angles)).toBeLessThan(1e-9);
      }
    }
  });

  it('agrees to 1e-9 for any stack, angle and number of waves', () => {
    const check = (layers: readonly Layer[], hz: number, cosines: readonly number[]) => {
      expect(apart(prepareStack(layers, hz, air, frictionOnly), cosines)).toBeLessThan(1e-9);
    };
    fc.assert(fc.property(anyStack, anyFrequency, someAngles, check), { numRuns: 300 });
  });

  it('agrees to 1e-9 of the sum of the parts for stacks that lose nothing', () => {
    // At a sharp resonance the parts of a wave cancel almost completely, so its size says nothing about the digits.
    const check = (layers: readonly Layer[], hz: number, cosines: readonly number[]) => {
      const stack = prepareStack(layers, hz, air, losslessGaps);
      const [one, other] = [run(plain, stack, cosines), run(vector!, stack, cosines)];
      for (let c = 0; c < 2; c++) {
        for (let i = 0; i < cosines.length; i++) {
          const pressure = Math.hypot(one[0]![i]!, one[1]![i]!);
          const velocity = Math.hypot(one[2]![i]!, one[3]![i]!) * air.impedance;
          const scale = pressure + velocity;
          expect(Math.abs(one[c]![i]! - other[c]![i]!) / scale).toBeLessThan(1e-9);
          expect((Math.abs(one[c + 2]![i]! - other[c + 2]![i]!) * air.impedance) / scale).toBeLessThan(1e-9);
        }
      }
    };
    fc.assert(fc.property(losslessStack, anyFrequency, someAngles, check), { numRuns: 300 });
  });

  it('hands stacks that are too thick or have too many layers to the other kernel', () => {
    const deep: Layer[] = [{ kind: 'air-gap', thickness: 3000 }];
    const many = Array.from(
      { length: 50 },
      () => [stacks['single board']![0]!, { kind: 'air-gap', thickness: 0.01 }] as Layer[],
    ).flat();
    for (const layers of [deep, many]) {
      const stack = prepareStack(layers, 3000, air, losslessGaps);
      expect(run(vector!, stack, angles)).toEqual(run(plain, stack, angles));
    }
  });

  it('reaches grazing incidence itself', () => {
    const stack = prepareStack([{ kind: 'air-gap', thickness: 0.1 }], 1000, air, losslessGaps);
    for (const kernel of [plain, vector!]) {
      kernel.block.cosine[0] = 0;
      kernel.block.pressureRe[0] = 0;
      kernel.block.pressureIm[0] = 0;
      kernel.block.velocityRe[0] = 1;
      kernel.block.velocityIm[0] = 0;
      kernel.propagateBlock(stack, 1);
      // p' = j rho c k d v is the limit of j (Z0/q) sin(k d q) v.
      expect(kernel.block.pressureIm[0]! / (air.impedance * stack.depthPhase)).toBeCloseTo(1, 12);
      expect(kernel.block.velocityRe[0]).toBeCloseTo(1, 12);
    }
  });
});

describe('simdKernel() in another engine', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('is absent without WebAssembly', () => {
    vi.stubGlobal('WebAssembly', undefined);
    expect(simdKernel()).toBeUndefined();
  });

  it('is absent where compiling is forbidden or the instructions are unknown', () => {
    class Module {
      constructor() {
        throw new Error('refused by the content security policy');
      }
    }
    vi.stubGlobal('WebAssembly', { Module });
    expect(simdKernel()).toBeUndefined();
  });
});

describe('simd-kernel.generated.ts', () => {
  it('is what its source compiles to', async () => {
    const { waveKernelModule } = await import('../../../../scripts/write-wave-kernel.mjs' as string);
    const generated = new URL('../../src/layered/simd-kernel.generated.ts', import.meta.url);
    expect(readFileSync(generated, 'utf8')).toBe(await waveKernelModule());
  });
});
