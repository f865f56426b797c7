// Everything that must hold before a change lands, in one command on a fresh clone.
// Ends with a line `N passed, N failed`; exits non-zero when anything failed or nothing ran.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { ensureInstalled, root, turboEnvironment } from './ensure-installed.mjs';

ensureInstalled();
const skipEditor = process.argv.includes('--without-editor');
let passed = 0;
let failed = 0;
const failures = [];

function note(name, good, bad) {
  passed += good;
  failed += bad;
  if (bad > 0) failures.push(name);
}

function gate(name, command, args) {
  console.log(`\n== ${name}`);
  const result = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: turboEnvironment,
  });
  const ok = result.status === 0;
  note(name, ok ? 1 : 0, ok ? 0 : 1);
}

function unitTests() {
  console.log('\n== unit, published, robustness and command-line tests');
  const report = path.join(root, '.cache/vitest.json');
  fs.mkdirSync(path.dirname(report), { recursive: true });
  fs.rmSync(report, { force: true });
  const result = spawnSync(
    'npx',
    ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: turboEnvironment,
    },
  );
  if (!fs.existsSync(report)) return note('vitest wrote no report', 0, 1);
  const { numPassedTests, numFailedTests, numTotalTests } = JSON.parse(fs.readFileSync(report, 'utf8'));
  if (numTotalTests === 0) return note('vitest ran no test', 0, 1);
  note('vitest', numPassedTests, numFailedTests);
  // A suite that fails to load has no failed test of its own, yet it must not pass.
  if (result.status !== 0 && numFailedTests === 0) note('vitest', 0, 1);
}

function editorTests() {
  console.log('\n== tests in a real editor');
  const result = spawnSync(
    process.execPath,
    ['tests/journeys/editor/run.mjs', '--in-host', '--journey', '--report-page'],
    {
      cwd: root,
      stdio: ['ignore', 'pipe', 'inherit'],
      encoding: 'utf8',
    },
  );
  process.stdout.write(result.stdout ?? '');
  const counts = [...(result.stdout ?? '').matchAll(/^(?:in-host|journey|report-page): (\d+) passed, (\d+) failed$/gm)];
  // In the extension host twice: of the oldest editor and of a recent one.
  if (counts.length < 4) note('a suite in the editor did not report', 0, 1);
  for (const [, good, bad] of counts) note('editor', Number(good), Number(bad));
  if (result.status !== 0 && counts.every(([, , bad]) => bad === '0')) note('editor run', 0, 1);
}

function packageTests() {
  console.log('\n== the package as a user gets it');
  const result = spawnSync(process.execPath, ['tests/package/run.mjs'], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
    encoding: 'utf8',
  });
  process.stdout.write(result.stdout ?? '');
  const counts = /^package: (\d+) passed, (\d+) failed$/m.exec(result.stdout ?? '');
  if (counts === null) return note('the package did not report', 0, 1);
  note('package', Number(counts[1]), Number(counts[2]));
  if (result.status !== 0 && counts[2] === '0') note('package', 0, 1);
}

gate('lint and format', 'npx', ['biome', 'check', '.', '--error-on-warnings']);
gate('arrows between packages', 'npx', ['depcruise', '--config', '.dependency-cruiser.cjs', 'packages']);
gate('build', 'npx', ['turbo', 'run', 'build', '--output-logs=errors-only', '--no-update-notifier']);
gate('types', 'npx', ['tsc', '-p', 'tsconfig.json']);
gate('types of the live sheet', 'npx', ['tsc', '-p', 'packages/extension/webview']);
unitTests();
gate('pages of the library', process.execPath, ['scripts/docs.mjs']);
packageTests();
gate('changed predictions are named', process.execPath, ['scripts/predictions.mjs', '--check']);
if (!skipEditor) editorTests();

console.log('');
if (failures.length > 0) console.log(`Failed: ${[...new Set(failures)].join(', ')}`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);
