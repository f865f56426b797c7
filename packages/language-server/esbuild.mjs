import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** Every package is bundled from its sources, so that no stale build gets in. */
const shared = {
  absWorkingDir: fileURLToPath(new URL('.', import.meta.url)),
  bundle: true,
  minify: true,
  conditions: ['boothwright-source'],
  legalComments: 'none',
  logLevel: 'warning',
};

await Promise.all([
  build({
    ...shared,
    entryPoints: ['src/node/main.ts'],
    outfile: 'dist/server.cjs',
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    banner: { js: '#!/usr/bin/env node' },
  }),
  build({
    ...shared,
    entryPoints: ['src/browser/main.ts'],
    outfile: 'dist/server.worker.js',
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
  }),
]);
