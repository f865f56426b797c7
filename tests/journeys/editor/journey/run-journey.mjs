import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { launchBrowser } from '../browser.mjs';
import { freshDataFolder, installExtension, startEditorServer } from '../editor-server.mjs';
import { firstMinutes } from './first-minutes.mjs';
import { liveSheet } from './live-sheet.mjs';
import { mendRenameCompare } from './mend-rename-compare.mjs';
import { packageExtension } from './package-extension.mjs';
import { steps } from './steps.mjs';
import { inBrowser } from './web.mjs';

const size = { width: 1440, height: 900 };
/** For a slow machine; nothing waits longer than it must. */
const patience = 60_000;
const largestPackage = 2_000_000;
/** Those that the documentation shows. */
const documented = [
  'editor',
  'inlay-hints',
  'problem',
  'completion',
  'microphone',
  'air',
  'panels',
  'walkthrough',
  'question',
  'first-spec',
  'live-sheet-sound',
  'live-sheet-light',
  'since-commit',
  'quick-fix',
  'rename',
  'variants',
];

/** Makes a folder a repository of its own with one commit. @param {string} folder */
function commitAll(folder) {
  for (const words of [
    ['init', '--quiet'],
    ['add', '.'],
    ['commit', '--quiet', '--message', 'The booth as it was'],
  ]) {
    const who = ['-c', 'user.name=nobody', '-c', 'user.email=nobody@invalid'];
    const { status, stderr } = spawnSync('git', [...who, ...words], { cwd: folder, encoding: 'utf8' });
    assert.equal(status, 0, stderr);
  }
}

/**
 * Packs the extension, installs it into an editor that has never seen it, opens a copy of the example and does what
 * a user would do. Each step is one test; a step that fails leaves a picture of what was on the screen.
 *
 * @param {{ root: string, out: string, host: string, updatePictures: boolean, only?: RegExp }} options `only` picks steps by title; the first always runs
 * @returns {Promise<{ passed: number, failed: number }>}
 */
export async function runJourney({ root, out, host, updatePictures, only }) {
  const counts = { passed: 0, failed: 0 };
  /** @param {string} title @param {() => unknown} test @param {() => unknown} [onFailure] */
  const step = async (title, test, onFailure) => {
    try {
      await test();
      counts.passed += 1;
      console.log(`  ok    ${title}`);
    } catch (error) {
      counts.failed += 1;
      console.log(`  FAIL  ${title}\n        ${error instanceof Error ? error.message : String(error)}`);
      await onFailure?.();
    }
  };

  const { vsix, listing, bytes } = packageExtension({ root, out });
  await step('the package is small and holds what it must', () => {
    assert.ok(bytes < largestPackage, `${bytes} bytes`);
    for (const name of [
      'README.md',
      'CHANGELOG.md',
      'LICENSE',
      'extension.cjs',
      'server.cjs',
      'assess-thread.cjs',
      'extension.browser.js',
      'server.worker.js',
      'boothwright.mjs',
      'sheet.js',
      'sheet.css',
      'index.json',
      'pages.json',
      'own.md',
      'booth.tmLanguage.json',
    ]) {
      assert.ok(listing.toLowerCase().includes(name.toLowerCase()), `${name} is missing from:\n${listing}`);
    }
    assert.ok(!listing.includes('src/'), 'sources are packed');
  });

  const workspace = path.join(out, 'tram-alcove');
  fs.rmSync(workspace, { recursive: true, force: true });
  fs.cpSync(path.join(root, 'shared/examples/tram-alcove'), workspace, { recursive: true });

  commitAll(workspace);

  const data = freshDataFolder({
    'workbench.colorTheme': 'Default Dark Modern',
    'editor.fontSize': 13,
    'editor.hover.delay': 200,
    'editor.occurrencesHighlight': 'off',
    'editor.quickSuggestions': { other: 'off' },
    'files.autoSave': 'off',
    'workbench.layoutControl.enabled': false,
    'breadcrumbs.enabled': false,
  });
  installExtension({ host, data, vsix });
  const server = await startEditorServer({ host, data });
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage({ viewport: size });
    page.setDefaultTimeout(patience);
    /** @param {string} name @param {import('playwright-core').PageScreenshotOptions} [options] */
    const picture = async (name, options = {}) => {
      const file = path.join(out, `${name}.png`);
      await page.screenshot({ path: file, animations: 'disabled', ...options });
      if (!updatePictures || !documented.includes(name)) return;
      const pictures = path.join(root, 'docs/pictures');
      fs.mkdirSync(pictures, { recursive: true });
      fs.copyFileSync(file, path.join(pictures, `${name}.png`));
    };
    const context = { page, url: server.url, workspace, picture };
    let at = 0;
    for (const [title, test] of [...steps, ...firstMinutes, ...liveSheet, ...mendRenameCompare]) {
      at += 1;
      if (at > 1 && only?.test(title) === false) continue;
      const number = at;
      await step(
        title,
        () => test(context),
        () => page.screenshot({ path: path.join(out, `failed-${number}.png`) }),
      );
    }
  } finally {
    await browser.close();
    server.stop();
  }
  if (only?.test(inBrowser.title) !== false)
    await step(inBrowser.title, () =>
      inBrowser.run({ host, vsix, workspace, picture: path.join(out, 'web.png'), size }),
    );
  return counts;
}
