import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { comparisonSchema } from '../../src/index.js';
import { compared, example, small } from './compared.js';

const validate = new Ajv.default({ strict: true, allowUnionTypes: true }).compile(comparisonSchema);

function problems(document: unknown) {
  // What a reader of the JSON gets, so that NaN and undefined show.
  validate(JSON.parse(JSON.stringify(document)));
  return validate.errors ?? [];
}

describe('comparisonSchema', () => {
  it('is the schema that is printed beside the package', () => {
    const printed = readFileSync(new URL('../../schema/comparison.schema.json', import.meta.url), 'utf8');
    expect(JSON.parse(printed)).toEqual(JSON.parse(JSON.stringify(comparisonSchema)));
  });

  it('accepts a comparison with findings, hazards, bands and renamed things', () => {
    const [draft, done] = [example('tram-alcove/first-draft.booth'), example('tram-alcove/tram-alcove.booth')];
    expect(problems(compared(draft, done))).toEqual([]);
    expect(problems(compared(small, small.replaceAll('deck', 'bottom').replace('people 1', 'people 2')))).toEqual([]);
  });

  it('accepts a comparison with nothing, and with a text that cannot be read', () => {
    expect(problems(compared(small, ''))).toEqual([]);
    expect(problems(compared('booth {', small))).toEqual([]);
  });

  it('rejects a comparison with a key too many and one too few', () => {
    const { renamed: _, ...short } = compared(small, small);
    expect(problems({ ...short, extra: 1 }).length).toBeGreaterThan(0);
  });
});
