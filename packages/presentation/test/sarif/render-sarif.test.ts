import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { assess } from '@boothwright/assessment';
import { checkSpec } from '@boothwright/language';
import { renderSarif, type SarifInput } from '@boothwright/presentation';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';

const root = new URL('../../../../', import.meta.url).pathname;
const schema = JSON.parse(readFileSync(join(root, 'tests/fixtures/sarif/sarif-schema-2.1.0.json'), 'utf8'));
// The schema names formats of addresses and times, which no result here depends on.
const matches = new Ajv2020({ strict: false, validateFormats: false }).compile(schema);

const examples = readdirSync(join(root, 'shared/examples'), { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.booth'),
);

function read(file: string, text: string): SarifInput {
  const host = {
    read: (name: string) => {
      if (name === file) return { kind: 'text', text } as const;
      try {
        return { kind: 'text', text: readFileSync(join(root, 'shared/examples', name), 'utf8') } as const;
      } catch {
        return { kind: 'missing' } as const;
      }
    },
  };
  const { spec, problems, files } = checkSpec(file, host);
  return {
    problems: problems.filter(({ severity }) => severity !== 'hint'),
    result: assess(spec),
    texts: new Map(files.map((each) => [each.file, each.text])),
    shownAs: (name) => name,
  };
}

function valid(...inputs: SarifInput[]) {
  const log = renderSarif(inputs, '1.2.3');
  expect(matches(log), JSON.stringify(matches.errors)).toBe(true);
  return log.runs[0];
}

describe('the SARIF log', () => {
  it.each(examples)('of %s holds against the schema of the standard', (file) => {
    const input = read(file, readFileSync(join(root, 'shared/examples', file), 'utf8'));
    const { results, tool } = valid(input);
    const open = input.result.requirements.filter(({ verdict }) => verdict !== 'met');
    expect(results.filter(({ ruleId }) => ruleId.startsWith('requirement-'))).toHaveLength(open.length);
    expect(results.length).toBe(
      input.problems.length + open.length + input.result.findings.length + input.result.cautions.length,
    );
    for (const result of results) expect(tool.driver.rules[result.ruleIndex]?.id).toBe(result.ruleId);
  });

  it('marks a problem from its first to behind its last sign, lines and columns from 1', () => {
    const { results } = valid(read('a b.booth', '# 🎙\nlet gap = 3 furlong\n'));
    expect(results[0]).toMatchObject({ ruleId: 'unknown-unit', level: 'error', kind: 'fail' });
    expect(results[0]?.locations[0].physicalLocation).toEqual({
      artifactLocation: { uri: 'a%20b.booth' },
      region: { startLine: 2, startColumn: 13, endLine: 2, endColumn: 20 },
    });
  });

  it('of an empty text says that it is empty', () => {
    expect(valid(read('empty.booth', '')).results.map(({ ruleId }) => ruleId)).toEqual(['empty-file']);
  });

  it('has what a comment allows as suppressed, with the reason', () => {
    const text = `use catalog
# allow third-leaf: the board was there before
assembly wall { gypsum-board 12.5 mm; air 45 mm; gypsum-board 12.5 mm; air 45 mm; gypsum-board 12.5 mm }
`;
    const { results } = valid(read('wall.booth', text));
    const allowed = results.filter(({ suppressions }) => suppressions !== undefined);
    expect(allowed.map(({ ruleId }) => ruleId)).toEqual(['third-leaf']);
    expect(allowed[0]?.suppressions).toEqual([{ kind: 'inSource', justification: 'the board was there before' }]);
  });

  it('leaves a requirement that could not be assessed open', () => {
    const text = `use catalog
assembly shell { osb 18 mm }
booth box { inside 1.2 m x 1.2 m x 2.1 m; walls shell; roof shell; floor shell }
require room-tone <= 20 dBA
`;
    const [open] = valid(read('box.booth', text)).results.filter(({ ruleId }) => ruleId.startsWith('requirement'));
    expect(open).toMatchObject({ ruleId: 'requirement-not-assessed', kind: 'open', level: 'none' });
  });

  it('of several texts is one log whose rules are listed once, and the same each time', () => {
    const one = read('one.booth', 'let gap = 3 furlong\n');
    const two = read('two.booth', 'let gap = 3 furlong\n');
    const run = valid(one, two);
    expect(run.tool.driver.rules.filter(({ id }) => id === 'unknown-unit')).toHaveLength(1);
    expect(run.artifacts.map(({ location }) => location.uri)).toEqual(['one.booth', 'two.booth']);
    expect(renderSarif([one, two])).toEqual(renderSarif([one, two]));
  });
});
