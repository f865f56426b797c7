// Compiles packages/acoustics/kernel/wave-kernel.as into the source of the acoustics package; `--check` only compares.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import asc from 'assemblyscript/asc';

const source = new URL('../packages/acoustics/kernel/wave-kernel.as', import.meta.url);
const target = new URL('../packages/acoustics/src/layered/simd-kernel.generated.ts', import.meta.url);
/** A browser compiles no more than this at once without waiting. */
const mostBytes = 4096;

/** The text of the generated module. */
export async function waveKernelModule() {
  const { error, binary, stderr } = await asc.compileString(readFileSync(source, 'utf8'), {
    optimizeLevel: 3,
    runtime: 'stub',
    noAssert: true,
    enable: ['simd'],
    initialMemory: 1,
    maximumMemory: 1,
    // Keeps the first bytes for the layout that the source describes.
    memoryBase: 16384,
  });
  if (error !== null) throw new Error(`${error.message}\n${stderr}`);
  if (binary.length > mostBytes) throw new Error(`the kernel has ${binary.length} bytes, expected up to ${mostBytes}`);
  return `// Written by scripts/write-wave-kernel.mjs out of packages/acoustics/kernel/wave-kernel.as; change it there.

/** A WebAssembly module in base64. */
export const compiledWaveKernel =
  '${Buffer.from(binary).toString('base64')}';
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = await waveKernelModule();
  if (!process.argv.includes('--check')) writeFileSync(target, text);
  else if (readFileSync(target, 'utf8') !== text) {
    console.error(
      'simd-kernel.generated.ts differs from what its source compiles to; run scripts/write-wave-kernel.mjs',
    );
    process.exitCode = 1;
  }
}
