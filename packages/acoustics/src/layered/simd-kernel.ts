import { longestPhase } from './cross-fluid.js';
import type { PreparedStack } from './prepared-stack.js';
import { stride } from './prepared-stack.js';
import { compiledWaveKernel } from './simd-kernel.generated.js';
import { typescriptKernel } from './typescript-kernel.js';
import { blockBytes, blockIn } from './wave-block.js';
import type { WaveKernel } from './wave-kernel.js';

/** Operations for which the memory of the compiled kernel has room. */
const mostOperations = 64;

/** The parts of the engine's interface that are used here; engines without it are served as well. */
type Engine = {
  readonly WebAssembly?: {
    readonly Module: new (bytes: Uint8Array) => object;
    readonly Instance: new (module: object) => { readonly exports: unknown };
  };
  readonly atob?: (text: string) => string;
};

type Exports = {
  readonly memory: { readonly buffer: ArrayBuffer };
  readonly propagate: (operations: number, count: number, wavenumber: number, first: number, second: number) => void;
};

/**
 * The kernel that takes two waves at a time, compiled from `kernel/wave-kernel.as`. Undefined where the engine has no
 * WebAssembly or none of its vector instructions, or where a content security policy forbids it.
 */
export function simdKernel(): WaveKernel | undefined {
  const exports = instantiate(globalThis as Engine);
  if (exports === undefined) return undefined;
  const { propagate } = exports;
  const { buffer } = exports.memory;
  const block = blockIn(buffer);
  const kinds = new Int8Array(buffer, blockBytes, mostOperations);
  const constants = new Float64Array(buffer, blockBytes + mostOperations, stride * mostOperations);
  let plain: WaveKernel | undefined;
  /** The stack that stands in the memory. */
  let loaded: PreparedStack | undefined;

  function propagateBlock(stack: PreparedStack, count: number, first = -1, second = -1): void {
    const { length } = stack.operations;
    if (length > mostOperations || !(stack.depthPhase < longestPhase)) {
      // Rare beyond anything that is built; the other kernel does it in the same memory.
      plain ??= typescriptKernel(buffer);
      plain.propagateBlock(stack, count, first, second);
      return;
    }
    if (stack !== loaded) {
      for (let i = 0; i < length; i++) kinds[i] = stack.operations[i]!;
      for (let i = 0; i < stride * length; i++) constants[i] = stack.constants[i]!;
      loaded = stack;
    }
    propagate(length, count, stack.wavenumber, first, second);
  }

  return { block, propagateBlock };
}

function instantiate({ WebAssembly, atob }: Engine): Exports | undefined {
  if (WebAssembly === undefined || atob === undefined) return undefined;
  try {
    const bytes = Uint8Array.from(atob(compiledWaveKernel), (letter) => letter.charCodeAt(0));
    // The export types are those of the source.
    return new WebAssembly.Instance(new WebAssembly.Module(bytes)).exports as Exports;
  } catch {
    return undefined;
  }
}
