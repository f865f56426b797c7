#!/usr/bin/env node
/**
 * Takes the arguments of a desktop editor's executable, as `@vscode/test-electron` passes them, and runs the named
 * tests in the extension host of the editor server instead. By hand:
 *
 *     node tests/journeys/editor/editor-host.mjs --extensionDevelopmentPath=packages/extension \
 *       --extensionTestsPath=tests/journeys/out/in-host/index.cjs tests/journeys/editor/fixtures/workspace
 *
 * `EDITOR_EDITION` in the environment names the editor, `oldest` or `recent`.
 */
import path from 'node:path';
import { editions, editorHostFolder } from '../../../scripts/editor-host.mjs';
import { launchBrowser } from './browser.mjs';
import { freshDataFolder, startEditorServer } from './editor-server.mjs';

/** For all suites together, on a slow machine; the suites themselves say sooner which answer did not come. */
const patience = 600_000;
const { VERBOSE: verbose } = process.env;
/** Complaints of the host itself about modules that these runs do without. */
const hostNoise = /spdlog|watchdog|Service Worker|Canceled|vsda|ERR_|punycode|authentication provider/;

/** @param {string} name */
function argument(name) {
  const start = `--${name}=`;
  const found = process.argv.find((each) => each.startsWith(start));
  if (found === undefined) throw new Error(`${start}… is missing`);
  return path.resolve(found.slice(start.length));
}

const extension = argument('extensionDevelopmentPath');
const tests = argument('extensionTestsPath');
const folder = process.argv.slice(2).find((each) => !each.startsWith('-'));
if (folder === undefined) throw new Error('The folder to open is missing');

const { EDITOR_EDITION: named } = process.env;
const edition = editions.find((name) => name === named) ?? 'oldest';
const server = await startEditorServer({ host: editorHostFolder(edition), data: freshDataFolder() });
let browser;
let code = 1;
try {
  browser = await launchBrowser();
  const page = await browser.newPage();
  /** @type {Promise<number>} */
  const ended = new Promise((resolve) => page.exposeFunction('codeAutomationExit', resolve));
  await page.exposeFunction('codeAutomationLog', (/** @type {string} */ type, /** @type {unknown[]} */ words) => {
    const line = words.join(' ');
    if (verbose || (type === 'error' && !hostNoise.test(line))) console.log(`[host ${type}] ${line}`);
  });
  const remote = (/** @type {string} */ file) => `vscode-remote://127.0.0.1:${server.port}${file}`;
  const payload = [
    ['extensionDevelopmentPath', remote(extension)],
    ['extensionTestsPath', remote(tests)],
  ];
  const query = new URLSearchParams({ folder: path.resolve(folder), payload: JSON.stringify(payload) });
  await page.goto(`${server.url}/?${query}`, { timeout: 60_000 });
  code = await Promise.race([
    ended,
    new Promise((_, reject) => {
      setTimeout(() => reject(new Error(`The tests did not end within ${patience / 1000} s`)), patience).unref();
    }),
  ]);
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
} finally {
  await browser?.close();
  server.stop();
}
process.exit(code === 0 ? 0 : 1);
