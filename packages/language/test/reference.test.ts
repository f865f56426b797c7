import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type BlockName, defaults, parse, units, vocabulary } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { catalogueTable } from './catalog/catalogue-table.js';
import { checkText } from './check-text.js';
import { blockTable, defaultRow, unitRow } from './vocabulary/reference-rows.js';

const docs = join(import.meta.dirname, '../../../docs');
const reference = ['language.md', 'language-units.md'].map((name) => readFileSync(join(docs, name), 'utf8')).join('\n');
const codeBlocks = [...reference.matchAll(/^```booth\n([\s\S]*?)^```$/gm)].map((match) => match[1]!);

describe('the language reference', () => {
  it.each(vocabulary.map((block) => [block.name, block] as const))('has every line of the block %s', (_, block) => {
    expect(reference).toContain(blockTable(block));
  });

  it('has every unit and every default', () => {
    for (const row of [...units.map(unitRow), ...defaults.map(defaultRow)]) expect(reference).toContain(row);
  });

  it('has every material of the catalogue', () => {
    expect(reference).toContain(catalogueTable([...checkText('use catalog\n').spec.materials.values()]));
  });

  it('shows only specs that are right', () => {
    expect(codeBlocks.length).toBeGreaterThan(4);
    for (const text of codeBlocks) expect(checkText(text).problems, text).toEqual([]);
  });
});

describe('every example of the vocabulary', () => {
  /** Headers that open each block, from the outside in. */
  const around: Readonly<Record<BlockName, readonly string[]>> = {
    file: [],
    material: ['material m {'],
    assembly: ['assembly a {'],
    frame: ['assembly a {', 'frame 2x4 every 600 mm {'],
    site: ['site {'],
    noise: ['site {', 'impact i {'],
    passage: ['site {', 'passage p {'],
    obstacle: ['site {', 'obstacle o at 0 m, 0 m, 0 m {'],
    neighbour: ['site {', 'neighbour n above {'],
    booth: ['booth b {'],
    lining: ['booth b {', 'lining on walls {'],
    door: ['booth b {', 'door d on front {'],
    window: ['booth b {', 'window w on front {'],
    vent: ['booth b {', 'vent v on front {'],
    fan: ['booth b {', 'vent v on front {', 'fan 10 L/s {'],
    slit: ['booth b {', 'slit s on front {'],
    hole: ['booth b {', 'hole h on front {'],
    mic: ['booth b {', 'mic at 1 m, 1 m, 1 m {'],
    equipment: ['booth b {', 'equipment e at 1 m, 1 m, 1 m {'],
    panels: ['booth b {', 'panels {'],
    session: ['session {'],
    budget: ['budget {'],
    variant: ['variant v {'],
    measured: ['measured m {'],
  };
  const examples = vocabulary.flatMap((block) => block.facts.map((fact) => [block.name, fact.example, fact] as const));

  it.each(examples)('in %s is read without a problem: %s', (name, example, fact) => {
    const headers = around[name];
    const parsed = parse(`${headers.join('\n')}\n${example}\n${'}\n'.repeat(headers.length)}`, 'example.booth');
    expect(parsed.problems).toEqual([]);
    let statements = parsed.tree.statements;
    for (const _ of headers) statements = statements[0]!.block!.statements;
    expect(statements.map((statement) => statement.fact)).toEqual([fact]);
  });

  it('and every fact has a sentence', () => {
    for (const [, , fact] of examples) expect(fact.documentation).toMatch(/^[A-Z].*\.$/s);
  });
});
