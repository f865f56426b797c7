import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import { command, goTo } from './workbench.mjs';

/** @typedef {import('./steps.mjs').Context} Context */
/** @typedef {import('playwright-core').Page} Page */

const folds = ['asked', 'loss', 'ways', 'noise', 'decay', 'modes', 'air', 'mass'];

/** The frame inside the panel. @param {Page} page */
const frameOf = (page) => page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame');

/** One fold of the sheet. @param {Page} page @param {string} id */
const foldOf = (page, id) => frameOf(page).locator(`#folds > [data-fold="${id}"]`);

/** The line of a text in the example, counted from one. @param {Context} context @param {string} text */
function lineOf({ workspace }, text) {
  const lines = fs.readFileSync(path.join(workspace, 'tram-alcove.booth'), 'utf8').split('\n');
  const line = lines.findIndex((each) => each.includes(text));
  assert.ok(line >= 0, `\`${text}\` stands in the example`);
  return line + 1;
}

/** What a fold says beside its title. @param {Page} page @param {string} id @param {RegExp} says */
async function summarySays(page, id, says) {
  await foldOf(page, id).locator('.summary').filter({ hasText: says }).first().waitFor();
  return foldOf(page, id).locator('.summary').first().innerText();
}

/**
 * The live sheet beside the text.
 *
 * @type {[string, (context: Context) => Promise<void>][]}
 */
export const liveSheet = [
  [
    'the live sheet opens beside the text and tells the booth',
    async (context) => {
      const { page, picture } = context;
      await page.locator('.tab', { hasText: 'tram-alcove.booth' }).first().click();
      await goTo(page, lineOf(context, 'gypsum-board     12.5 mm'), 1);
      await command(page, 'Boothwright: Open Live Sheet');
      await frameOf(page)
        .locator('.verdict', { hasText: /requirements? missed/ })
        .waitFor();
      for (const id of folds) await foldOf(page, id).waitFor();
      await summarySays(page, 'loss', /STC \d+ \(\d+ to \d+\) · Rw \d+/);
      await picture('live-sheet');
      for (const id of folds.slice(1)) {
        await foldOf(page, id).evaluate((fold) => {
          scrollTo(
            0,
            scrollY + fold.getBoundingClientRect().top - (document.getElementById('head')?.offsetHeight ?? 0),
          );
        });
        await picture(`live-sheet-${id}`);
      }
    },
  ],
];
