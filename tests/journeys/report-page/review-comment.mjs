import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import MarkdownIt from 'markdown-it';
import { overflowing } from './overflowing.mjs';

const style = `
  body { margin: 0; padding: 20px; font: 14px/1.5 "DejaVu Sans", sans-serif; color: #1d2125; background: #fff; }
  article { border: 1px solid #c8ccd1; border-radius: 4px; padding: 4px 18px 10px; }
  h3 { font-size: 15px; margin: 18px 0 6px; }
  table { border-collapse: collapse; }
  th, td { border: 1px solid #d5d9de; padding: 3px 10px; text-align: left; }
  code { background: #eef0f2; padding: 1px 4px; }
`;

/**
 * The comment of the review that `docs/reviewing-a-change.md` follows, as a service shows Markdown: every heading and row is
 * there, and nothing of the notation is left over.
 *
 * @param {{ root: string, bundle: string, folder: string, browser: import('playwright-core').Browser }} options
 */
export async function checkReviewComment({ root, bundle, folder, browser }) {
  const change = JSON.parse(fs.readFileSync(path.join(root, 'tests/journeys/fixtures/reviewed-change.json'), 'utf8'));
  const text = fs.readFileSync(path.join(root, 'shared/examples/tram-alcove', change.file), 'utf8');
  fs.writeFileSync(path.join(folder, 'before.booth'), text);
  fs.writeFileSync(path.join(folder, 'after.booth'), text.replace(change.old, change.new));
  const words = ['compare', 'before.booth', 'after.booth', '--format', 'markdown'];
  const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...words], { cwd: folder, encoding: 'utf8' });
  assert.equal(status, 0, stderr);
  const body = new MarkdownIt({ html: true }).render(stdout);
  const page = await browser.newPage({ viewport: { width: 900, height: 500 } });
  try {
    await page.setContent(`<!doctype html><style>${style}</style><article>${body}</article>`);
    const headings = await page.locator('h3').allTextContents();
    assert.deepEqual(
      headings,
      [...stdout.matchAll(/^### (.*)$/gm)].map(([, heading]) => heading),
    );
    const rows = stdout.split('\n').filter((line) => line.startsWith('| ') && !line.startsWith('| :--'));
    assert.equal(await page.locator('tr').count(), rows.length);
    const shown = await page.locator('article').textContent();
    assert.match(shown ?? '', /co2 <= 1000 ppm/);
    assert.doesNotMatch(shown ?? '', /[\\|*]|### /);
    assert.deepEqual(await page.evaluate(overflowing), []);
    await page.screenshot({ path: path.join(folder, 'review-comment.png'), fullPage: true });
  } finally {
    await page.close();
  }
}
