import fs from 'node:fs';
import path from 'node:path';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { smallBooth } from './bad-inputs.js';
import { buildCommand, folderWith } from './cli-runner.js';

const command = buildCommand();
afterAll(() => command.remove());
let scene: ReturnType<typeof folderWith> | undefined;
afterEach(() => scene?.remove());

const loose = `# a note\nassembly   wall {\n board     12 mm # stays\n\n  air 5 mm\n}\n`;
const tidy = `# a note\nassembly wall {\n  board 12 mm  # stays\n\n  air 5 mm\n}\n`;

function inFolder(files: Readonly<Record<string, string | Buffer>>) {
  scene?.remove();
  scene = folderWith(files);
  const { folder } = scene;
  return {
    run: (...words: string[]) => command.run(words, folder),
    read: (name: string) => fs.readFileSync(path.join(folder, name), 'utf8'),
    at: (name: string) => path.join(folder, name),
  };
}

describe('boothwright format', () => {
  test('rewrites a file in place, keeps comments and blank lines, and says so', () => {
    const { run, read } = inFolder({ 'a.booth': loose });
    expect(run('format', 'a.booth')).toEqual({ code: 0, stdout: 'a.booth: formatted\n', stderr: '' });
    expect(read('a.booth')).toBe(tidy);
  });

  test('changes nothing the second time and does not touch the file', () => {
    const { run, read, at } = inFolder({ 'a.booth': loose });
    run('format', 'a.booth');
    const before = fs.statSync(at('a.booth'));
    expect(run('format', 'a.booth')).toEqual({ code: 0, stdout: '', stderr: '' });
    const after = fs.statSync(at('a.booth'));
    expect([after.mtimeMs, after.ino]).toEqual([before.mtimeMs, before.ino]);
    expect(read('a.booth')).toBe(tidy);
  });

  test('keeps CRLF line ends and a byte order mark', () => {
    const { run, read } = inFolder({ 'a.booth': `\ufeff${loose.replaceAll('\n', '\r\n')}` });
    expect(run('format', 'a.booth').code).toBe(0);
    expect(read('a.booth')).toBe(`\ufeff${tidy.replaceAll('\n', '\r\n')}`);
    expect(run('format', '--check', 'a.booth').code).toBe(0);
  });

  test('evens out mixed line ends to what most lines have', () => {
    const { run, read } = inFolder({ 'a.booth': tidy.replace('\n', '\r\n') });
    expect(run('format', 'a.booth').code).toBe(0);
    expect(read('a.booth')).toBe(tidy);
  });

  test('keeps a symbolic link and the permissions of the file behind it', () => {
    const { run, read, at } = inFolder({ 'real/a.booth': loose });
    fs.chmodSync(at('real/a.booth'), 0o640);
    fs.symlinkSync('real/a.booth', at('link.booth'));
    expect(run('format', 'link.booth').code).toBe(0);
    expect(read('real/a.booth')).toBe(tidy);
    expect(fs.lstatSync(at('link.booth')).isSymbolicLink()).toBe(true);
    expect(fs.statSync(at('real/a.booth')).mode & 0o777).toBe(0o640);
  });

  test('formats a broken text as far as it can and loses none of it', () => {
    const broken = 'assembly wall {\n    board   12 $ mm "open\n  air    5 mm\n';
    const { run, read } = inFolder({ 'a.booth': broken });
    expect(run('format', 'a.booth').code).toBe(0);
    expect(read('a.booth').replace(/\s/g, '')).toBe(broken.replace(/\s/g, ''));
  });

  test('leaves the results as they are', () => {
    const { run } = inFolder({ 'a.booth': smallBooth.replace(/^ {2}/gm, ' ').replace(/ {2,}/g, '   ') });
    const figures = () => run('check', 'a.booth').stdout;
    const before = figures();
    expect(run('format', 'a.booth').stdout).toBe('a.booth: formatted\n');
    expect(figures()).toBe(before);
  });
});

describe('boothwright format --check and --stdout', () => {
  test('--check names the files that would change, changes none, and ends with 1', () => {
    const { run, read } = inFolder({ 'a.booth': loose, 'b.booth': tidy });
    const { code, stdout } = run('format', '--check', 'a.booth', 'b.booth');
    expect(code).toBe(1);
    expect(stdout).toBe('a.booth: is not in the canonical layout; run boothwright format on it\n');
    expect(read('a.booth')).toBe(loose);
    expect(run('format', '--check', 'b.booth')).toEqual({ code: 0, stdout: '', stderr: '' });
  });

  test('--stdout prints the text and changes no file', () => {
    const { run, read } = inFolder({ 'a.booth': loose });
    expect(run('format', '--stdout', 'a.booth')).toEqual({ code: 0, stdout: tidy, stderr: '' });
    expect(read('a.booth')).toBe(loose);
  });

  test('a file that is missing does not keep the others from being formatted', () => {
    const { run, read } = inFolder({ 'a.booth': loose });
    const { code, stderr } = run('format', 'nowhere.booth', 'a.booth');
    expect(code).toBe(2);
    expect(stderr).toContain('nowhere.booth: error[missing-file]');
    expect(read('a.booth')).toBe(tidy);
  });
});
