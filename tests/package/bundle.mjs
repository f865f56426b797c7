import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

/** Bundles a module text for a browser; fails on anything that only Node has. Answers its text and its size, gzipped. */
export async function bundle(contents, resolveDir) {
  const result = await build({
    stdin: { contents, resolveDir },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    logLevel: 'silent',
  });
  const [{ text }] = result.outputFiles;
  return { text, bytes: gzipSync(text, { level: 9 }).length };
}
