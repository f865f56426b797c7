import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { comparisonSchema } from '@boothwright/assessment';
import Ajv from 'ajv/dist/2020.js';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { buildCommand, folderWith, root, stackLine } from './cli-runner.js';

const command = buildCommand();
afterAll(() => command.remove());
let scene: ReturnType<typeof folderWith> | undefined;
afterEach(() => {
  scene?.remove();
  scene = undefined;
});

/** A shed whose board lies in a file of its own; everything in it is invented. */
const boards = `material board "birch board" {
  kind    panel
  density 600 kg/m3
  modulus 8 GPa
  source  "invented demo data"
}
`;
const shed = `# Everything in this shed is invented.
use "boards.booth"

assembly skin { board 12 mm }
assembly thick { board 18 mm }

booth shed "the shed" {
  inside 1.188 m x 1.188 m x 2.00 m
  walls  skin
  roof   skin
  floor  skin
}

require mass <= 120 kg

variant heavier "thicker boards" { shed.walls = thick }
variant heaviest "thick all round" { shed.walls = thick; shed.roof = thick; shed.floor = thick }
`;
const thicker = shed.replace('skin { board 12 mm }', 'skin { board 24 mm }');

function git(words: readonly string[], cwd: string) {
  const identity = ['-c', 'user.name=Somebody', '-c', 'user.email=somebody@example.org', '-c', 'commit.gpgsign=false'];
  const { status, stderr } = spawnSync('git', [...identity, ...words], { cwd, encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
}

/** A repository with the shed in `booths/`, committed once on `main`. */
function repository(more: Readonly<Record<string, string | Buffer>> = {}) {
  scene = folderWith({ 'booths/shed.booth': shed, 'booths/boards.booth': boards, ...more });
  const { folder } = scene;
  git(['init', '-q', '-b', 'main', '.'], folder);
  git(['add', '.'], folder);
  git(['commit', '-q', '-m', 'first'], folder);
  const file = (name: string) => path.join(folder, name);
  return {
    folder,
    write: (name: string, text: string) => fs.writeFileSync(file(name), text),
    git: (...words: string[]) => git(words, folder),
    run: (words: readonly string[], below = '.') => command.run(['compare', ...words], path.join(folder, below)),
  };
}

const fact = 'booth shed, wall and roof and floor skin, layer 1: board 12 mm -> 24 mm';

describe('boothwright compare', () => {
  test('stands in the help, with its exit codes', () => {
    expect(command.run(['--help'], root).stdout).toContain('compare [options] <OLD> [NEW]');
    const { stdout, code } = command.run(['compare', '--help'], root);
    expect(code).toBe(0);
    for (const word of ['--since <REVISION>', '--variant <NAME>', '--format <FORMAT>', 'Exit codes:'])
      expect(stdout).toContain(word);
  });

  test('of two files tells what changed and what it does, and ends with 1 when something met is lost', () => {
    const { run, write } = repository();
    write('booths/new.booth', thicker);
    const there = run(['booths/shed.booth', 'booths/new.booth']);
    expect(there).toMatchObject({ code: 1, stderr: '' });
    expect(there.stdout).toContain('1 requirement that was met is not any more');
    expect(there.stdout).toContain('LOST');
    expect(there.stdout).toContain(fact);
    expect(there.stdout).toMatch(/shed: mass +\d+ kg +\d+ kg +\+\d+ kg +worse/);
    const back = run(['booths/new.booth', 'booths/shed.booth']);
    expect(back).toMatchObject({ code: 0, stderr: '' });
    expect(back.stdout).toContain('GAINED');
  });

  test('of a revision and the file reads both, with what they use at their own revision', () => {
    const { run, write } = repository();
    expect(run(['main:booths/shed.booth', 'booths/shed.booth'])).toMatchObject({ code: 0, stderr: '' });
    expect(run(['--since', 'HEAD', 'booths/shed.booth']).stdout).toContain('No difference.');
    write('booths/boards.booth', boards.replace('600 kg/m3', '660 kg/m3'));
    const { stdout, stderr } = run(['--since', 'main', 'booths/shed.booth']);
    expect(stderr).toBe('');
    expect(stdout).toContain('material board: density 600 kg/m3 -> 660 kg/m3');
    // From the folder of the file: from the top, or with `./` from here.
    expect(run(['main:./shed.booth', 'shed.booth'], 'booths').stdout).toBe(
      run(['main:booths/shed.booth', 'shed.booth'], 'booths').stdout.replace('main:booths/', 'main:./'),
    );
  });

  test('of two revisions, and of what is staged', () => {
    const { run, write, git: ask } = repository();
    write('booths/shed.booth', thicker);
    ask('commit', '-q', '-a', '-m', 'second');
    expect(run(['HEAD~1:booths/shed.booth', 'HEAD:booths/shed.booth']).stdout).toContain(fact);
    write('booths/shed.booth', shed);
    ask('add', '.');
    expect(run(['HEAD:booths/shed.booth', ':booths/shed.booth']).stdout).toContain('GAINED');
  });

  test('follows a file to its former name and says so', () => {
    const { run, git: ask } = repository();
    ask('mv', 'booths/shed.booth', 'booths/hut.booth');
    const { code, stdout, stderr } = run(['--since', 'main', 'booths/hut.booth']);
    expect(code).toBe(0);
    expect(stdout).toContain('No difference.');
    expect(stderr).toBe('note: booths/hut.booth was called booths/shed.booth at main\n');
  });

  test('of variants holds one against the base, or two against each other', () => {
    const { run } = repository();
    const one = run(['booths/shed.booth', '--variant', 'heavier']);
    expect(one.stdout).toContain('new: booths/shed.booth, variant heavier');
    expect(one.stdout).toContain('booth shed: front, back, left, right skin -> thick');
    const two = run(['booths/shed.booth', '--variant', 'heavier', '--variant', 'heaviest']);
    expect(two.stdout).toContain('booth shed: roof, floor skin -> thick');
    expect(run(['booths/shed.booth', '--variant', 'heavy'])).toMatchObject({ code: 2, stdout: '' });
  });

  test('writes JSON after its schema, and Markdown for a comment', () => {
    const { run, write } = repository();
    write('booths/shed.booth', thicker);
    const words = ['--since', 'main', 'booths/shed.booth', '--format'];
    const document = JSON.parse(run([...words, 'json']).stdout);
    const validate = new Ajv.default({ strict: true, allowUnionTypes: true }).compile(comparisonSchema);
    validate(document);
    expect(validate.errors).toBeNull();
    expect(document).toMatchObject({ sameFacts: false, sameEffect: false, requirements: [{ turn: 'lost' }] });
    const { stdout } = run([...words, 'markdown']);
    expect(stdout).toMatch(/^\*\*1 requirement .*\*\* `main:booths\/shed\.booth` → `booths\/shed\.booth`\n/);
    expect(stdout).toContain('### Requirements');
    expect(stdout).toContain('| LOST | mass');
  });

  test('says what of a text with errors is compared, with the place at its revision, and ends with 1', () => {
    const { run, write } = repository();
    write('booths/shed.booth', shed.replace('roof   skin', 'roof   skinn'));
    const { code, stdout, stderr } = run(['booths/shed.booth', 'main:booths/shed.booth']);
    expect(code).toBe(1);
    expect(stderr).toContain('booths/shed.booth:10');
    expect(stdout).toContain('What could not be read');
    write('booths/shed.booth', 'booth {');
    expect(run(['main:booths/shed.booth', 'booths/shed.booth']).code).toBe(1);
  });
});

describe('what cannot be compared ends with 2 and one message', () => {
  const bytes = Buffer.from([0x62, 0x00, 0x01]);

  test.each<[string, string[], string]>([
    ['one file and nothing else', ['booths/shed.booth'], 'compare-what'],
    ['too many variants', ['booths/shed.booth', '--variant=a', '--variant=b', '--variant=c'], 'compare-what'],
    ['--since with two files', ['--since', 'main', 'booths/shed.booth', 'booths/shed.booth'], 'compare-what'],
    ['an unknown revision', ['nowhere:booths/shed.booth', 'booths/shed.booth'], 'unknown-revision'],
    ['a revision that looks like an option', ['--since=--output=x', 'booths/shed.booth'], 'unknown-revision'],
    ['a file that was not there', ['main:booths/hut.booth', 'booths/shed.booth'], 'file-not-at-revision'],
    ['a path beside the current folder', ['main:shed.booth', 'booths/shed.booth'], 'file-not-at-revision'],
    ['a file that is not there now', ['main:booths/shed.booth', 'booths/hut.booth'], 'missing-file'],
    ['a path out of the repository', ['main:../shed.booth', 'booths/shed.booth'], 'missing-file'],
    ['a revision without a path', ['main:', 'booths/shed.booth'], 'missing-file'],
    ['a folder at a revision', ['main:booths', 'booths/shed.booth'], 'folder-not-file'],
    ['a binary file at a revision', ['main:sound.booth', 'booths/shed.booth'], 'not-text'],
    ['a binary file', ['booths/shed.booth', 'sound.booth'], 'not-text'],
    ['a file too large', ['main:large.booth', 'booths/shed.booth'], 'file-too-large'],
  ])('%s', (_, words, id) => {
    const { run, folder } = repository({ 'sound.booth': bytes, 'large.booth': `# ${'x'.repeat(2_000_001)}\n` });
    const { code, stdout, stderr } = run(words);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr.match(/error\[/g)).toHaveLength(1);
    expect(stderr).toContain(`error[${id}]`);
    expect(stderr).not.toMatch(stackLine);
    expect(fs.readdirSync(folder).sort()).toEqual(['.git', 'booths', 'large.booth', 'sound.booth']);
  });

  test('no repository', () => {
    scene = folderWith({ 'shed.booth': shed, 'boards.booth': boards });
    const { code, stderr } = command.run(['compare', '--since', 'main', 'shed.booth'], scene.folder);
    expect(code).toBe(2);
    expect(stderr).toContain('error[no-repository]');
  });

  test('no git', () => {
    const { folder } = repository();
    const { code, stderr } = command.run(['compare', '--since', 'main', 'booths/shed.booth'], folder, {
      PATH: path.join(folder, 'nowhere'),
    });
    expect(code).toBe(2);
    expect(stderr).toContain('error[git-missing]');
  });
});
