import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import axe from 'axe-core';
import { launchBrowser } from '../editor/browser.mjs';
import { overflowing } from './overflowing.mjs';
import { checkReviewComment } from './review-comment.mjs';

const examples = [
  'tram-alcove/tram-alcove',
  'tram-alcove/first-draft',
  'under-the-nursery/under-the-nursery',
  'thin-gap-wall/thin-gap-wall',
];
/** CSS pixels between the margins of the report on each paper. */
const papers = [
  { name: 'A4', widthPx: Math.floor(((210 - 26) * 96) / 25.4) },
  { name: 'Letter', widthPx: Math.floor(((215.9 - 26) * 96) / 25.4) },
];
/** A laptop at 100 % and at 200 %. */
const screens = [
  { zoom: 100, width: 1280, height: 800 },
  { zoom: 200, width: 640, height: 400 },
];

/**
 * Writes the report of every example, and of a hostile text, and opens each in a browser that has no network: it must ask
 * for nothing, have no serious finding of axe, and lose nothing on screen or paper; then shows the comment of a review. Each
 * check is one test.
 *
 * @param {{ root: string, out: string, updatePictures: boolean }} options
 * @returns {Promise<{ passed: number, failed: number }>}
 */
export async function runReportPage({ root, out, updatePictures }) {
  const counts = { passed: 0, failed: 0 };
  /** @param {string} title @param {() => unknown} test */
  const step = async (title, test) => {
    try {
      await test();
      counts.passed += 1;
      console.log(`  ok    ${title}`);
    } catch (error) {
      counts.failed += 1;
      console.log(`  FAIL  ${title}\n        ${error instanceof Error ? error.message : String(error)}`);
    }
  };

  const folder = path.join(out, 'report-page');
  fs.rmSync(folder, { recursive: true, force: true });
  fs.mkdirSync(folder, { recursive: true });
  const bundle = bundleCommand(root, folder);
  const reports = writeReports(root, folder, bundle);
  const browser = await launchBrowser();
  try {
    for (const { name, file } of reports) await checkReport({ name, file, browser, folder, step });
    await step('the comment of a review is shown whole', () => checkReviewComment({ root, bundle, folder, browser }));
  } finally {
    await browser.close();
  }
  if (updatePictures)
    for (const picture of ['report', 'report-dark', 'review-comment'])
      fs.copyFileSync(path.join(folder, `${picture}.png`), path.join(root, 'docs/pictures', `${picture}.png`));
  return counts;
}

/** @param {string} root @param {string} folder */
function bundleCommand(root, folder) {
  const bundle = path.join(folder, 'boothwright.mjs');
  const built = spawnSync(process.execPath, [path.join(root, 'packages/cli/esbuild.mjs'), bundle], {
    encoding: 'utf8',
  });
  if (built.status !== 0) throw new Error(`the command could not be bundled: ${built.stderr}`);
  return bundle;
}

/** @param {string} root @param {string} folder @param {string} bundle */
function writeReports(root, folder, bundle) {
  const hostile = path.join(folder, 'hostile.booth');
  const example = fs.readFileSync(path.join(root, 'shared/examples', `${examples[0]}.booth`), 'utf8');
  const long = 'endless'.repeat(40);
  fs.writeFileSync(
    hostile,
    example
      .replace('"the alcove booth"', `"</title><script>document.title='run'</script> ${long}"`)
      .replace('"television downstairs"', `"<img src=http://localhost/x onerror=alert(1)> | ${long}"`)
      .replace('"bedroom, top floor"', `"\`${long}\` & <b>bold</b>"`),
  );
  const specs = [...examples.map((each) => path.join(root, 'shared/examples', `${each}.booth`)), hostile];
  return specs.map((spec) => {
    const name = path.basename(spec, '.booth');
    const file = path.join(folder, `${name}.html`);
    const { status, stderr } = spawnSync(process.execPath, [bundle, 'report', spec, '-o', file], {
      cwd: root,
      encoding: 'utf8',
    });
    if (status === 2) throw new Error(`no report of ${name}: ${stderr}`);
    return { name, file };
  });
}

/**
 * @param {{ name: string, file: string, browser: import('playwright-core').Browser, folder: string,
 *   step: (title: string, test: () => unknown) => Promise<void> }} options
 */
async function checkReport({ name, file, browser, folder, step }) {
  for (const colorScheme of /** @type {const} */ (['light', 'dark'])) {
    const context = await browser.newContext({ colorScheme, viewport: { width: 1280, height: 800 } });
    const page = await context.newPage();
    /** @type {string[]} */
    const asked = [];
    /** @type {string[]} */
    const said = [];
    await context.route(/.*/, (route) => (route.request().isNavigationRequest() ? route.continue() : route.abort()));
    page.on('request', (request) => asked.push(request.url()));
    page.on('console', (message) => said.push(message.text()));
    page.on('dialog', (dialog) => {
      said.push(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    const address = pathToFileURL(file).href;
    await page.goto(address);

    await step(`${name}, ${colorScheme}: asks for nothing and runs nothing`, async () => {
      await page.waitForLoadState('networkidle');
      assert.deepEqual(asked, [address]);
      assert.deepEqual(said, []);
      assert.notEqual(await page.title(), 'run');
      assert.equal(await page.locator('script').count(), 0);
    });
    await step(`${name}, ${colorScheme}: axe has no serious finding`, async () => {
      await page.evaluate(axe.source);
      const found = await page.evaluate(async () => {
        const { axe: here } = /** @type {{ axe: typeof import('axe-core') }} */ (/** @type {unknown} */ (globalThis));
        const { violations, passes } = await here.run(document, { resultTypes: ['violations', 'passes'] });
        const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
        return {
          passes: passes.length,
          grave: grave.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200)} ${nodes[0]?.failureSummary}`),
        };
      });
      assert.deepEqual(found.grave, []);
      assert.ok(found.passes > 15, `axe looked at little: ${found.passes} rules passed`);
    });
    for (const { zoom, ...viewport } of screens) {
      await step(`${name}, ${colorScheme}: nothing is cut off at ${zoom} %`, async () => {
        await page.setViewportSize(viewport);
        assert.deepEqual(await page.evaluate(overflowing), []);
      });
    }
    if (colorScheme === 'light') {
      for (const { name: paper, widthPx } of papers) {
        await step(`${name}: no column is cut off on ${paper}`, async () => {
          await page.emulateMedia({ media: 'print' });
          await page.setViewportSize({ width: widthPx, height: 1000 });
          assert.deepEqual(await page.evaluate(overflowing), []);
          const pdf = await page.pdf({ format: paper });
          assert.ok(pdf.subarray(0, 5).toString() === '%PDF-' && pdf.length > 10_000, `${pdf.length} bytes`);
          await page.emulateMedia({ media: null });
        });
      }
    }
    if (name === 'tram-alcove') {
      await page.setViewportSize({ width: 1000, height: 1180 });
      await page.screenshot({ path: path.join(folder, colorScheme === 'dark' ? 'report-dark.png' : 'report.png') });
    }
    await context.close();
  }
}
