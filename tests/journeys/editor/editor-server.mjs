/**
 * Starts and stops the editor's server from `.cache/editor-host`: the same workbench, extension host and extension
 * interface as on a desktop, served to a browser on the loopback address.
 */
import { spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { nodeOf, serverMain } from '../../../scripts/editor-host.mjs';

/** The empty gallery keeps the workbench from looking anything up outside this machine. */
const noGallery = JSON.stringify({ serviceUrl: '', itemUrl: '', resourceUrlTemplate: '' });

/** Nothing that moves, asks or looks things up; tests and pictures must come out the same each time. */
const calmSettings = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'telemetry.telemetryLevel': 'off',
  'extensions.ignoreRecommendations': true,
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'git.enabled': false,
  'chat.disableAIFeatures': true,
  'editor.minimap.enabled': false,
  'editor.stickyScroll.enabled': false,
  'editor.cursorBlinking': 'solid',
};

/** A fresh folder for one run's data, with calm settings. @param {Record<string, unknown>} [settings] */
export function freshDataFolder(settings = {}) {
  const data = fs.mkdtempSync(path.join(os.tmpdir(), 'booth-editor-'));
  fs.mkdirSync(path.join(data, 'data/User'), { recursive: true });
  fs.writeFileSync(path.join(data, 'data/User/settings.json'), JSON.stringify({ ...calmSettings, ...settings }));
  return data;
}

/** Puts a packaged extension into a data folder. @param {{ host: string, data: string, vsix: string }} options */
export function installExtension({ host, data, vsix }) {
  const result = spawnSync(
    nodeOf(host),
    [serverMain(host), '--install-extension', vsix, '--server-data-dir', data, '--accept-server-license-terms'],
    { encoding: 'utf8', env: { ...process.env, EXTENSIONS_GALLERY: noGallery } },
  );
  if (result.status !== 0) throw new Error(`The extension could not be installed: ${result.stderr || result.stdout}`);
}

/** @returns {Promise<number>} */
function freePort() {
  return new Promise((resolve, reject) => {
    const probe = net.createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = /** @type {net.AddressInfo} */ (probe.address());
      probe.close(() => resolve(port));
    });
  });
}

/** @param {() => Promise<boolean>} ready @param {number} milliseconds @param {string} complaint */
async function until(ready, milliseconds, complaint) {
  const end = Date.now() + milliseconds;
  while (!(await ready())) {
    if (Date.now() > end) throw new Error(complaint);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/**
 * The server runs in a process group of its own, since its extension host outlives it for a while: `stop` ends the
 * whole group and removes the data folder.
 *
 * @param {{ host: string, data: string, env?: Record<string, string | undefined> }} options
 */
export async function startEditorServer({ host, data, env = {} }) {
  const port = await freePort();
  const logFile = path.join(data, 'server.log');
  const log = fs.openSync(logFile, 'w');
  const server = spawn(
    nodeOf(host),
    [
      serverMain(host),
      ...['--host', '127.0.0.1', '--port', String(port), '--without-connection-token'],
      ...['--accept-server-license-terms', '--telemetry-level', 'off', '--disable-workspace-trust'],
      ...['--enable-smoke-test-driver', '--server-data-dir', data],
    ],
    {
      detached: true,
      stdio: ['ignore', log, log],
      env: { ...process.env, EXTENSIONS_GALLERY: noGallery, ...env },
    },
  );
  fs.closeSync(log);
  // A run that is broken off must not leave an editor or its data behind.
  const breakOff = () => process.exit(130);
  const stop = () => {
    process.off('exit', stop);
    for (const signal of ['SIGINT', 'SIGTERM']) process.off(signal, breakOff);
    try {
      if (server.pid !== undefined) process.kill(-server.pid, 'SIGKILL');
    } catch {
      // The group has ended by itself.
    }
    fs.rmSync(data, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
  };
  process.once('exit', stop);
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, breakOff);
  const url = `http://127.0.0.1:${port}`;
  try {
    await until(
      async () => {
        if (server.exitCode !== null) throw new Error('The editor server ended at once');
        return fetch(`${url}/version`).then(
          (answer) => answer.ok,
          () => false,
        );
      },
      60_000,
      'The editor server did not answer within 60 s',
    );
  } catch (error) {
    console.error(fs.readFileSync(logFile, 'utf8').slice(-2000));
    stop();
    throw error;
  }
  return { url, port, stop };
}
