import fs from 'node:fs';
import path from 'node:path';
import { runTests } from '@vscode/test-electron';
import { build } from 'esbuild';

/**
 * Bundles the suites and runs them in the extension host. The executable given to `@vscode/test-electron` is the shim
 * beside this folder; with a desktop editor's executable in its place the same suites run there.
 *
 * @param {{ root: string, out: string, edition: 'oldest' | 'recent' }} options
 * @returns {Promise<{ passed: number, failed: number }>}
 */
export async function runInHost({ root, out, edition }) {
  const here = path.join(root, 'tests/journeys/editor');
  const bundle = path.join(out, 'in-host');
  fs.rmSync(bundle, { recursive: true, force: true });
  const suites = fs.readdirSync(path.join(here, 'in-host')).filter((name) => name.endsWith('.suite.ts'));
  await build({
    entryPoints: ['index.ts', ...suites].map((name) => path.join(here, 'in-host', name)),
    outdir: bundle,
    outExtension: { '.js': '.cjs' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    external: ['vscode', 'mocha'],
    logLevel: 'warning',
  });

  // The tests type into files; they get a copy.
  const workspace = path.join(out, 'in-host-workspace');
  fs.rmSync(workspace, { recursive: true, force: true });
  fs.cpSync(path.join(here, 'fixtures/workspace'), workspace, { recursive: true });

  const results = path.join(bundle, 'results.json');
  /** @type {unknown} */
  let refusal;
  try {
    await runTests({
      vscodeExecutablePath: path.join(here, 'editor-host.mjs'),
      extensionDevelopmentPath: path.join(root, 'packages/extension'),
      extensionTestsPath: path.join(bundle, 'index.cjs'),
      launchArgs: [workspace],
      extensionTestsEnv: { EDITOR_EDITION: edition },
    });
  } catch (error) {
    refusal = error;
  }
  if (!fs.existsSync(results)) throw refusal ?? new Error('The tests in the extension host left no report');
  const { stats, failures, passes } = JSON.parse(fs.readFileSync(results, 'utf8'));
  for (const { fullTitle } of passes) console.log(`  ok    ${fullTitle}`);
  for (const { fullTitle, err } of failures) console.log(`  FAIL  ${fullTitle}\n        ${err.message}`);
  return { passed: stats.passes, failed: stats.failures };
}
