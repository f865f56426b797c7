import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaults } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { defaultsUsed } from '../src/defaults-used.js';
import type { DefaultUsed } from '../src/result/result-document.js';
import { specOf } from './fixtures/from-text.js';

const sources = join(import.meta.dirname, '../src');

/** Two booths that between them leave open everything for which the models have a figure of their own. */
const used = ['casual', 'shout'].flatMap((effort) =>
  defaultsUsed(
    specOf(`
use catalog
material unsized "a board of no stated size" { kind panel; density 700 kg/m3; modulus 3 GPa; loss-factor 0.03; thickness 12 mm }
material timber "timber of no stated length" { kind lumber; density 450 kg/m3 }
assembly shell { unsized 12 mm; frame 45 mm x 70 mm every 600 mm of timber { fill mineral-wool-40 70 mm }; unsized 12 mm }
${effort === 'casual' ? '' : 'site "room" { room 4 m x 4 m x 2.5 m; noise street 50 dBA like road-traffic }'}
booth b {
  inside 1.2 m x 1.4 m x 2.0 m
  walls shell
  roof shell
  floor shell
  door entry on front { size 660 mm x 1900 mm; leaf shell; swing outward; lock none }
  vent intake on left { duct 125 mm; run 1 m; chamber 0.3 m x 0.3 m x 0.6 m; fan 10 L/s }
  vent exhaust on right { duct 125 mm; run 1 m }
  mic at 0.6 m, 0.6 m, 1.5 m { self-noise 8 dBA }
  panels { width 600 mm }
  mounts 4 stiffness 100 N/mm
}
session { people 1; effort ${effort}; length 60 min; take 5 min rest 5 min }
`),
  ),
);

/** Of these the value, or the names in the source, come from the text. */
const followsText: Readonly<Record<string, Partial<Pick<DefaultUsed, 'value' | 'source'>>>> = {
  'activity-of-effort': { value: 'by the effort of the voice' },
  'air-box-board': { value: 'the outermost board of its face' },
  'mouth-place': { value: 'from the microphone' },
  'sheet-size': { source: 'a size that most boards are also sold in; where a material states none' },
  'stock-length': { source: 'a length that most yards keep; where a material states none' },
};

/** What the language itself fills in has its own table. */
const stated = new Set<string>(defaults.filter(({ name }) => name !== 'saw-kerf').map(({ name }) => name));

function page(): string {
  const rows = new Map<string, string>();
  for (const entry of used) {
    if (stated.has(entry.name)) continue;
    const { name, value, evidence, source } = { ...entry, ...followsText[entry.name] };
    rows.set(name, `| \`${name}\` | ${value} | ${evidence} | ${source} |`);
  }
  return `# What the models take for granted

Values that no line of the text can state, or that stand in where the text has no such block.
Each enters only where it counts, is named with its source in every full report (\`boothwright check --full\`) and in \`defaults\` of the result.
What a line of the text can replace has its own table: [Defaults of the language](language.md#defaults).
This page is made from the code, and a test keeps it the same.

| Name | Value | Evidence | Source |
| --- | --- | --- | --- |
${[...rows.keys()]
  .toSorted()
  .map((name) => rows.get(name))
  .join('\n')}
`;
}

/** Names that the code of the assumptions can report, wherever they are written. */
function namesInCode(): string[] {
  const files = readdirSync(sources, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /(-assumptions|defaults-used)\.ts$/.test(file),
  );
  return files.flatMap((file) =>
    [...readFileSync(join(sources, file), 'utf8').matchAll(/\bname: '([a-z-]+)'/g)].map(([, name]) => name as string),
  );
}

describe('the page of what the models take for granted', () => {
  it('has every name, value and source as the code has them', async () => {
    await expect(page()).toMatchFileSnapshot('../../../docs/assumptions.md');
  });

  it('leaves no name of the code out', () => {
    const text = page();
    expect(namesInCode().length).toBeGreaterThan(15);
    for (const name of namesInCode()) expect(text, name).toContain(`| \`${name}\` |`);
  });
});
