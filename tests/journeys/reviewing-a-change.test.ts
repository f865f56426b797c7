import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildCommand, folderWith, root } from './cli-runner.js';
import change from './fixtures/reviewed-change.json' with { type: 'json' };

// Every block of the page is run in the order in which it stands, in a repository of its own, with the real command.
const file = path.join(root, 'docs/reviewing-a-change.md');
const page = fs.readFileSync(file, 'utf8');
const example = fs.readFileSync(path.join(root, 'shared/examples/tram-alcove', change.file), 'utf8');

const command = buildCommand();
const scene = folderWith({ [`repository/${change.file}`]: example });
afterAll(() => {
  command.remove();
  scene.remove();
});

function shell(line: string) {
  const { status, stdout, stderr } = spawnSync('sh', ['-c', line], {
    cwd: path.join(scene.folder, 'repository'),
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

beforeAll(() => {
  const script = `#!/bin/sh\nexec '${process.execPath}' '${command.bundle}' "$@"\n`;
  fs.writeFileSync(path.join(scene.folder, 'boothwright'), script, { mode: 0o755 });
  expect(shell('git init -q && git add . && git commit -q -m first').code).toBe(0);
  expect(example.split(change.old)).toHaveLength(2);
  fs.writeFileSync(path.join(scene.folder, 'repository', change.file), example.replace(change.old, change.new));
});

describe('docs/reviewing-a-change.md', () => {
  test('prints what its commands print', async () => {
    let fresh = page;
    let ran = 0;
    for (const [block, line] of page.matchAll(/```console\n\$ ([^\n]*)\n(?:(?!```)[\s\S])*```/g)) {
      const { code, stdout, stderr } = shell(line as string);
      expect([line, code, stderr]).toEqual([line, 0, '']);
      fresh = fresh.replace(block, () => `\`\`\`console\n$ ${line}\n${stdout}\`\`\``);
      ran += 1;
    }
    expect(ran).toBe(4);
    // Written anew with `npx vitest run tests/journeys/reviewing-a-change.test.ts -u`.
    await expect(fresh).toMatchFileSnapshot(file);
    expect(page).toContain(`--message "${change.message}"`);
  });

  test('says of the change what the comparison says', () => {
    const { stdout } = shell(`boothwright compare HEAD~1:${change.file} HEAD:${change.file} --format json --full`);
    const comparison = JSON.parse(stdout);
    const turns = (wanted: string) => comparison.requirements.filter(({ turn }: { turn: string }) => turn === wanted);
    expect(turns('lost')).toEqual([]);
    expect(turns('gained').map(({ kind }: { kind: string }) => kind)).toEqual(['co2']);
    for (const { kind, steps } of comparison.requirements) if (kind === 'room-tone') expect(steps).toBeLessThan(0.5);
    const louder = comparison.effects.filter(({ what }: { what: string }) => what.startsWith('air '));
    expect(louder).toHaveLength(2);
    for (const { old, new: now } of louder) {
      expect(now - old).toBeGreaterThan(12.5);
      expect(now - old).toBeLessThan(14.5);
      expect(now).toBeLessThan(-10);
    }
    expect(comparison.findings.lost.length).toBeGreaterThan(0);
  });
});
