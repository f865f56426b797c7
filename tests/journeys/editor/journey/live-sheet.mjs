import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import { crowded, foldOf, frameOf, graveFindings, timeKeys, told } from './sheet-page.mjs';
import { command, goTo } from './workbench.mjs';

/** @typedef {import('./steps.mjs').Context} Context */
/** @typedef {import('playwright-core').Page} Page */

const folds = ['asked', 'since', 'loss', 'ways', 'noise', 'decay', 'modes', 'air', 'mass'];
const board = 'gypsum-board     12.5 mm';
/** @type {{ old: string, new: string }} */
const reviewedChange = JSON.parse(
  fs.readFileSync(new URL('../../fixtures/reviewed-change.json', import.meta.url), 'utf8'),
);

/** The line of a text in the example, counted from one. @param {Context} context @param {string} text */
function lineOf(context, text) {
  return placeOf(context, text).line;
}

/** Where a text in the example stands, counted from one. @param {Context} context @param {string} text */
function placeOf({ workspace }, text) {
  const lines = fs.readFileSync(path.join(workspace, 'tram-alcove.booth'), 'utf8').split('\n');
  const line = lines.findIndex((each) => each.includes(text));
  assert.ok(line >= 0, `\`${text}\` stands in the example`);
  return { line: line + 1, column: /** @type {string} */ (lines[line]).indexOf(text) + 1 };
}

/** What a fold says beside its title, once it fits. @param {Page} page @param {string} id @param {RegExp} says */
async function summarySays(page, id, says) {
  const summary = foldOf(page, id).locator('> summary .summary').filter({ hasText: says });
  await summary.waitFor();
  return summary.textContent();
}

/** @param {Page} page @param {number} line */
const cursorIsOn = (page, line) => page.waitForSelector(`#status\\.editor\\.selection:has-text("Ln ${line}, ")`);

/** Scrolls a fold to the top. @param {Page} page @param {string} id */
const scrollTo = (page, id) =>
  foldOf(page, id).evaluate((fold) => {
    const head = document.getElementById('head')?.offsetHeight ?? 0;
    document.documentElement.scrollTop += fold.getBoundingClientRect().top - head;
  });

/** @param {Page} page @param {string} name @param {string} className */
async function chooseTheme(page, name, className) {
  const input = page.locator('.quick-input-widget:visible input.input').first();
  // An editor that is busy may swallow the keys.
  for (let left = 6; left > 0 && !(await input.isVisible()); left--) {
    await page.locator('.tab', { hasText: 'tram-alcove.booth' }).first().click();
    await page.keyboard.press('Control+k');
    await page.keyboard.press('Control+t');
    await input.waitFor({ timeout: 6_000 }).catch(() => undefined);
  }
  await input.fill(name);
  await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: name }).waitFor();
  await page.keyboard.press('Enter');
  await page.waitForSelector(`.monaco-workbench.${className}`);
}

/** Puts the original text back. @param {Page} page */
async function takeBack(page) {
  await page.locator('.tab', { hasText: 'tram-alcove.booth' }).first().click();
  await command(page, 'File: Revert File');
  // A first spec that was never saved may stand beside it.
  await page.locator('.tab.dirty', { hasText: 'tram-alcove.booth' }).waitFor({ state: 'detached' });
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
      await goTo(page, lineOf(context, board), 1);
      await command(page, 'Boothwright: Open Live Sheet');
      await frameOf(page)
        .locator('.verdict', { hasText: /requirements? missed/ })
        .waitFor();
      for (const id of folds) await foldOf(page, id).waitFor();
      await summarySays(page, 'loss', /STC \d+ \(\d+ to \d+\) · Rw \d+/);
      await picture('live-sheet');
      await scrollTo(page, 'loss');
      await picture('live-sheet-sound');
      await scrollTo(page, 'modes');
      await picture('live-sheet-modes');
      await scrollTo(page, 'air');
      await picture('live-sheet-air');
      await scrollTo(page, 'mass');
      await picture('live-sheet-mass');
      await scrollTo(page, 'asked');
    },
  ],
  [
    'the live sheet has new numbers soon after a key, and follows the cursor',
    async (context) => {
      const { page } = context;
      const line = lineOf(context, board);
      const before = await summarySays(page, 'loss', /STC/);
      await goTo(page, line, `  ${board}`.indexOf('.5') + 3);
      // Each key makes a thickness that was not there before.
      const times = await timeKeys(page, [...'678912340671234']);
      console.log(
        `        key to text: ${told(times.editor)}; key to sheet: ${told(times.sheet)} (${times.sheet.length} keys)`,
      );
      await goTo(page, lineOf(context, 'softwood-plywood 18 mm'), 4);
      assert.notEqual(await summarySays(page, 'loss', /STC 27/), before);
      await foldOf(page, 'loss').locator('h2', { hasText: 'deck' }).waitFor();
    },
  ],
  [
    'what changed since the last commit stands in the live sheet and above the booth',
    async (context) => {
      const { page, picture } = context;
      await takeBack(page);
      await foldOf(page, 'since').locator('> summary .summary', { hasText: 'No difference' }).waitFor();
      // The change that docs/reviewing-a-change.md follows, typed over figure by figure.
      const figure = reviewedChange.old.indexOf('10');
      assert.equal(reviewedChange.new, reviewedChange.old.replace('10', '15'));
      const { line, column } = placeOf(context, reviewedChange.old);
      await goTo(page, line, column + figure + '10'.length);
      await page.keyboard.press('Shift+ArrowLeft');
      await page.keyboard.press('Shift+ArrowLeft');
      await page.keyboard.type('15');
      await foldOf(page, 'since').locator('h3', { hasText: 'Changed in the text' }).waitFor();
      const booth = lineOf(context, 'booth alcove');
      await goTo(page, booth, 1);
      const lens = page.locator('.codelens-decoration a', { hasText: 'since the last commit' }).first();
      await lens.waitFor();
      assert.match((await lens.textContent()) ?? '', /since the last commit: 1 gained/);
      await scrollTo(page, 'since');
      await picture('since-commit');
      await foldOf(page, 'since').locator('button[data-mark]').first().click();
      await page.locator(`#status\\.editor\\.selection:not(:has-text("Ln ${booth},"))`).waitFor();
      await takeBack(page);
      await foldOf(page, 'since').locator('> summary .summary', { hasText: 'No difference' }).waitFor();
    },
  ],
  [
    'a text that is broken leaves the numbers, marked as old, and says where it is broken',
    async (context) => {
      const { page, picture } = context;
      const line = lineOf(context, board);
      await goTo(page, line, 3);
      await page.keyboard.press('Shift+End');
      await page.keyboard.type('gypsum-board 12.5 kPa');
      const frame = frameOf(page);
      await frame.locator('.age', { hasText: 'The text is broken' }).waitFor();
      await picture('live-sheet-broken');
      await foldOf(page, 'noise').locator('.plot svg').waitFor();
      await goTo(page, 1, 1);
      await frame
        .locator('.problems button', { hasText: `line ${line}` })
        .first()
        .click();
      await cursorIsOn(page, line);
      await takeBack(page);
      await frame.locator('.age').waitFor({ state: 'detached' });
    },
  ],
  [
    'a mark of the live sheet leads to its line, by mouse and by key, and the line lights its mark',
    async (context) => {
      const { page } = context;
      await foldOf(page, 'ways').locator('svg path.share[data-mark]').first().scrollIntoViewIfNeeded();
      await foldOf(page, 'ways').locator('button[data-mark]', { hasText: 'vent intake' }).click();
      await cursorIsOn(page, lineOf(context, 'vent intake on left'));
      await foldOf(page, 'ways').locator('button.lit[aria-current="location"]', { hasText: 'vent intake' }).waitFor();
      assert.ok((await foldOf(page, 'ways').locator('svg path.lit').count()) > 0, 'the picture lights it too');
      const asked = foldOf(page, 'asked').locator('button[data-mark]', { hasText: 'co2' });
      await asked.focus();
      await page.keyboard.press('Enter');
      await cursorIsOn(page, lineOf(context, 'require co2'));
      await foldOf(page, 'noise').locator('svg path.further[data-mark]').first().dispatchEvent('click');
      await cursorIsOn(page, lineOf(context, 'noise tram '));
    },
  ],
  [
    'the live sheet has no serious finding for readers who cannot see it, and no crowded label, in every theme',
    async ({ page, picture }) => {
      for (const details of await frameOf(page).locator('details.figures').all())
        await details.evaluate((each) => each.setAttribute('open', ''));
      const usual = page.viewportSize();
      const look = async (/** @type {string} */ theme) => {
        assert.deepEqual(await graveFindings(page), [], theme);
        assert.deepEqual(await crowded(page), [], theme);
      };
      await look('dark');
      for (const details of await frameOf(page).locator('details.figures').all())
        await details.evaluate((each) => each.removeAttribute('open'));
      await command(page, 'Preferences: Toggle between Light/Dark Themes');
      await page.waitForSelector('.monaco-workbench.vs');
      await scrollTo(page, 'loss');
      await picture('live-sheet-light');
      await look('light');
      await command(page, 'Preferences: Toggle between Light/Dark Themes');
      await page.waitForSelector('.monaco-workbench.vs-dark');
      await chooseTheme(page, 'Dark High Contrast', 'hc-black');
      await picture('live-sheet-contrast');
      await look('high contrast');
      await chooseTheme(page, 'Dark Modern', 'vs-dark');
      // What a zoom of 200 % leaves: half the room, here given as half a window.
      await page.setViewportSize({ width: 900, height: 640 });
      await page.waitForTimeout(600);
      await picture('live-sheet-narrow');
      await look('narrow');
      if (usual !== null) await page.setViewportSize(usual);
    },
  ],
  [
    'a lens opens the live sheet, and the sheet comes back after a reload as it was',
    async (context) => {
      const { page } = context;
      await foldOf(page, 'decay').locator('> summary').click();
      await foldOf(page, 'decay').locator('.body').waitFor({ state: 'hidden' });
      await page.waitForTimeout(1500);
      await command(page, 'Developer: Reload Window');
      await page.waitForSelector('.monaco-workbench', { state: 'detached' });
      await page.waitForSelector('.monaco-workbench');
      await foldOf(page, 'noise').locator('.plot svg').waitFor();
      await foldOf(page, 'decay').locator('.body').waitFor({ state: 'hidden' });
      await page.locator('.tab', { hasText: 'Live sheet' }).first().locator('.codicon-close').click();
      await goTo(page, lineOf(context, 'variant good-answer') - 4, 1);
      await page
        .locator('.codelens-decoration a', { hasText: /now (met|missed)/ })
        .last()
        .click();
      await frameOf(page).locator('h1', { hasText: 'variant' }).waitFor();
    },
  ],
];
