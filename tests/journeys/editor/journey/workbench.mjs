/**
 * What a user does in the workbench, by the names a user would give it.
 *
 * @typedef {import('playwright-core').Page} Page
 */

/** @param {Page} page @param {string} url @param {string} folder */
export async function openFolder(page, url, folder) {
  await page.goto(`${url}/?folder=${encodeURIComponent(folder)}`);
  await page.waitForSelector('.monaco-workbench');
}

/** @param {Page} page @param {string} name */
export async function openFile(page, name) {
  await page.dblclick(`.explorer-folders-view .label-name:has-text("${name}")`);
  await page.waitForSelector('.monaco-editor .view-line');
}

/** Puts the cursor at a place; both count from one. @param {Page} page @param {number} line @param {number} column */
export async function goTo(page, line, column) {
  await page.keyboard.press('Control+g');
  await page.waitForSelector('.quick-input-widget:visible input');
  await page.keyboard.type(`${line}:${column}`);
  await page.keyboard.press('Enter');
  await page.waitForSelector('.quick-input-widget', { state: 'hidden' });
}

/** Runs a command by its title. @param {Page} page @param {string} title */
export async function command(page, title) {
  await page.keyboard.press('F1');
  await page.waitForSelector('.quick-input-widget:visible input');
  await page.keyboard.type(title);
  await page.waitForSelector(`.quick-input-list .monaco-list-row:has-text("${title}")`);
  await page.keyboard.press('Enter');
}

/** Points at a word of the text with the mouse and waits for what pops up. @param {Page} page @param {string} line @param {string} word */
export async function pointAt(page, line, word) {
  const at = page.locator(`.view-line:has-text("${line}") span span`, { hasText: word }).first();
  const box = await at.boundingBox();
  if (box === null) throw new Error(`\`${word}\` cannot be seen`);
  // From the side, so that the pointer truly moves.
  await page.mouse.move(box.x + box.width + 60, box.y + box.height / 2);
  await page.mouse.move(box.x + Math.min(12, box.width / 2), box.y + box.height / 2, { steps: 4 });
  await page.waitForSelector('.monaco-hover:not(.hidden) .monaco-hover-content');
}

/** @param {Page} page */
export async function pointAway(page) {
  await page.keyboard.press('Escape');
  // Where nothing is that would say something.
  await page.mouse.move(200, 600);
  await page.waitForFunction(() => !document.querySelector('.monaco-editor .monaco-hover:not(.hidden) .hover-row'));
}
