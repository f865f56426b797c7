// Runs a TypeScript module of this checkout from a plain Node script: bundles it from the sources, then imports it.
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { root } from './ensure-installed.mjs';

/** The exports of a TypeScript file, named from the root of the checkout. */
export async function loadTypeScript(file) {
  const outfile = path.join(root, '.cache/scripts', `${file.replaceAll('/', '-')}-${process.pid}.mjs`);
  await build({
    entryPoints: [path.join(root, file)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    alias: Object.fromEntries(
      ['acoustics', 'language', 'assessment'].map((name) => [
        `@boothwright/${name}`,
        path.join(root, 'packages', name, 'src'),
      ]),
    ),
    logLevel: 'warning',
  });
  try {
    return await import(pathToFileURL(outfile).href);
  } finally {
    fs.rmSync(outfile, { force: true });
  }
}
