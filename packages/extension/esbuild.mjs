import { copyFileSync, existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const server = new URL('../language-server/dist/server.cjs', import.meta.url);
if (!existsSync(server)) throw new Error('Build packages/language-server first: its dist/server.cjs is missing');

await build({
  absWorkingDir: fileURLToPath(new URL('.', import.meta.url)),
  entryPoints: ['src/extension.ts'],
  outfile: 'dist/extension.cjs',
  bundle: true,
  minify: true,
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  external: ['vscode'],
  logLevel: 'warning',
});
copyFileSync(server, new URL('dist/server.cjs', import.meta.url));
