import assert from 'node:assert/strict';
import axe from 'axe-core';

/** @typedef {import('playwright-core').Page} Page */

/** The frame inside the panel. @param {Page} page */
export const frameOf = (page) => page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame');

/** One fold of the sheet. @param {Page} page @param {string} id */
export const foldOf = (page, id) => frameOf(page).locator(`#folds > [data-fold="${id}"]`);

/** Code of ours runs in the frame itself. @param {Page} page */
export async function insideSheet(page) {
  const frame = await (await frameOf(page).locator('#folds').elementHandle())?.ownerFrame();
  assert.ok(frame, 'the sheet is shown');
  return frame;
}

/** What axe finds serious in the sheet. @param {Page} page */
export async function graveFindings(page) {
  const frame = await insideSheet(page);
  await frame.evaluate(axe.source);
  const found = await frame.evaluate(async () => {
    const { axe: here } = /** @type {{ axe: typeof import('axe-core') }} */ (/** @type {unknown} */ (globalThis));
    const { violations, passes } = await here.run(document, { resultTypes: ['violations', 'passes'] });
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    return {
      passes: passes.length,
      grave: grave.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200)} ${nodes[0]?.failureSummary}`),
    };
  });
  assert.ok(found.passes > 12, `axe looked at little: ${found.passes} rules passed`);
  return found.grave;
}

/** Labels of pictures that are cut off or lie on one another, and what sticks out of the column. @param {Page} page */
export async function crowded(page) {
  const frame = await insideSheet(page);
  return frame.evaluate(() => {
    /** @type {string[]} */
    const found = [];
    const root = document.documentElement;
    if (root.scrollWidth > root.clientWidth + 1) {
      const wide = [...document.querySelectorAll('#head *, #folds *')].filter(
        (each) => each.closest('.figures') === null && each.getBoundingClientRect().right > root.clientWidth + 1,
      );
      found.push(`${root.scrollWidth} px in ${root.clientWidth}: ${wide.at(-1)?.outerHTML.slice(0, 120)}`);
    }
    for (const svg of document.querySelectorAll('.plot svg')) {
      const frameBox = svg.getBoundingClientRect();
      if (frameBox.width === 0) continue;
      const labels = [...svg.querySelectorAll('text')].map((text) => ({
        text: text.textContent ?? '',
        box: text.getBoundingClientRect(),
      }));
      labels.forEach(({ text, box }, index) => {
        const isCut =
          box.left < frameBox.left - 1 ||
          box.right > frameBox.right + 1 ||
          box.top < frameBox.top - 1 ||
          box.bottom > frameBox.bottom + 1;
        if (isCut) found.push(`\`${text}\` is cut off in ${svg.querySelector('title')?.textContent}`);
        for (const other of labels.slice(index + 1)) {
          // Boxes of letters are higher than the letters.
          const isOn =
            box.left < other.box.right - 1 &&
            other.box.left < box.right - 1 &&
            box.top < other.box.bottom - 4 &&
            other.box.top < box.bottom - 4;
          if (isOn) found.push(`\`${text}\` lies on \`${other.text}\` in ${svg.querySelector('title')?.textContent}`);
        }
      });
    }
    return found;
  });
}

/** How long nothing may change in a sheet until it counts as done, ms: longer than the variants of an example take. */
const still = 900;

/** Waits until the sheet shows the numbers of the present text and nothing changes in it any more. @param {Page} page @param {import('playwright-core').Frame} frame */
async function stillness(page, frame) {
  const last = () => /** @type {{ lastAt?: number }} */ (/** @type {unknown} */ (globalThis)).lastAt ?? 0;
  await frame.waitForFunction(() => document.body.dataset.state === 'fresh', null, { timeout: 20_000 });
  for (let before = -1; before !== (await frame.evaluate(last)); ) {
    before = await frame.evaluate(last);
    await page.waitForTimeout(still);
  }
}

/**
 * Types over the letter before the cursor again and again, and times from each key to what the editor draws of it and to
 * the new numbers in the sheet, ms.
 *
 * @param {Page} page @param {readonly string[]} keys
 */
export async function timeKeys(page, keys) {
  const frame = await insideSheet(page);
  const watch = () => {
    const here = /** @type {{ changedAt?: number, lastAt?: number }} */ (/** @type {unknown} */ (globalThis));
    const target = document.querySelector('#folds') ?? document.querySelector('.editor-instance .view-lines');
    new MutationObserver(() => {
      here.lastAt = performance.timeOrigin + performance.now();
      here.changedAt ??= here.lastAt;
    }).observe(/** @type {Element} */ (target), { childList: true, subtree: true, characterData: true });
  };
  const reset = () => {
    delete (/** @type {{ changedAt?: number }} */ (/** @type {unknown} */ (globalThis)).changedAt);
  };
  const changed = () => /** @type {{ changedAt?: number }} */ (/** @type {unknown} */ (globalThis)).changedAt;
  await page.evaluate(watch);
  await frame.evaluate(watch);
  await page.evaluate(() => {
    addEventListener(
      'keydown',
      (event) => {
        /** @type {{ pressedAt?: number }} */ (/** @type {unknown} */ (globalThis)).pressedAt =
          performance.timeOrigin + event.timeStamp;
      },
      { capture: true },
    );
  });
  /** @type {number[]} */
  const editor = [];
  /** @type {number[]} */
  const sheet = [];
  for (const key of keys) {
    await page.keyboard.press('Shift+ArrowLeft');
    // All that the last key and the cursor's move bring about has come, variants too.
    await stillness(page, frame);
    await page.evaluate(reset);
    await frame.evaluate(reset);
    await page.keyboard.press(key);
    await frame.waitForFunction(changed, null, { timeout: 20_000 });
    const pressed = await page.evaluate(
      () => /** @type {{ pressedAt?: number }} */ (/** @type {unknown} */ (globalThis)).pressedAt ?? 0,
    );
    editor.push(((await page.evaluate(changed)) ?? Number.NaN) - pressed);
    sheet.push(((await frame.evaluate(changed)) ?? Number.NaN) - pressed);
  }
  return { editor, sheet };
}

/** `median 12, p95 30 ms`. @param {readonly number[]} times */
export function told(times) {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (/** @type {number} */ share) =>
    Math.round(sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN);
  return `median ${at(0.5)}, p95 ${at(0.95)} ms`;
}
