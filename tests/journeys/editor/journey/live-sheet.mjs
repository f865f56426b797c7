import { command, goTo } from './workbench.mjs';

/** @typedef {import('./steps.mjs').Context} Context */
/** @typedef {import('playwright-core').Page} Page */

/** The page inside the panel. @param {Page} page */
export const sheetOf = (page) =>
  page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame').locator('body');

/** One fold of it. @param {Page} page @param {string} id */
export const foldOf = (page, id) => sheetOf(page).locator(`[data-fold="${id}"]`);

/**
 * The live sheet beside the text.
 *
 * @type {[string, (context: Context) => Promise<void>][]}
 */
export const liveSheet = [
  [
    'the live sheet opens beside the text and tells the booth',
    async ({ page, picture }) => {
      await page.locator('.tab', { hasText: 'tram-alcove.booth' }).first().click();
      await goTo(page, 27, 3);
      await command(page, 'Boothwright: Open Live Sheet');
      await sheetOf(page).locator('.verdict', { hasText: /requirements? missed/ }).waitFor();
      await foldOf(page, 'loss').locator('summary', { hasText: /shell.*STC \d+/s }).first().waitFor();
      await picture('live-sheet');
    },
  ],
];
