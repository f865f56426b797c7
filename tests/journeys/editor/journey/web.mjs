import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import { launchBrowser } from '../browser.mjs';
import { freshDataFolder, installExtension, startEditorServer } from '../editor-server.mjs';
import { goTo, openFile, openFolder, pointAt } from './workbench.mjs';

/** Leaves only what runs in a browser, so that nothing else can have answered. @param {string} data */
function keepBrowserPart(data) {
  const extensions = path.join(data, 'extensions');
  const name = fs.readdirSync(extensions).find((each) => each.startsWith('boothwright.'));
  assert.ok(name, 'the extension is installed');
  const folder = path.join(extensions, name);
  const file = path.join(folder, 'package.json');
  const { main, ...manifest } = JSON.parse(fs.readFileSync(file, 'utf8'));
  assert.equal(main, './dist/extension.cjs');
  fs.writeFileSync(file, JSON.stringify(manifest));
  const ofNode = ['extension.cjs', 'server.cjs', 'assess-thread.cjs', 'boothwright.mjs'];
  for (const left of ofNode) fs.rmSync(path.join(folder, 'dist', left));
}

/** The extension without its Node part: in the web worker of the workbench, with the server in a worker of its own. */
export const inBrowser = {
  title: 'the web extension answers with its server in a web worker, also for a file that another one uses',
  /** @param {{ host: string, vsix: string, workspace: string, picture: string, size: { width: number, height: number } }} options */
  async run({ host, vsix, workspace, picture, size }) {
    const using = path.join(workspace, 'uses-another.booth');
    fs.writeFileSync(using, 'use "./first-draft.booth"\nrequire stc of shell >= 20\n');
    const data = freshDataFolder({ 'workbench.colorTheme': 'Default Dark Modern', 'editor.hover.delay': 200 });
    installExtension({ host, data, vsix });
    keepBrowserPart(data);
    const server = await startEditorServer({ host, data });
    const browser = await launchBrowser();
    try {
      const page = await browser.newPage({ viewport: size });
      page.setDefaultTimeout(60_000);
      try {
        await openFolder(page, server.url, workspace);
        await openFile(page, 'uses-another.booth');
        await page.waitForSelector('.view-line:has-text("require stc"):has-text("met")');
        assert.equal(await page.locator('.squiggly-error').count(), 0);
        await openFile(page, 'tram-alcove.booth');
        await goTo(page, 23, 1);
        await page.waitForSelector('.view-line:has-text("assembly shell"):has-text("STC")');
        await page.locator('.statusbar-item', { hasText: /alcove: \d of \d met/ }).waitFor();
        await pointAt(page, 'assembly shell', 'shell', /STC \d+/);
      } finally {
        await page.screenshot({ path: picture });
      }
    } finally {
      await browser.close();
      server.stop();
      fs.rmSync(using);
    }
  },
};
