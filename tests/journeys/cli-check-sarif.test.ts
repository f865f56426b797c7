import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildCommand, root } from './cli-runner.js';

let command: ReturnType<typeof buildCommand>;
let folder: string;

beforeAll(() => {
  command = buildCommand();
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'booth-sarif-'));
});
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

test('check --format sarif prints one log for all files, names them from where it is run, and ends as the text does', () => {
  fs.mkdirSync(path.join(folder, 'booths'));
  fs.copyFileSync(
    path.join(root, 'shared/examples/tram-alcove/first-draft.booth'),
    path.join(folder, 'booths/draft.booth'),
  );
  fs.writeFileSync(path.join(folder, 'broken.booth'), 'let gap = 3 furlong\n');
  const words = ['booths/draft.booth', 'broken.booth'];
  const { code, stdout } = command.run(['check', '--format', 'sarif', ...words], folder);
  const [run] = JSON.parse(stdout).runs;
  expect(run.artifacts.map((each: { location: { uri: string } }) => each.location.uri)).toEqual(words);
  const at = run.results.map(
    (each: { locations: { physicalLocation: { artifactLocation: { uri: string } } }[] }) =>
      each.locations[0]?.physicalLocation.artifactLocation.uri,
  );
  expect(new Set(at)).toEqual(new Set(words));
  expect(run.results.some(({ ruleId }: { ruleId: string }) => ruleId === 'requirement-missed')).toBe(true);
  expect(code).toBe(command.run(['check', ...words], folder).code);
  expect(command.run(['check', '--format', 'sarif', ...words], folder).stdout).toBe(stdout);
});

test('a file that is not there leaves nothing on standard output', () => {
  const { code, stdout, stderr } = command.run(['check', '--format', 'sarif', 'none.booth'], folder);
  expect([code, stdout]).toEqual([2, '']);
  expect(stderr).toContain('none.booth');
});
