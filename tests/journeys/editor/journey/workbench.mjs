/**
 * What a user does in the workbench, by the names a user would give it. Nothing here reads the screen only once: what
 * should come is waited for, and what an editor that is still starting may swallow is done again.
 *
 * @typedef {import('playwright-core').Page} Page
 */

/** How often something is done again, and how long each time has to show what it did. */
const tries = 8;
const patience = 8_000;

/**
 * Does something until it shows. @param {string} what @param {() => Promise<unknown>} act
 * @param {(patience: number) => Promise<unknown>} shows fails when it does not show in that time
 */
async function untilShown(what, act, shows) {
  for (let left = tries; ; left--) {
    try {
      await act();
      await shows(patience);
      return;
    } catch (error) {
      if (left <= 1) throw new Error(`${what}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
}

/** @param {Page} page @param {string} url @param {string} folder */
export async function openFolder(page, url, folder) {
  await page.goto(`${url}/?folder=${encodeURIComponent(folder)}`);
  await page.waitForSelector('.monaco-workbench');
}

/** @param {Page} page @param {string} name */
export async function openFile(page, name) {
  const row = page.locator('.explorer-folders-view .label-name', { hasText: name }).first();
  await row.waitFor();
  await untilShown(
    `${name} opens`,
    () => row.dblclick(),
    (timeout) => page.locator('.editor-instance .monaco-editor .view-line').first().waitFor({ timeout }),
  );
}

/** Gives the editor the keyboard. @param {Page} page */
async function focusEditor(page) {
  await untilShown(
    'the editor takes the keyboard',
    async () => {
      if ((await page.locator('.quick-input-widget:visible').count()) > 0) await page.keyboard.press('Escape');
      // The input that takes the editor's keys; a click on the text would move the cursor and the view.
      await page
        .locator('.editor-instance .monaco-editor :is(.native-edit-context, textarea.inputarea)')
        .first()
        .focus();
    },
    (timeout) => page.waitForSelector('.editor-instance .monaco-editor.focused', { timeout }),
  );
}

/** Opens the box for a line or a command by its key and writes into it. @param {Page} page @param {string} key @param {string} start @param {string} text */
async function fillQuickInput(page, key, start, text) {
  const input = page.locator('.quick-input-widget:visible input.input').first();
  await untilShown(
    `the box that ${key} opens`,
    () => page.keyboard.press(key),
    (timeout) => input.waitFor({ timeout }),
  );
  await input.fill(`${start}${text}`);
}

/**
 * Puts the cursor at a place, both count from one, and makes sure that it is there and can be seen.
 *
 * @param {Page} page @param {number} line @param {number} column
 */
export async function goTo(page, line, column) {
  await untilShown(
    `the cursor is at ${line}:${column}`,
    async () => {
      await focusEditor(page);
      await fillQuickInput(page, 'Control+g', ':', `${line}:${column}`);
      await page.keyboard.press('Enter');
      await page.waitForSelector('.quick-input-widget', { state: 'hidden', timeout: patience });
    },
    async (timeout) => {
      await page.waitForSelector(`#status\\.editor\\.selection:has-text("Ln ${line}, Col ${column}")`, { timeout });
      await page.waitForFunction(
        (number) => {
          const editor = document.querySelector('.editor-instance .monaco-editor.focused');
          if (editor === null) return false;
          const { top, bottom } = editor.getBoundingClientRect();
          return [...editor.querySelectorAll('.line-numbers')].some((each) => {
            const box = each.getBoundingClientRect();
            return each.textContent?.trim() === number && box.top >= top && box.bottom <= bottom;
          });
        },
        String(line),
        { timeout },
      );
    },
  );
}

/** Opens a file of the folder by its name, wherever the tree of files is. @param {Page} page @param {string} name */
export async function openByName(page, name) {
  await untilShown(
    `${name} opens`,
    async () => {
      // A list that is open keeps what it found, also of files that were not there yet.
      const open = page.locator('.quick-input-widget:visible');
      if ((await open.count()) > 0) await page.keyboard.press('Escape');
      await open.waitFor({ state: 'detached', timeout: patience });
      await fillQuickInput(page, 'Control+p', '', name);
      // While the list still fills, Enter would take whatever is topmost.
      await page.locator('.quick-input-list .monaco-list-row', { hasText: name }).first().click({ timeout: patience });
    },
    (timeout) => page.locator('.tab.active', { hasText: name }).first().waitFor({ timeout }),
  );
  await page.locator('.editor-instance .monaco-editor .view-line').first().waitFor();
}

/** Runs a command by its title. @param {Page} page @param {string} title */
export async function command(page, title) {
  await fillQuickInput(page, 'F1', '>', title);
  // The topmost is the one that Enter runs.
  const row = page.locator('.quick-input-list .monaco-list-row').first();
  await row.filter({ hasText: title }).waitFor();
  await page.keyboard.press('Enter');
  await page.waitForSelector('.quick-input-widget', { state: 'hidden' });
}

/** The pop-up that is open. @param {Page} page */
export const hoverOf = (page) => page.locator('.monaco-hover:not(.hidden)');

/**
 * Points at a word of the text with the mouse and waits until what pops up says what it should.
 *
 * @param {Page} page @param {string} line @param {string} word @param {RegExp} says
 */
export async function pointAt(page, line, word, says) {
  const at = page.locator(`.view-line:has-text("${line}") span span`, { hasText: word }).first();
  await untilShown(
    `\`${word}\` in \`${line}\` says ${says}`,
    async () => {
      await at.waitFor();
      const box = await at.boundingBox();
      if (box === null) throw new Error('it cannot be seen');
      // From the side, so that the pointer truly moves.
      await page.mouse.move(box.x + box.width + 60, box.y + box.height / 2);
      await page.mouse.move(box.x + Math.min(12, box.width / 2), box.y + box.height / 2, { steps: 4 });
    },
    (timeout) => hoverOf(page).filter({ hasText: says }).first().waitFor({ timeout }),
  );
}

/** Waits until the picture in the pop-up is drawn. @param {Page} page */
export async function pictureLoads(page) {
  await page.waitForFunction(() => {
    const image = document.querySelector('.monaco-hover:not(.hidden) img[src^="data:image/svg+xml"]');
    return image instanceof HTMLImageElement && image.complete && image.naturalWidth > 0;
  });
}

/** @param {Page} page */
export async function pointAway(page) {
  await untilShown(
    'the pop-up goes away',
    async () => {
      await page.keyboard.press('Escape');
      // Where nothing is that would say something.
      await page.mouse.move(200, 590);
      await page.mouse.move(200, 600);
    },
    (timeout) =>
      page.waitForFunction(
        () => !document.querySelector('.monaco-editor .monaco-hover:not(.hidden) .hover-row'),
        null,
        {
          timeout,
        },
      ),
  );
}

/** Opens or closes the description beside the completion list. @param {Page} page @param {string} says */
export async function showCompletionDetails(page, says) {
  const details = page.locator('.suggest-details:visible', { hasText: says }).first();
  await untilShown(
    'the description beside the completion list',
    async () => {
      // The key closes what is open, so it is pressed only when nothing has come by itself.
      const open = await details.waitFor({ timeout: 1_500 }).then(
        () => true,
        () => false,
      );
      if (!open) await page.keyboard.press('Control+Space');
    },
    (timeout) => details.waitFor({ timeout }),
  );
}

/** Folds a section of the side bar away. @param {Page} page @param {string} title */
export async function foldSection(page, title) {
  const header = page.locator('.pane-header', { hasText: title }).first();
  await header.waitFor();
  await untilShown(
    `the section ${title} is folded away`,
    async () => {
      if ((await header.getAttribute('aria-expanded')) !== 'false') await header.click();
    },
    (timeout) => page.locator('.pane-header[aria-expanded="false"]', { hasText: title }).first().waitFor({ timeout }),
  );
}
