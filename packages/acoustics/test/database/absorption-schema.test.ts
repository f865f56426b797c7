import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { absorptionRows } from '../../src/database/absorption-rows.generated.js';

it('every row has the fields, categories and mountings that the schema allows, and no others', () => {
  const path = new URL('../../../../shared/open-data/absorption.schema.json', import.meta.url);
  const { properties, required } = JSON.parse(readFileSync(path, 'utf8')).items;
  for (const row of absorptionRows) {
    const fields = Object.keys(row);
    for (const field of fields) expect(Object.keys(properties)).toContain(field);
    for (const field of required) expect(fields).toContain(field);
    expect(properties.category.enum).toContain(row.category);
    expect(properties.quantity.enum).toContain(row.quantity);
    if (row.mounting !== undefined) expect(properties.mounting.enum).toContain(row.mounting);
    expect(row.id).toMatch(new RegExp(properties.id.pattern));
    expect(Object.keys(row.provenance).sort()).toEqual([...properties.provenance.required].sort());
  }
});
