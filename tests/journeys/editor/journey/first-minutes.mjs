import assert from 'node:assert/strict';
import { command, goTo } from './workbench.mjs';

/** @typedef {import('./steps.mjs').Context} Context */

/** The box that asks a question. @param {import('playwright-core').Page} page @param {string} asks */
const asking = (page, asks) =>
  page.locator('.quick-input-widget:visible', { has: page.locator('.quick-input-title', { hasText: asks }) });

/** Types an answer into the box of a question and goes on. @param {import('playwright-core').Page} page @param {string} asks @param {string} answer */
async function answer(page, asks, answer) {
  const box = asking(page, asks);
  await box.waitFor();
  await box.locator('input.input').first().fill(answer);
  await page.keyboard.press('Enter');
}

/** Takes a choice. @param {import('playwright-core').Page} page @param {string} asks @param {string} label */
async function choose(page, asks, label) {
  await asking(page, asks).locator('.monaco-list-row', { hasText: label }).first().click();
}

/**
 * The first five minutes: the walkthrough, the booth at the cursor, and a first spec by questions.
 *
 * @type {[string, (context: Context) => Promise<void>][]}
 */
export const firstMinutes = [
  [
    'the walkthrough leads from an example to a spec of one’s own',
    async ({ page, picture }) => {
      await command(page, 'Boothwright: First Five Minutes');
      const steps = page.locator('.getting-started-step');
      await steps.filter({ hasText: 'Open an example' }).waitFor();
      for (const title of ['Read the ends of the lines', 'Mend what is wrong', 'Describe your own', 'Compare ways to'])
        await steps.filter({ hasText: title }).waitFor();
      await steps.filter({ hasText: 'Describe your own' }).click();
      await page.locator('.getting-started-step.expanded', { hasText: 'New Booth Spec by Questions' }).waitFor();
      await page
        .frameLocator('iframe.webview.ready')
        .frameLocator('iframe#active-frame')
        .locator('h1:has-text("A first spec by questions")')
        .waitFor();
      await picture('walkthrough');
    },
  ],
  [
    'the status bar tells the booth at the cursor',
    async ({ page, picture }) => {
      // The tree of files may be folded away by now; the file's own tab is not.
      await page.locator('.tab', { hasText: 'tram-alcove.booth' }).first().click();
      await goTo(page, 1, 1);
      const entry = page.locator('.statusbar-item', { hasText: /alcove: \d of \d met · .*kg/ });
      await entry.waitFor();
      await picture('status-bar', { clip: { x: 0, y: 878, width: 1440, height: 22 } });
    },
  ],
  [
    'questions that a tape measure answers make a spec, with what was wrong said at once',
    async ({ page, picture }) => {
      await command(page, 'Boothwright: New Booth Spec by Questions');
      await choose(page, 'What do you want to describe?', 'wardrobe');
      await answer(page, 'What do you call the room', 'spare room');
      await answer(page, 'How wide, deep and high is that room?', '3.6 kg');
      await page.locator('.quick-input-message', { hasText: /expected/ }).waitFor();
      await picture('question');
      await answer(page, 'How wide, deep and high is that room?', '360 x 310 x 245 cm');
      await answer(page, 'narrowest door', '');
      await choose(page, 'What carries the room?', 'timber');
      await answer(page, 'What load is that floor', '');
      await answer(page, 'What does a sound level meter read', '52 dBA');
      await page
        .locator('.quick-input-titlebar .action-label.codicon-check-all, .quick-input-titlebar .codicon-check-all')
        .first()
        .click();
      await page.waitForSelector('.view-line:has-text("A wardrobe as it stands")');
      await page.waitForSelector('.view-line:has-text("360 cm")');
      await page.locator('.statusbar-item', { hasText: /cabin: \d of \d met/ }).waitFor();
      assert.equal(await page.locator('.squiggly-error').count(), 0);
      await picture('first-spec');
    },
  ],
];
