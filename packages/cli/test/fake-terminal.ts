import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Terminal } from '../src/terminal.js';

/** A terminal that remembers what was written, in a folder of its own. */
export function fakeTerminal(files: Readonly<Record<string, string | Buffer>> = {}) {
  const cwd = fs.realpathSync(fs.mkdtempSync(path.join(os.tmpdir(), 'boothwright-')));
  for (const [name, content] of Object.entries(files)) {
    fs.mkdirSync(path.dirname(path.join(cwd, name)), { recursive: true });
    fs.writeFileSync(path.join(cwd, name), content);
  }
  const written = { stdout: '', stderr: '' };
  const output = (name: 'stdout' | 'stderr') => ({
    write: (text: string) => {
      written[name] += text;
    },
  });
  const terminal: Terminal = { cwd, env: {}, stdout: output('stdout'), stderr: output('stderr') };
  return {
    terminal,
    written,
    path: (name: string) => path.join(cwd, name),
    read: (name: string) => fs.readFileSync(path.join(cwd, name)),
    remove: () => fs.rmSync(cwd, { recursive: true, force: true }),
  };
}
