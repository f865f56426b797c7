import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

// `--outdir=FOLDER` puts the bundles somewhere else than into `dist`.
const outdir = process.argv.find((word) => word.startsWith('--outdir='))?.slice('--outdir='.length) ?? 'dist';

/** Every package is bundled from its sources, so that no stale build gets in. */
const shared = {
  absWorkingDir: fileURLToPath(new URL('.', import.meta.url)),
  bundle: true,
  minify: true,
  conditions: ['boothwright-source'],
  // Signs such as `·` and `²` stand as they are, not as escapes of three times the length.
  charset: 'utf8',
  legalComments: 'none',
  logLevel: 'warning',
};

await Promise.all([
  build({
    ...shared,
    entryPoints: ['src/node/main.ts'],
    outfile: `${outdir}/server.cjs`,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    banner: { js: '#!/usr/bin/env node' },
  }),
  // What works numbers out has a script of its own: the server starts without the physics, the thread without the protocol.
  build({
    ...shared,
    entryPoints: ['src/node/assess-thread.ts'],
    outfile: `${outdir}/assess-thread.cjs`,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
  }),
  build({
    ...shared,
    entryPoints: ['src/browser/main.ts'],
    outfile: `${outdir}/server.worker.js`,
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
  }),
]);
