// Bundles the command into one file that runs on Node 20 without any installed package.
// An argument names another place for it than dist/boothwright.mjs.
import { chmodSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const folder = path.dirname(fileURLToPath(import.meta.url));
const { version } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
const outfile = path.resolve(process.argv[2] ?? path.join(folder, 'dist/boothwright.mjs'));

await build({
  absWorkingDir: folder,
  entryPoints: ['src/main.ts'],
  outfile,
  bundle: true,
  minify: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  // Straight from the sources of the other packages: a stale build of one of them cannot slip in.
  conditions: ['boothwright-source'],
  define: { BOOTHWRIGHT_VERSION: JSON.stringify(version) },
  // The parser of options is CommonJS and asks for Node's modules with `require`, which an ES module lacks.
  banner: {
    js: "#!/usr/bin/env node\nimport{createRequire as boothwrightRequire}from'node:module';const require=boothwrightRequire(import.meta.url);",
  },
  legalComments: 'none',
  logLevel: 'warning',
});
chmodSync(outfile, 0o755);
