// Makes `node_modules` match `package-lock.json`, so that one command works on a fresh clone.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const stamp = path.join(root, 'node_modules/.boothwright-installed');

export function requireNode() {
  const major = Number(process.versions.node.split('.')[0]);
  if (major < 20) {
    console.error(`Node 20 or newer is needed; this is ${process.version}`);
    process.exit(2);
  }
}

export function ensureInstalled() {
  requireNode();
  const wanted = createHash('sha256')
    .update(fs.readFileSync(path.join(root, 'package-lock.json')))
    .digest('hex');
  const have = fs.existsSync(stamp) ? fs.readFileSync(stamp, 'utf8') : '';
  if (have === wanted) return;
  console.error('Installing the libraries that this checkout is missing (npm ci) ...');
  run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  fs.writeFileSync(stamp, wanted);
}

/** Runs a command in the checkout; ends this process with its exit code when it fails. */
export function run(command, args, options = {}) {
  const result = spawnSync(command, args, { cwd: root, stdio: ['ignore', 2, 2], ...options });
  if (result.error) {
    console.error(`Could not start ${command}: ${result.error.message}`);
    process.exit(2);
  }
  if (result.status !== 0) process.exit(result.status ?? 2);
}

export const turboEnvironment = { ...process.env, TURBO_TELEMETRY_DISABLED: '1', DO_NOT_TRACK: '1' };
