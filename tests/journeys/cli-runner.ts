import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

export interface Answer {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** The real command, bundled from the sources into a folder of its own, so that test files do not disturb each other. */
export function buildCommand() {
  const folder = fs.realpathSync(fs.mkdtempSync(path.join(os.tmpdir(), 'boothwright-command-')));
  const bundle = path.join(folder, 'boothwright.mjs');
  const built = spawnSync(process.execPath, [path.join(root, 'packages/cli/esbuild.mjs'), bundle], {
    encoding: 'utf8',
  });
  if (built.status !== 0) throw new Error(`the command could not be bundled: ${built.stderr}`);
  return {
    bundle,
    run: (words: readonly string[], cwd: string, env: NodeJS.ProcessEnv = {}): Answer => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...words], {
        cwd,
        encoding: 'utf8',
        env: { PATH: process.env.PATH, ...env },
        maxBuffer: 1 << 27,
        timeout: 60_000,
      });
      return { code: status, stdout, stderr };
    },
    /** A line of shell in which `$COMMAND` is the bundle. */
    shell: (line: string, cwd: string): Answer => {
      const env = { PATH: process.env.PATH, COMMAND: bundle };
      const { status, stdout, stderr } = spawnSync('bash', ['--norc', '-c', line], {
        cwd,
        encoding: 'utf8',
        env,
        timeout: 60_000,
      });
      return { code: status, stdout, stderr };
    },
    remove: () => fs.rmSync(folder, { recursive: true, force: true }),
  };
}

/** A folder with the given files that is taken away again by `remove`. */
export function folderWith(files: Readonly<Record<string, string | Buffer>>) {
  const folder = fs.realpathSync(fs.mkdtempSync(path.join(os.tmpdir(), 'boothwright-files-')));
  for (const [name, content] of Object.entries(files)) {
    fs.mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    fs.writeFileSync(path.join(folder, name), content);
  }
  return { folder, remove: () => fs.rmSync(folder, { recursive: true, force: true }) };
}

/** The line of a JavaScript stack trace. */
export const stackLine = /^\s+at .*[:(]/m;
