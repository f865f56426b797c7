import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { buildCommand, folderWith } from './cli-runner.js';

const command = buildCommand();
afterAll(() => command.remove());
let scene: ReturnType<typeof folderWith> | undefined;
afterEach(() => {
  scene?.remove();
  scene = undefined;
});

/** A shed of one leaf that lies in panels of 600 mm; everything in it is invented. */
const shed = `use catalog

material board "birch board, 1.22 x 2.44 m" {
  kind    panel
  density 600 kg/m3
  modulus 8 GPa
  sheet   1.22 m x 2.44 m
}

assembly skin { board 12 mm }

booth shed "the shed" {
  inside 1.188 m x 1.188 m x 2.00 m
  walls  skin
  roof   skin
  panels { width 610 mm }
}

budget {
  item boards "birch board" for board 12 mm 3 at 40.00 EUR
}
`;

function run(...words: string[]) {
  scene = folderWith({ 'shed.booth': shed });
  return command.run(words, scene.folder);
}

describe('boothwright parts', () => {
  test('lists panels, what to buy, cuts, sheets and seams as text', () => {
    const { code, stdout, stderr } = run('parts', 'shed.booth');
    expect(stderr).not.toContain('error[');
    expect(code).toBe(0);
    for (const heading of ['Panels', 'What to buy', 'Cut list', 'Sheets', 'Seams to seal', 'Loads on the floor'])
      expect(stdout).toMatch(new RegExp(`^${heading}`, 'm'));
    // Front and back 1.212 m in two of 606 mm, sides 1.188 m in two of 594 mm, roof in two of 606 mm: five sheets of pairs.
    expect(stdout).toContain('board 12 mm: 5 sheets of 1220 × 2440 mm');
    expect(stdout).toContain('boards: too few, 3 in the budget, 5 needed');
    expect(stdout).not.toMatch(/\b(safe|compliant|approved)\b|NaN|undefined|\[object/i);
  });

  test('prints the cut list as comma-separated values', () => {
    const { code, stdout } = run('parts', '--format', 'csv', 'shed.booth');
    expect(code).toBe(0);
    const rows = stdout.split('\r\n');
    expect(rows[0]).toBe('booth,mark,count,owner,use,stock,width mm,length mm,thickness mm,cut out m2,kg each');
    // 0.606 x 2 x 0.012 m at 600 kg/m3.
    expect(rows[1]).toBe('shed,1a,1,"panel 1, front 1",sheet,board 12 mm,606,2000,12,,8.726');
    expect(rows).toHaveLength(1 + 10 + 1);
  });

  test('prints everything as JSON', () => {
    const { stdout } = run('parts', '--format', 'json', 'shed.booth');
    const { booths } = JSON.parse(stdout);
    expect(booths.shed.panels).toHaveLength(10);
    expect(booths.shed.shopping.checks[0].verdict).toBe('too-few');
  });

  test('lists nothing of a text with an unknown variant, and says so', () => {
    const { code, stdout, stderr } = run('parts', '--variant', 'none', 'shed.booth');
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain('found no variant none');
  });

  test('ends with 1 when the text has an error, but lists what could be read', () => {
    scene = folderWith({ 'shed.booth': `${shed}\nnonsense here\n` });
    const { code, stdout, stderr } = command.run(['parts', 'shed.booth'], scene.folder);
    expect(code).toBe(1);
    expect(stderr).toContain('error[');
    expect(stdout).toContain('Cut list');
  });

  test('ends with 2 for a file that is not there', () => {
    const { code, stderr } = run('parts', 'other.booth');
    expect(code).toBe(2);
    expect(stderr).toContain('other.booth');
  });
});
