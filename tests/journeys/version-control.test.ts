import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { smallBooth } from './bad-inputs.js';
import { buildCommand, folderWith, root } from './cli-runner.js';

// The blocks of the page are run as they stand, in a repository of their own, with the real command on the search path.
const page = fs.readFileSync(path.join(root, 'docs/version-control.md'), 'utf8');
const blocks = (kind: string) =>
  [...page.matchAll(new RegExp(`\`\`\`${kind}\n(.*?)\`\`\``, 'gs'))].map(([, text]) => text as string);
const [conversion, hook] = blocks('sh');
const steps = [...(blocks('yaml')[0] ?? '').matchAll(/run: (.*)/g)].map(([, line]) => line as string);

const command = buildCommand();
const scene = folderWith({ 'repository/small.booth': smallBooth });
const repository = path.join(scene.folder, 'repository');
afterAll(() => {
  command.remove();
  scene.remove();
});

function shell(script: string) {
  const { status, stdout, stderr } = spawnSync('sh', ['-c', script], {
    cwd: repository,
    encoding: 'utf8',
    env: {
      PATH: `${scene.folder}:${process.env.PATH}`,
      HOME: scene.folder,
      GIT_CONFIG_NOSYSTEM: '1',
      GIT_AUTHOR_NAME: 'A',
      GIT_AUTHOR_EMAIL: 'a@example.org',
      GIT_COMMITTER_NAME: 'A',
      GIT_COMMITTER_EMAIL: 'a@example.org',
    },
  });
  return { code: status, stdout, stderr };
}

const write = (text: string) => fs.writeFileSync(path.join(repository, 'small.booth'), text);

beforeAll(() => {
  const script = `#!/bin/sh\nexec '${process.execPath}' '${command.bundle}' "$@"\n`;
  fs.writeFileSync(path.join(scene.folder, 'boothwright'), script, { mode: 0o755 });
  expect(shell('boothwright format small.booth && git init -q && git add . && git commit -q -m first').code).toBe(0);
});

describe('the recipes of docs/version-control.md', () => {
  test('a diff shows the changed line and the changed figures', () => {
    expect(shell(conversion as string).code).toBe(0);
    const tidy = fs.readFileSync(path.join(repository, 'small.booth'), 'utf8');
    write(tidy.replace(/board +12 mm/, (found) => found.replace('12', '18')));
    const { code, stdout } = shell('git diff');
    expect(code).toBe(0);
    expect(stdout).toMatch(/^-\s+board +12 mm/m);
    expect(stdout).toMatch(/^\+\s+board +18 mm/m);
    const mass = (sign: string) => Number(new RegExp(`^\\${sign}\\w+: mass: ([\\d.]+) kg`, 'm').exec(stdout)?.[1]);
    expect(mass('+')).toBeGreaterThan(mass('-'));
    expect(shell('git diff --no-textconv').stdout).not.toContain(': mass:');
    write(tidy);
  });

  test('the hook keeps out another layout and an error, and lets a good text pass', () => {
    expect(shell(hook as string).code).toBe(0);
    const tidy = fs.readFileSync(path.join(repository, 'small.booth'), 'utf8');
    const commit = (text: string) => {
      write(text);
      return shell('git add small.booth && git commit -q -m change');
    };
    const loose = commit(tidy.replace(/board +12 mm/, 'board      12 mm'));
    expect([loose.code, loose.stdout + loose.stderr]).toEqual([1, expect.stringContaining('small.booth')]);
    const wrong = commit(tidy.replace(/board +12 mm/, (found) => found.replace('mm', 'kg/m3')));
    expect([wrong.code, wrong.stderr]).toEqual([1, expect.stringContaining('error[unit-of-wrong-dimension]')]);
    // What is staged counts, not what lies in the folder.
    write(tidy.replace(/board +12 mm/, (found) => found.replace('12', '13')));
    shell('git add small.booth');
    write('no booth\n');
    const good = shell('git commit -q -m change');
    expect([good.code, good.stderr]).toEqual([0, '']);
    shell('git checkout -q -- small.booth');
  });

  test('the steps for each change run', () => {
    expect(steps).toHaveLength(3);
    expect(shell(steps[0] as string).code).toBe(0);
    const checked = shell(steps[1] as string);
    expect(checked.stdout).toContain('small.booth');
    shell(steps[2] as string);
    const log = JSON.parse(fs.readFileSync(path.join(repository, 'boothwright.sarif'), 'utf8'));
    expect(log.version).toBe('2.1.0');
  });
});
