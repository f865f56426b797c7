/**
 * Runs the extension in a real editor.
 *
 *     node tests/journeys/editor/run.mjs [--in-host] [--journey] [--report-page] [--steps=PATTERN] [--update-pictures]
 *
 * `--in-host`  tests inside the extension host, against the editor's own interface, of the oldest editor supported and of a recent one
 * `--journey`  the packaged extension as a user meets it, with pictures in `tests/journeys/out`
 * `--report-page`  reports of the examples in the same browser, without a network: requests, axe, paper and screen
 * `--steps=PATTERN`  of the journey only the steps whose title fits
 * `--update-pictures`  puts the pictures into `docs/pictures` too
 *
 * Without the first three, all. Prints one line of counts for each and fails when anything failed or nothing ran.
 */
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { editions, editorVersion, findChromium, installEditorHost } from '../../../scripts/editor-host.mjs';
import { runReportPage } from '../report-page/run-report-page.mjs';
import { runInHost } from './in-host/run-in-host.mjs';
import { runJourney } from './journey/run-journey.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../../..');
const out = path.join(root, 'tests/journeys/out');
const suites = ['--in-host', '--journey', '--report-page'];
const all = !suites.some((flag) => process.argv.includes(flag));
const wanted = (/** @type {string} */ flag) => all || process.argv.includes(flag);

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
  const inEditor = wanted('--in-host') || wanted('--journey');
  const updatePictures = process.argv.includes('--update-pictures');
  // A report needs nothing of the editor but its browser.
  const host = inEditor || findChromium() === undefined ? installEditorHost('oldest') : '';
  if (inEditor) build();
  if (wanted('--in-host')) {
    for (const edition of editions) {
      console.log(`in the ${edition} editor, ${editorVersion(installEditorHost(edition))}`);
      good = (await report('in-host', () => runInHost({ root, out, edition }))) && good;
    }
  }
  if (wanted('--journey')) {
    const pattern = process.argv.find((each) => each.startsWith('--steps='))?.slice('--steps='.length);
    const only = pattern === undefined ? undefined : new RegExp(pattern);
    good = (await report('journey', () => runJourney({ root, out, host, updatePictures, only }))) && good;
  }
  if (wanted('--report-page'))
    good = (await report('report-page', () => runReportPage({ root, out, updatePictures }))) && good;
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  good = false;
}
process.exit(good ? 0 : 1);
