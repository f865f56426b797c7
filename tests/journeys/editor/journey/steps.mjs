import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import {
  command,
  foldSection,
  goTo,
  hoverOf,
  openFile,
  openFolder,
  pictureLoads,
  pointAt,
  pointAway,
  showCompletionDetails,
} from './workbench.mjs';

/**
 * @typedef {{
 *   page: import('playwright-core').Page,
 *   url: string,
 *   workspace: string,
 *   picture: (name: string, options?: import('playwright-core').PageScreenshotOptions) => Promise<void>,
 * }} Context
 */

const spec = 'tram-alcove.booth';

/** The place of a text in the example, counted from one. @param {Context} context @param {string} text */
function placeOf({ workspace }, text) {
  const lines = fs.readFileSync(path.join(workspace, spec), 'utf8').split('\n');
  const line = lines.findIndex((each) => each.includes(text));
  assert.ok(line >= 0, `\`${text}\` stands in the example`);
  return { line: line + 1, column: lines[line].indexOf(text) + 1 };
}

/** Brings a text into the middle of the window. @param {Context} context @param {string} text */
async function reveal(context, text) {
  const { line } = placeOf(context, text);
  await goTo(context.page, line, 1);
}

/**
 * What a user does from opening the folder to reading the answers, in order; each step starts where the one before
 * ended.
 *
 * @type {[string, (context: Context) => Promise<void>][]}
 */
export const steps = [
  [
    'a spec opens as such',
    async ({ page, url, workspace }) => {
      await openFolder(page, url, workspace);
      await openFile(page, spec);
      await page.waitForSelector('#status\\.editor\\.mode:has-text("Booth")');
    },
  ],
  [
    'the lines end in what they come to',
    async (context) => {
      const { page, picture } = context;
      await reveal(context, 'assembly shell');
      await page.waitForSelector('.view-line:has-text("assembly shell"):has-text("STC")');
      await reveal(context, 'door entry');
      await page.waitForSelector('.view-line:has-text("door entry"):has-text("%")');
      await reveal(context, 'require floor-load');
      await page.waitForSelector('.view-line:has-text("require"):has-text("missed")');
      await page.waitForSelector('.view-line:has-text("require"):has-text("met")');
      await picture('inlay-hints');
    },
  ],
  [
    'pointing at an assembly shows its table and a picture that loads',
    async (context) => {
      const { page, picture } = context;
      await reveal(context, 'assembly shell');
      await pointAt(page, 'assembly shell', 'shell', /STC \d+/);
      await pictureLoads(page);
      await hoverOf(page).locator('table').first().waitFor();
      await picture('hover');
      await pointAway(page);
    },
  ],
  [
    'in a tall window the table stands below the picture',
    async (context) => {
      const { page, picture } = context;
      const usual = page.viewportSize();
      await page.setViewportSize({ width: 1440, height: 1800 });
      await reveal(context, 'assembly shell');
      await pointAt(page, 'assembly shell', 'shell', /STC \d+/);
      await pictureLoads(page);
      await hoverOf(page).locator('table').first().waitFor();
      await picture('editor', { clip: { x: 48, y: 35, width: 1200, height: 1100 } });
      await pointAway(page);
      if (usual !== null) await page.setViewportSize(usual);
    },
  ],
  [
    'pointing at a noise shows it outside and inside, in a light theme too',
    async (context) => {
      const { page, picture } = context;
      await command(page, 'Preferences: Toggle between Light/Dark Themes');
      await page.waitForSelector('.monaco-workbench.vs');
      await reveal(context, 'noise tram');
      await pointAt(page, 'noise tram', 'tram', /Inside .*dBA/);
      await pictureLoads(page);
      await picture('hover-light');
      await pointAway(page);
      await command(page, 'Preferences: Toggle between Light/Dark Themes');
      await page.waitForSelector('.monaco-workbench.vs-dark');
    },
  ],
  [
    'pointing at the microphone shows what it hears, against what is asked',
    async (context) => {
      const { page, picture } = context;
      await reveal(context, 'mic at');
      await page.waitForSelector('.view-line:has-text("mic at"):has-text("room tone")');
      await page.waitForSelector('.view-line:has-text("panels"):has-text("the heaviest")');
      await pointAt(page, 'mic at', 'mic', /Noise at the mic .*dBA/);
      await pictureLoads(page);
      await hoverOf(page).locator('table').first().waitFor();
      await picture('microphone');
      await pointAway(page);
    },
  ],
  [
    'pointing at the session shows how long the air lasts, in a light theme too',
    async (context) => {
      const { page, picture } = context;
      await command(page, 'Preferences: Toggle between Light/Dark Themes');
      await page.waitForSelector('.monaco-workbench.vs');
      await reveal(context, 'session {');
      await page.waitForSelector('.view-line:has-text("session"):has-text("warmer")');
      await pointAt(page, 'session {', 'session', /CO₂ \d+ ppm/);
      await pictureLoads(page);
      await picture('air');
      await pointAway(page);
      await command(page, 'Preferences: Toggle between Light/Dark Themes');
      await page.waitForSelector('.monaco-workbench.vs-dark');
    },
  ],
  [
    'pointing at the panels says what they weigh and whether they go in',
    async (context) => {
      const { page, picture } = context;
      await reveal(context, 'panels {');
      await pointAt(page, 'panels {', 'panels', /\d+ panels, the heaviest \d+ kg/);
      await picture('panels');
      await pointAway(page);
    },
  ],
  [
    'pointing at a missed requirement says by how much and why',
    async (context) => {
      const { page, picture } = context;
      await reveal(context, 'require floor-load');
      await page.waitForSelector('.squiggly-warning', { state: 'attached' });
      await pointAt(page, 'require floor-load', 'floor-load', /missed by/);
      await picture('requirement');
      await pointAway(page);
    },
  ],
  [
    'a wrong unit is underlined where it stands, and says what was expected',
    async (context) => {
      const { page, picture } = context;
      const { line, column } = placeOf(context, 'gypsum-board     12.5 mm');
      await goTo(page, line, column + 'gypsum-board     12.5 '.length);
      await page.keyboard.press('Shift+End');
      await page.keyboard.type('kPa');
      await page.waitForSelector('.view-line:has-text("gypsum-board"):has-text("12.5 kPa")');
      await page.waitForSelector('.squiggly-error', { state: 'attached' });
      await pointAt(page, 'gypsum-board', '12.5', /a thickness is a length/);
      await picture('problem');
      await pointAway(page);
      await page.waitForSelector('.view-line:has-text("assembly shell"):has-text("was STC")');
      await page.keyboard.press('Control+z');
      await page.waitForFunction(() => !document.querySelector('.squiggly-error'));
    },
  ],
  [
    'completion offers materials with their figures',
    async (context) => {
      const { page, picture } = context;
      const { line } = placeOf(context, 'gypsum-board     12.5 mm');
      await goTo(page, line, 1);
      await page.keyboard.press('End');
      await page.keyboard.press('Enter');
      await page.keyboard.type('min');
      await page.keyboard.press('Control+Space');
      const row = page.locator('.suggest-widget.visible .monaco-list-row', { hasText: 'mineral-wool-40' }).first();
      await row.waitFor();
      await page.waitForSelector('.suggest-widget.visible .monaco-list-row.focused');
      await showCompletionDetails(page, 'density');
      await picture('completion');
      await page.keyboard.press('Escape');
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
    },
  ],
  [
    'the outline shows what the spec is made of',
    async ({ page, picture }) => {
      await command(page, 'Explorer: Focus on Outline View');
      // Folded away, the list of files leaves its room to the outline.
      await foldSection(page, 'tram-alcove');
      await page.waitForSelector('.outline-pane .monaco-list-row:has-text("shell")');
      await page.waitForSelector('.outline-pane .monaco-list-row:has-text("alcove")');
      await picture('outline');
    },
  ],
  [
    'the name of a catalogue material leads into the catalogue',
    async (context) => {
      const { page, picture } = context;
      await page.click('.tab:has-text("tram-alcove.booth")');
      const { line, column } = placeOf(context, 'gypsum-board     12.5 mm');
      await goTo(page, line, column + 2);
      await page.keyboard.press('F12');
      await page.waitForSelector('.tab.active:has-text("catalog.booth")');
      await page.waitForSelector('.view-line:has-text("material gypsum-board")');
      await picture('catalogue');
    },
  ],
];
