import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { assess, resultSchema } from '../../src/index.js';
import { booth, impact, noise, quietFan, roomTone, shell, site, spec, vent } from '../fixtures/spec-builder.js';

const ajv = new Ajv.default({ strict: true, allowUnionTypes: true });
const validate = ajv.compile(resultSchema);

function problems(document: unknown) {
  // What a reader of the JSON gets, so that NaN and undefined show.
  validate(JSON.parse(JSON.stringify(document)));
  return validate.errors ?? [];
}

describe('resultSchema', () => {
  it('is the schema that is printed beside the package', () => {
    const printed = readFileSync(new URL('../../schema/result.schema.json', import.meta.url), 'utf8');
    expect(JSON.parse(printed)).toEqual(JSON.parse(JSON.stringify(resultSchema)));
  });

  it('accepts the result of a whole booth with a variant', () => {
    const base = spec({
      site: site({ sources: [noise('street'), impact('steps')] }),
      booths: [booth(shell, { vents: [vent('intake', { fan: quietFan }), vent('exhaust')] })],
      requirements: [roomTone(20, 'A'), roomTone(15, 'NC'), roomTone(-60, 'FS'), roomTone(45, 'Z')],
    });
    const quieter = spec({ site: site({ sources: [noise('street', [50, 44, 38, 34, 30, 25, 19])] }) });
    const variant = { name: 'night', nameRange: shell.range, range: shell.range, spec: quieter, written: [] };
    expect(problems(assess({ ...base, variants: [variant] }))).toEqual([]);
  });

  it('accepts the result of an assembly without booth, site and session', () => {
    expect(problems(assess(spec({ booths: [], site: undefined, session: undefined })))).toEqual([]);
  });

  it('accepts a source of which some bands are unknown', () => {
    const partial = site({ sources: [noise('hum', [null, 52, null, null, null, null, null])] });
    expect(problems(assess(spec({ site: partial, requirements: [roomTone(15, 'NC')] })))).toEqual([]);
  });

  it('rejects a result with a key too many and one too few', () => {
    const { leavesOut: _, ...short } = assess(spec({ booths: [] }));
    expect(problems({ ...short, extra: 1 }).length).toBeGreaterThan(0);
  });
});
