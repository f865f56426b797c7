import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import { goTo, hoverOf, openByName, pointAt, pointAway } from './workbench.mjs';

/** @typedef {import('./steps.mjs').Context} Context */

const broken = `use catalog

# Three slips of the hand, each with one sensible mend.
assembly shell {
  gypsum-bord 12.5 mm
  air 50 mmm
  gypsum-board 12,5 mm
}

require stc of shell >= 25
`;

/** Who uses the material of the first one. @type {Record<string, string>} */
const renamed = {
  'own-boards.booth':
    'material barn-board "boards from the barn" {\n  kind        panel\n  density     520 kg/m3\n  modulus     9 GPa\n  loss-factor 0.03\n  source      "invented test data"\n}\n',
  'north-wall.booth':
    'use "./own-boards.booth"\n\nassembly north { barn-board 20 mm; air 40 mm; barn-board 20 mm }\n\nrequire stc of north >= 20\n',
  'south-wall.booth': 'use "./own-boards.booth"\n\nassembly south { barn-board 25 mm }\n\nrequire stc of south >= 20\n',
};

/** Asks for the fixes at the cursor and takes one. @param {Context} context @param {string} title @param {string} [name] of a picture of the list */
async function takeFix({ page, picture }, title, name) {
  // The sensible one stands first and is chosen already; a click would meet what lies over the window.
  const row = page.locator('.action-widget .monaco-list-row.focused', { hasText: title }).first();
  for (let left = 6; ; left--) {
    await page.keyboard.press('Control+.');
    const came = await row.waitFor({ timeout: 8_000 }).then(
      () => true,
      () => false,
    );
    if (came) break;
    assert.ok(left > 1, `the fix \`${title}\` is offered`);
    await page.keyboard.press('Escape');
  }
  if (name !== undefined) await picture(name);
  await page.keyboard.press('Enter');
}

/**
 * A broken spec mended without typing, a material renamed over three files, and variants held side by side.
 *
 * @type {[string, (context: Context) => Promise<void>][]}
 */
export const mendRenameCompare = [
  [
    'a broken spec is mended by quick fixes only',
    async (context) => {
      const { page, workspace, picture } = context;
      fs.writeFileSync(path.join(workspace, 'broken.booth'), broken);
      await openByName(page, 'broken.booth');
      await page.waitForSelector('.squiggly-error', { state: 'attached' });
      await goTo(page, 5, 5);
      await takeFix(context, 'gypsum-board', 'quick-fix');
      await page.waitForFunction(() => !document.querySelector('.view-lines')?.textContent?.includes('gypsum-bord'));
      await goTo(page, 6, 11);
      await takeFix(context, 'by `mm`');
      await page.waitForFunction(() => !document.querySelector('.view-lines')?.textContent?.includes('mmm'));
      await goTo(page, 7, 18);
      await takeFix(context, '12.5');
      await page.waitForFunction(() => !document.querySelector('.squiggly-error'));
      await page.waitForSelector('.view-line:has-text("assembly shell"):has-text("STC")');
      await page.waitForSelector('.view-line:has-text("require stc"):has-text("met with")');
      await picture('mended');
    },
  ],
  [
    'a material is renamed over three files',
    async ({ page, workspace, picture }) => {
      for (const [name, text] of Object.entries(renamed)) fs.writeFileSync(path.join(workspace, name), text);
      await openByName(page, 'north-wall.booth');
      await page.waitForSelector('.view-line:has-text("assembly north"):has-text("STC")');
      await goTo(page, 3, 20);
      const box = page.locator('.rename-box input');
      await page.keyboard.press('F2');
      await box.waitFor();
      await box.fill('ash-board');
      await picture('rename');
      await page.keyboard.press('Enter');
      await page.waitForSelector('.view-line:has-text("ash-board 20")');
      // What other files got stands on disk, or is open and waits to be saved.
      await openByName(page, 'own-boards.booth');
      await page.waitForSelector('.view-line:has-text("material ash-board")');
      await openByName(page, 'south-wall.booth');
      await page.waitForSelector('.view-line:has-text("assembly south"):has-text("ash-board 25")');
      await page.waitForSelector('.view-line:has-text("assembly south"):has-text("STC")');
      assert.equal(await page.locator('.squiggly-error').count(), 0);
      await picture('renamed');
    },
  ],
  [
    'variants are held side by side: a lens above each, and every figure that moves in its hover',
    async ({ page, workspace, picture }) => {
      const lines = fs.readFileSync(path.join(workspace, 'tram-alcove.booth'), 'utf8').split('\n');
      const line = lines.findIndex((each) => each.startsWith('variant deeper-cavity')) + 1;
      assert.ok(line > 0, 'the example has the variant');
      await openByName(page, 'tram-alcove.booth');
      await goTo(page, line, 1);
      await page
        .locator('.codelens-decoration', { hasText: /requirements missed/ })
        .nth(2)
        .waitFor();
      await pointAt(page, 'variant deeper-cavity', 'deeper-cavity', /without it/);
      await hoverOf(page).locator('table').first().waitFor();
      await picture('variants');
      await pointAway(page);
    },
  ],
];
