import { chromium } from 'playwright-core';
import { findChromium } from '../../../scripts/editor-host.mjs';

/** The browser that stands in for the editor's window. */
export function launchBrowser() {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('No Chromium found: install it or name it in CHROMIUM');
  return chromium.launch({
    executablePath,
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
