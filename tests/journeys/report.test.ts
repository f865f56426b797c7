import fs from 'node:fs';
import path from 'node:path';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { buildCommand, folderWith, root, stackLine } from './cli-runner.js';

const command = buildCommand();
afterAll(() => command.remove());
let scene: ReturnType<typeof folderWith> | undefined;
afterEach(() => {
  scene?.remove();
  scene = undefined;
});

/** A shed of one leaf that lies in panels of 600 mm; everything in it is invented. */
const shed = `# Everything in this shed is invented.
use catalog

material board "birch board" {
  kind    panel
  density 600 kg/m3
  modulus 8 GPa
  sheet   1.22 m x 2.44 m
  source  "invented demo data"
}

assembly skin { board 12 mm }
assembly thick { board 18 mm }

site {
  room 3.0 m x 3.0 m x 2.5 m
  noise street octave 63 Hz 58 dB, 125 Hz 52 dB, 250 Hz 46 dB, 500 Hz 42 dB, 1 kHz 38 dB, 2 kHz 33 dB, 4 kHz 27 dB
}

booth shed "the shed" {
  inside 1.188 m x 1.188 m x 2.00 m
  walls  skin
  roof   skin
  floor  skin
  panels { width 610 mm }
}

require room-tone <= 40 dBA

variant heavier "thicker boards" { shed.walls = thick }
`;

function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  scene = folderWith({ 'shed.booth': shed, ...files });
  return {
    ...command.run(words, scene.folder),
    folder: scene.folder,
    listing: () => fs.readdirSync(scene!.folder).toSorted(),
  };
}

const read = (folder: string, name: string) => fs.readFileSync(path.join(folder, name), 'utf8');

// Several commands in one test may take their time on a machine with other work.
describe('boothwright report SPEC -o FILE', { timeout: 120_000 }, () => {
  test('stands in the help, with its exit codes', () => {
    expect(command.run(['--help'], root).stdout).toContain('report [options] <SPEC>');
    const { stdout, code } = command.run(['report', '--help'], root);
    expect(code).toBe(0);
    expect(stdout).toContain('-o, --output <FILE>');
    expect(stdout).toContain('Exit codes:');
  });

  test('writes HTML and its Markdown twin, with the same verdict, and says so', () => {
    const first = run(['report', 'shed.booth', '-o', 'shed.html']);
    expect(first).toMatchObject({ code: 0, stdout: 'shed.html: written\n', stderr: '' });
    expect(first.listing()).toEqual(['shed.booth', 'shed.html']);
    const page = read(first.folder, 'shed.html');
    expect(page.startsWith('<!doctype html>')).toBe(true);
    expect(command.run(['report', 'shed.booth', '-o', 'shed.md'], first.folder).code).toBe(0);
    const text = read(first.folder, 'shed.md');
    const row = /^\| room-tone \\<= 40 dBA \| (.*) \|$/m
      .exec(text)?.[1]
      ?.split(' | ')
      .map((cell) => cell.replaceAll(/[*\\]/g, ''));
    expect(row?.[0]).toMatch(/^(met|MISSED)$/);
    const cells = /<th scope="row">room-tone &lt;= 40 dBA<\/th>(.*?)<\/tr>/
      .exec(page)?.[1]
      ?.replace(/<[^>]+>/g, '|')
      .split(/\|+/);
    expect(cells?.filter(Boolean)).toEqual(row?.filter(Boolean));
    expect(text).toContain('Demo data: the text says that figures in it are invented');
    expect(text).toContain('heavier: thicker boards');
  });

  test('writes the same bytes for the same text, over what is there', () => {
    const { folder } = run(['report', 'shed.booth', '-o', 'shed.html'], { 'shed.html': 'an old report' });
    const once = read(folder, 'shed.html');
    command.run(['report', 'shed.booth', '-o', 'shed.html'], folder, { TZ: 'Asia/Tokyo', LANG: 'de_DE.UTF-8' });
    expect(read(folder, 'shed.html') === once).toBe(true);
  });

  test('tells a variant in place of the base, and refuses one that is not there', () => {
    const { folder, code } = run(['report', 'shed.booth', '-o', 'shed.md', '--variant', 'heavier']);
    expect(code).toBe(0);
    expect(read(folder, 'shed.md')).toContain('variant heavier');
    const wrong = command.run(['report', 'shed.booth', '-o', 'other.md', '--variant', 'heavyer'], folder);
    expect(wrong).toMatchObject({ code: 2, stdout: '' });
    expect(wrong.stderr).toContain('did you mean heavier?');
    expect(fs.existsSync(path.join(folder, 'other.md'))).toBe(false);
  });

  test('reports what can be assessed of a text with errors, marked at the top, and ends with 1', () => {
    const broken = `${shed}\nassembly wrong { board 12 mmm }\n`;
    const { code, folder, stderr } = run(['report', 'broken.booth', '-o', 'broken.md'], { 'broken.booth': broken });
    expect(code).toBe(1);
    expect(stderr).toContain('broken.booth:');
    const text = read(folder, 'broken.md');
    const top = text.slice(0, text.indexOf('## '));
    expect(top).toContain('The text has an error: this report holds what could be understood');
    expect(top).toMatch(/broken\.booth, line \d+, column \d+: error/);
    expect(text).toContain('room-tone \\<= 40 dBA');
  });

  test('reports an empty text as one that describes nothing', () => {
    const { code, folder } = run(['report', 'empty.booth', '-o', 'empty.html'], { 'empty.booth': '' });
    expect(code).toBe(1);
    expect(read(folder, 'empty.html')).toContain('no booth that could be worked out');
  });

  test('shows names with markup letter by letter', () => {
    const nasty = shed.replace('"the shed"', '"<script>alert(1)</script> | `x` </title>"');
    const { code, folder } = run(['report', 'nasty.booth', '-o', 'nasty.html'], { 'nasty.booth': nasty });
    expect(code).toBe(0);
    const page = read(folder, 'nasty.html');
    expect(page.includes('<script')).toBe(false);
    expect(page.includes('&lt;script&gt;alert(1)&lt;/script&gt;')).toBe(true);
  });
});

describe('boothwright report that cannot be written', { timeout: 120_000 }, () => {
  test.each([
    ['no ending', ['report', 'shed.booth', '-o', 'shed'], 'found no ending, expected .html or .md'],
    ['an unknown ending', ['report', 'shed.booth', '-o', 'shed.pdf'], 'found the ending .pdf, expected .html or .md'],
    ['a folder', ['report', 'shed.booth', '-o', 'folder.html'], 'this is a folder, expected a file to write'],
    [
      'a folder that is not there',
      ['report', 'shed.booth', '-o', 'no/shed.html'],
      'the folder for the file is not there',
    ],
    ['the spec itself', ['report', 'same.md', '-o', './same.md'], 'this is the specification itself'],
    ['a spec that is not there', ['report', 'shet.booth', '-o', 'shed.html'], 'there is no such file'],
    ['no output', ['report', 'shed.booth'], "required option '-o, --output <FILE>' not specified"],
    ['unknown paper', ['report', 'shed.booth', '-o', 'shed.html', '--page', 'a5'], 'Allowed choices are a4, letter'],
    ['two specs', ['report', 'shed.booth', 'other.booth', '-o', 'shed.html'], 'too many arguments'],
  ])('%s: one message, exit 2, nothing left behind', (_, words, message) => {
    const { code, stdout, stderr, listing } = run(words, { 'folder.html/inside': '', 'same.md': shed });
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain(message);
    expect(stderr.match(/error/g)?.length ?? 0).toBeLessThanOrEqual(1);
    expect(stderr).not.toMatch(stackLine);
    expect(listing()).toEqual(['folder.html', 'same.md', 'shed.booth']);
  });

  // A limit on the size of files stands for a full disk: the write fails half way.
  test('a write that fails half way leaves the old report as it was', () => {
    scene = folderWith({ 'shed.booth': shed, 'shed.html': 'an old report' });
    const { code, stderr } = command.shell(
      `trap '' XFSZ; ulimit -f 4; exec "${process.execPath}" "$COMMAND" report shed.booth -o shed.html`,
      scene.folder,
    );
    expect(code).toBe(2);
    expect(stderr).toContain('error[unwritable-file]');
    expect(stderr).toContain('the file that was there is as it was');
    expect(read(scene.folder, 'shed.html')).toBe('an old report');
    expect(fs.readdirSync(scene.folder).toSorted()).toEqual(['shed.booth', 'shed.html']);
  });
});
