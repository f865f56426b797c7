/**
 * Runs the extension in a real editor.
 *
 *     node tests/journeys/editor/run.mjs [--in-host] [--journey] [--steps=PATTERN] [--update-pictures]
 *
 * `--in-host`  tests inside the extension host, against the editor's own interface
 * `--journey`  the packaged extension as a user meets it, with pictures in `tests/journeys/out`
 * `--steps=PATTERN`  of the journey only the steps whose title fits
 * `--update-pictures`  puts the pictures into `docs/pictures` too
 *
 * Without the first two, both. Prints one line of counts for each and fails when anything failed or nothing ran.
 */
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { installEditorHost } from '../../../scripts/editor-host.mjs';
import { runInHost } from './in-host/run-in-host.mjs';
import { runJourney } from './journey/run-journey.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../../..');
const out = path.join(root, 'tests/journeys/out');
const both = !process.argv.includes('--in-host') && !process.argv.includes('--journey');
const wanted = (/** @type {string} */ flag) => both || process.argv.includes(flag);

/** @typedef {{ passed: number, failed: number }} Counts */

/** @param {string} name @param {() => Promise<Counts>} suite @returns {Promise<boolean>} */
async function report(name, suite) {
  /** @type {Counts} */
  let counts = { passed: 0, failed: 0 };
  try {
    counts = await suite();
    if (counts.passed + counts.failed === 0) throw new Error(`${name}: nothing ran`);
  } catch (error) {
    console.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
    counts.failed += 1;
  }
  console.log(`${name}: ${counts.passed} passed, ${counts.failed} failed`);
  return counts.failed === 0;
}

/** The extension is always built anew from the sources, so that no stale bundle is tested. */
function build() {
  for (const folder of ['language-server', 'extension']) {
    const built = spawnSync(process.execPath, ['esbuild.mjs'], {
      cwd: path.join(root, 'packages', folder),
      stdio: ['ignore', 'inherit', 'inherit'],
    });
    if (built.status !== 0) throw new Error(`packages/${folder} could not be built`);
  }
}

let good = true;
try {
  fs.mkdirSync(out, { recursive: true });
  const host = installEditorHost();
  build();
  if (wanted('--in-host')) good = (await report('in-host', () => runInHost({ root, out }))) && good;
  if (wanted('--journey')) {
    const pattern = process.argv.find((each) => each.startsWith('--steps='))?.slice('--steps='.length);
    const only = pattern === undefined ? undefined : new RegExp(pattern);
    const updatePictures = process.argv.includes('--update-pictures');
    good = (await report('journey', () => runJourney({ root, out, host, updatePictures, only }))) && good;
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  good = false;
}
process.exit(good ? 0 : 1);
