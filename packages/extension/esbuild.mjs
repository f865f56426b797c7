import { execFileSync } from 'node:child_process';
import { copyFileSync, cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { packPages } from './pack-pages.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const dist = path.join(here, 'dist');
const servers = ['server.cjs', 'assess-thread.cjs', 'server.worker.js'].map((name) =>
  path.join(here, '../language-server/dist', name),
);
for (const server of servers)
  if (!existsSync(server)) throw new Error(`Build packages/language-server first: ${path.basename(server)} is missing`);

const shared = {
  absWorkingDir: here,
  bundle: true,
  minify: true,
  format: 'cjs',
  external: ['vscode'],
  legalComments: 'none',
  logLevel: 'warning',
};
await Promise.all([
  build({
    ...shared,
    entryPoints: ['src/node/extension.ts'],
    outfile: 'dist/extension.cjs',
    platform: 'node',
    target: 'node20',
  }),
  build({
    ...shared,
    entryPoints: ['src/browser/extension.ts'],
    outfile: 'dist/extension.browser.js',
    platform: 'browser',
    target: 'es2022',
  }),
  // What runs inside the live sheet.
  build({
    ...shared,
    entryPoints: ['webview/sheet.ts', 'webview/sheet.css'],
    outdir: 'dist',
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
  }),
]);
for (const server of servers) copyFileSync(server, path.join(dist, path.basename(server)));

// The command line, for tasks: from its sources, so that no stale build of it gets in.
execFileSync(process.execPath, [path.join(here, '../cli/esbuild.mjs'), path.join(dist, 'boothwright.mjs')]);

writeFileSync(path.join(dist, 'pages.json'), JSON.stringify(packPages(path.join(here, '../../docs'))));

// The examples, and a list of them, since an extension in a browser cannot list its own folders.
const examples = path.join(here, '../../shared/examples');
rmSync(path.join(dist, 'examples'), { recursive: true, force: true });
const listed = readdirSync(examples, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => {
    const files = readdirSync(path.join(examples, name));
    mkdirSync(path.join(dist, 'examples', name), { recursive: true });
    for (const file of files) cpSync(path.join(examples, name, file), path.join(dist, 'examples', name, file));
    const table = readFileSync(path.join(examples, 'README.md'), 'utf8');
    const shows = table.match(new RegExp(`\\| \\[${name}\\]\\([^)]*\\) \\| (.*?) \\|`))?.[1];
    if (shows === undefined) throw new Error(`shared/examples/README.md does not say what ${name} shows`);
    return { name, shows, main: `${name}.booth`, files };
  });
writeFileSync(path.join(dist, 'examples/index.json'), JSON.stringify(listed));
