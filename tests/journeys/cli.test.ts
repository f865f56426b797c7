import fs from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { badTexts, smallBooth } from './bad-inputs.js';
import { buildCommand, folderWith, root, stackLine } from './cli-runner.js';

const command = buildCommand();
const schema = JSON.parse(fs.readFileSync(path.join(root, 'packages/assessment/schema/result.schema.json'), 'utf8'));
const validate = new Ajv2020({ allErrors: true, strict: false }).compile(schema);
afterAll(() => command.remove());
let scene: ReturnType<typeof folderWith> | undefined;
afterEach(() => {
  scene?.remove();
  scene = undefined;
});

function inFolder(files: Readonly<Record<string, string | Buffer>>) {
  scene?.remove();
  scene = folderWith(files);
  const { folder } = scene;
  return (...words: string[]) => command.run(words, folder);
}

/** Words that a prediction may not use of anything, and what a hole in the figures would look like. */
const forbidden = /\b([Ss]afe|[Cc]ompliant|[Aa]pproved)\b|NaN|undefined|\[object|Infinity/;
const errors = (text: string) => text.match(/\berror\[[a-z0-9-]+\]/g) ?? [];

describe('boothwright check', () => {
  test('keeps to the answers and says where the rest is', () => {
    const run = inFolder({ 'small.booth': smallBooth });
    const short = run('check', 'small.booth').stdout;
    const full = run('check', '--full', 'small.booth').stdout;
    expect(short.split('\n').length).toBeLessThan(full.split('\n').length * 0.75);
    for (const heading of [
      'Requirements',
      'What to change first',
      'Other cautions',
      'Assumed where',
      'What this leaves out',
    ])
      expect(short).toMatch(new RegExp(`^${heading}`, 'm'));
    expect(short).toContain('`--full`');
    expect(short).not.toContain('Rests on');
    expect(short).not.toMatch(forbidden);
    expect(full).not.toContain('`--full`');
  });

  test('tells figures in the units that are asked for, and documents for programs as always', () => {
    const run = inFolder({ 'small.booth': smallBooth });
    const metric = run('check', '--full', 'small.booth').stdout;
    const imperial = run('check', '--full', '--units', 'imperial', 'small.booth').stdout;
    const pounds = /^ +(?:\S+: )?mass\b.*? (\d+) lb/m.exec(imperial)?.[1];
    const kilograms = /^ +(?:\S+: )?mass\b.*? (\d+) kg/m.exec(metric)?.[1];
    expect(metric).not.toMatch(/\d lb\b/);
    expect(Math.abs(Number(pounds) - Number(kilograms) / 0.45359237)).toBeLessThan(2);
    const json = run('check', '--format', 'json', 'small.booth').stdout;
    expect(run('check', '--format', 'json', '--units', 'imperial', 'small.booth').stdout).toBe(json);
    const wrong = run('check', '--units', 'cubits', 'small.booth');
    expect(wrong.code).toBe(2);
    expect(wrong.stderr).toContain('metric, imperial');
  });

  test('prints the verdict first, then requirements, figures, assumptions and what is left out', () => {
    const { code, stdout, stderr } = inFolder({ 'small.booth': smallBooth })('check', '--full', 'small.booth');
    expect(stderr).toBe('');
    expect(code).toBe(1);
    expect(stdout.split('\n').slice(0, 2)).toEqual([
      'small.booth · the corner booth',
      expect.stringMatching(/^MISSED: \d of 3 requirements missed/),
    ]);
    const headings = [
      'In short',
      'Requirements',
      'Hazards that can kill',
      'What to change first',
      'What each variant is worth',
      'What gets in',
      'What gets out',
      'Sound inside',
      'Air',
      'Size, mass, floor, cost',
      'Assemblies',
      'Other cautions',
      'Assumed where the text is silent',
      'What this leaves out',
    ].map((heading) => stdout.search(new RegExp(`^${heading}`, 'm')));
    expect(headings).toEqual([...headings].sort((a, b) => a - b));
    expect(headings).not.toContain(-1);
    expect(stdout).not.toMatch(forbidden);
    expect(stdout).not.toContain('\u001b');
  });

  test('ends with 0 when every requirement is met', () => {
    const easy = smallBooth.replace(/^require .*$/gm, '').concat('\nrequire mass <= 2000 kg\n');
    const { code, stdout } = inFolder({ 'easy.booth': easy })('check', 'easy.booth');
    expect(stdout).toContain('MET: the requirement is met by the prediction');
    expect(code).toBe(0);
  });

  test('ends with 1 when a requirement cannot be assessed', () => {
    const open = smallBooth.replace(/^require .*$/gm, '').concat('\nrequire room-tone <= -60 dBFS\n');
    const { code, stdout } = inFolder({ 'open.booth': open })('check', 'open.booth');
    expect(stdout).toContain('not assessed');
    expect(code).toBe(1);
  });

  test('gives the same text and the same document every time', () => {
    const run = inFolder({ 'small.booth': smallBooth });
    expect(run('check', 'small.booth')).toEqual(run('check', 'small.booth'));
    expect(run('check', '--format', 'json', 'small.booth')).toEqual(run('check', '--format', 'json', 'small.booth'));
  });

  test('works on several specifications in order; the worst exit code counts', () => {
    const run = inFolder({ 'a.booth': smallBooth, 'b.booth': smallBooth.replace('the corner booth', 'another booth') });
    const { code, stdout, stderr } = run('check', 'b.booth', 'nowhere.booth', 'a.booth');
    expect(stdout.indexOf('b.booth · another booth')).toBe(0);
    expect(stdout.indexOf('a.booth · the corner booth')).toBeGreaterThan(0);
    expect(errors(stderr)).toEqual(['error[missing-file]']);
    expect(code).toBe(2);
  });

  test('--variant works a variant out in place of the base', () => {
    const run = inFolder({ 'small.booth': smallBooth });
    const { stdout } = run('check', '--variant', 'sealed', 'small.booth');
    expect(stdout.split('\n')[0]).toBe('small.booth · the corner booth · variant sealed');
    expect(stdout).not.toContain('What each variant is worth');
    const { code, stderr } = run('check', '--variant', 'seald', 'small.booth');
    expect(code).toBe(2);
    expect(stderr).toContain('error[unknown-variant]: found no variant seald');
    expect(stderr).toContain('did you mean sealed?');
  });

  test('--severity tells a warning otherwise, and says what it cannot follow', () => {
    const asksNothing = smallBooth.replace(/^require .*$/gm, '');
    const run = inFolder({ 'small.booth': `${asksNothing}assembly thick { air 1.5 m }\n` });
    const plain = run('check', 'small.booth');
    expect(plain.stderr).toContain('warning[value-unusual]');
    expect(plain.code).toBe(0);
    const off = run('check', '--severity', 'value-unusual=off', 'small.booth');
    expect(off.stderr).not.toContain('value-unusual');
    expect(off.code).toBe(0);
    const raised = run(
      'check',
      '--severity',
      'value-unusual=hint',
      '--severity=allow-unused=hint',
      '--severity=value-unusual=error',
      'small.booth',
    );
    expect(raised.stderr).toContain('error[value-unusual]');
    expect(raised.code).toBe(1);
    for (const [word, told] of [
      ['value-unusual=loud', /one of error, warning, hint, off; found `loud`\./],
      ['value-unusal=off', /Found no problem `value-unusal`; did you mean `value-unusual`\?/],
      ['unknown-name=off', /`unknown-name` is always an error/],
      ['value-unusual', /Write an identifier, `=` and a level/],
    ] as const) {
      const refused = run('check', '--severity', word, 'small.booth');
      expect(refused.stderr).toMatch(told);
      expect(refused.stdout).toBe('');
      expect(refused.code).toBe(2);
    }
  });

  test('names files outside the current folder as the user does', () => {
    scene = folderWith({ 'here/.keep': '', 'there/bad.booth': smallBooth.replace('roof   shell', 'roof   shel') });
    const { stderr, stdout } = command.run(['check', '../there/bad.booth'], path.join(scene.folder, 'here'));
    expect(stderr).toMatch(/^\.\.\/there\/bad\.booth:43:10: error\[/);
    expect(stdout).toMatch(/^\.\.\/there\/bad\.booth · /);
  });

  test('the demo booth: says which requirements are missed, what to change, and that the floor carries too much', () => {
    const { code, stdout, stderr } = command.run(['check', 'shared/examples/tram-alcove/tram-alcove.booth'], root);
    expect(stderr).toBe('');
    expect(code).toBe(1);
    expect(stdout).toMatch(/MISSED +floor-load <= 1\.5 kPa/);
    expect(stdout).toMatch(/MISSED +room-tone <= -62 dBFS/);
    for (const heading of ['What to change first', 'Room tone', 'What gets in', 'Air', 'What each variant is worth'])
      expect(stdout).toContain(heading);
    expect(stdout).not.toMatch(forbidden);
  });
});

describe('boothwright check --format json', () => {
  test('prints one document for one specification and nothing else on standard output', () => {
    const broken = smallBooth.replace('roof   shell', 'roof   shel');
    const { code, stdout, stderr } = inFolder({ 'small.booth': broken })('check', '--format', 'json', 'small.booth');
    const document = JSON.parse(stdout);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.schema).toBe('boothwright-result/1');
    expect(document.file).toBe('small.booth');
    expect(Object.keys(document.booths)).toEqual(['corner']);
    expect(errors(stderr)).toEqual(['error[unknown-name]']);
    expect(code).toBe(1);
  });

  test('prints a list for several specifications', () => {
    const run = inFolder({ 'a.booth': smallBooth, 'b.booth': smallBooth });
    const documents = JSON.parse(run('check', '--format', 'json', 'a.booth', 'b.booth').stdout);
    expect(documents.map(({ file }: { file: string }) => file)).toEqual(['a.booth', 'b.booth']);
  });

  test('prints nothing on standard output when the only specification cannot be read', () => {
    const { code, stdout } = inFolder({})('check', '--format', 'json', 'nowhere.booth');
    expect([code, stdout]).toEqual([2, '']);
  });
});

describe('bad texts: one message at the right place, and the rest is assessed', () => {
  test.each(badTexts)('$name', ({ text, at }) => {
    const { code, stdout, stderr } = inFolder({ 'bad.booth': text })('check', 'bad.booth');
    expect(errors(stderr)).toHaveLength(1);
    expect(stderr.split('\n')[0]).toMatch(new RegExp(`^bad\\.booth:${at}: error\\[[a-z-]+\\]: .{12,}[^.]$`));
    const [line = 0, column = 0] = at.split(':').map(Number);
    const prefix = `  ${line} | `;
    expect(stderr.split('\n')[1]).toBe(prefix + text.split('\n')[line - 1]);
    expect(stderr.split('\n')[2]?.indexOf('^')).toBe(prefix.length + column - 1);
    // What was expected or what to do stands in the message or below it.
    expect(stderr).toMatch(/help: |such as|expected|must|at most|at least/);
    expect(stderr).not.toMatch(stackLine);
    expect(stdout).toContain('Requirements');
    expect(stdout).toContain('What gets in');
    expect(code).toBe(1);
  });

  test('files that use each other in a circle are named as a circle', () => {
    const run = inFolder({ 'a.booth': `use "./b.booth"\n${smallBooth}`, 'b.booth': 'use "./a.booth"\n' });
    const { code, stdout, stderr } = run('check', 'a.booth');
    expect(errors(stderr)).toEqual(['error[use-cycle]']);
    expect(stderr).toContain('a.booth -> b.booth -> a.booth');
    expect(stdout).toContain('What gets in');
    expect(code).toBe(1);
  });

  test.each([
    ['a path that leads out of the folder', '../secret.booth'],
    ['an absolute path', '/etc/hostname'],
    ['a symbolic link that leads out of the folder', './link.booth'],
  ])('%s is refused and the rest is assessed', (_, used) => {
    scene = folderWith({
      'work/a.booth': `use "${used}"\n${smallBooth}`,
      'secret.booth': 'material secret { kind limp }\n',
    });
    fs.symlinkSync('../secret.booth', path.join(scene.folder, 'work/link.booth'));
    const { code, stdout, stderr } = command.run(['check', 'a.booth'], path.join(scene.folder, 'work'));
    expect(errors(stderr)).toHaveLength(1);
    expect(stderr).toMatch(/^a\.booth:1:\d+: error\[/);
    expect(stderr).not.toContain('secret {');
    expect(stdout).toContain('What gets in');
    expect(code).toBe(1);
  });

  test.each([
    ['an empty file', ''],
    ['a file of comments', '\n# nothing yet\n'],
  ])('%s is said to describe nothing', (_, text) => {
    const { code, stderr } = inFolder({ 'empty.booth': text })('check', 'empty.booth');
    expect(stderr).toMatch(/^empty\.booth:1:1: warning\[empty-file\]: .*\n(.*\n)*.*help: /);
    expect(code).toBe(1);
  });
});

describe('misuse ends with 2 and one sentence', () => {
  const lots = Buffer.alloc(10_000_000, 'air 5 mm\n');
  test.each([
    [
      'a missing file',
      ['check', 'nowhere.booth'],
      /^nowhere\.booth: error\[missing-file\]: there is no such file, expected /,
    ],
    ['a misspelt file', ['check', 'smal.booth'], /did you mean small\.booth\?/],
    ['a folder', ['check', 'folder'], /^folder: error\[folder-not-file\]: this is a folder, expected a file/],
    [
      'a binary file',
      ['check', 'binary.booth'],
      /^binary\.booth:1:4: error\[not-text\]: this is no text: found a zero byte, expected /,
    ],
    [
      'a file of 10 MB',
      ['check', 'large.booth'],
      /^large\.booth: error\[file-too-large\]: the file has 10\.0 MB, expected at most 2 MB/,
    ],
    [
      'text in UTF-16',
      ['check', 'wide.booth'],
      /^wide\.booth:1:1: error\[not-utf-8\]: the text is UTF-16, expected UTF-8/,
    ],
    ['an unknown option', ['check', '--formt', 'json', 'small.booth'], /^boothwright: error: unknown option '--formt'/],
    [
      'an unknown format',
      ['check', '--format', 'xml', 'small.booth'],
      /^boothwright: error: .*Allowed choices are text, json/,
    ],
    ['no specification', ['check'], /^boothwright: error: missing required argument/],
    ['an unknown command', ['chek', 'small.booth'], /^boothwright: error: unknown command 'chek'/],
    ['nothing at all', [], /^Usage: boothwright/],
    [
      'two ways of formatting',
      ['format', '--check', '--stdout', 'small.booth'],
      /^boothwright: error: option '--check' cannot be used with/,
    ],
    ['formatting a binary file', ['format', 'binary.booth'], /^binary\.booth:1:4: error\[not-text\]/],
  ])('%s', (_, words, message) => {
    const files = {
      'small.booth': smallBooth,
      'folder/a.booth': smallBooth,
      'binary.booth': Buffer.from([1, 2, 3, 0, 255]),
      'large.booth': lots,
      'wide.booth': Buffer.from('\ufefflet a = 1 mm', 'utf16le'),
    };
    const { code, stdout, stderr } = inFolder(files)(...words);
    expect(stderr).toMatch(message);
    expect(stderr).not.toMatch(stackLine);
    expect(stdout).toBe('');
    expect(code).toBe(2);
    expect(fs.readFileSync(path.join(scene!.folder, 'binary.booth'))).toEqual(files['binary.booth']);
  });
});

test('boothwright --help and --version end with 0 and say what the exit codes mean', () => {
  const run = inFolder({});
  for (const words of [['--help'], ['check', '--help'], ['format', '--help']]) {
    const { code, stdout, stderr } = run(...words);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/Exit codes:\n +0 .*\n +1 .*\n +2 /);
  }
  const { version } = JSON.parse(fs.readFileSync(path.join(root, 'packages/cli/package.json'), 'utf8'));
  expect(run('--version')).toEqual({ code: 0, stdout: `${version}\n`, stderr: '' });
});

test('a reader that goes away is no reason to complain', () => {
  scene = folderWith({ 'small.booth': smallBooth });
  const { stderr } = command.shell(
    `node "$COMMAND" check --format json small.booth | head -c 1; echo "\${PIPESTATUS[0]}" >&2`,
    scene.folder,
  );
  expect(stderr.trim()).toBe('1');
});
