import { readFileSync } from 'node:fs';
import path from 'node:path';
import { type Layer, surfaceMass } from '@boothwright/acoustics';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { constructionsOf, leftOut } from './constructions.js';
import { figureOf, readOpenData } from './open-data.js';

const root = path.resolve(import.meta.dirname, '../..');
const data = readOpenData(root);
const constructions = constructionsOf(data);

describe('the table of transmission loss', () => {
  it('is of the form that its schema states', () => {
    const schema = JSON.parse(readFileSync(path.join(root, 'shared/open-data/transmission-loss.schema.json'), 'utf8'));
    const validate = new Ajv().compile(schema);
    expect(validate(data.insulation), JSON.stringify(validate.errors)).toBe(true);
  });

  it('has one value per band and no id twice', () => {
    for (const row of data.insulation) expect(row.values, row.id).toHaveLength(row.bandsHz.length);
    expect(new Set(data.insulation.map(({ id }) => id)).size).toBe(data.insulation.length);
  });

  it('has every row either compared or left out with a reason', () => {
    const known = [...constructions.map(({ id }) => id), ...Object.keys(leftOut)].sort();
    expect(known).toEqual(data.insulation.map(({ id }) => id).sort());
  });
});

describe('constructions', () => {
  it.each(constructions.map((each) => [each.id, each] as const))(
    '%s has the layers that its row prints',
    (id, { layers }) => {
      const row = data.insulation.find((each) => each.id === id)!;
      const sheets = layers.filter(({ kind }) => kind === 'plate' || kind === 'limp-sheet');
      const named = row.layers.filter(
        ({ material }) =>
          !/^(air|air \+ mineral wool|glass wool|mineral wool|damping layer|perforated steel)$/.test(material),
      );
      expect(sheets).toHaveLength(named.length);
      sheets.forEach((sheet, index) => {
        const printed = named[index]!;
        if (sheet.kind === 'plate') expect(sheet.thickness).toBeCloseTo(printed.thickness!, 9);
        if (printed.surfaceMass !== undefined) expect(surfaceMass([sheet])).toBeCloseTo(printed.surfaceMass, 9);
      });
    },
  );

  it.each(constructions.map((each) => [each.id, each] as const))(
    '%s has the cavity that its row prints',
    (id, { layers }) => {
      const row = data.insulation.find((each) => each.id === id)!;
      const depth = (kinds: readonly Layer['kind'][]) =>
        layers.reduce((sum, each) => sum + (kinds.includes(each.kind) && 'thickness' in each ? each.thickness : 0), 0);
      const printed = row.layers
        .filter(({ material }) => /^(air|air \+ mineral wool|glass wool|mineral wool)$/.test(material))
        .map(({ thickness }) => thickness);
      if (printed.includes(undefined)) return expect(depth(['air-gap', 'porous'])).toBeGreaterThan(0.05);
      expect(depth(['air-gap', 'porous'])).toBeCloseTo(
        printed.reduce<number>((sum, each) => sum + each!, 0),
        9,
      );
    },
  );
});

it('the materials beside the catalogue state where each figure comes from', () => {
  for (const { figures } of data.testWallMaterials) {
    for (const { evidence, source, value } of figures) {
      expect(['published', 'derived', 'common-practice', 'from-memory']).toContain(evidence);
      expect(source.length).toBeGreaterThan(20);
      expect(value).toBeGreaterThan(0);
    }
  }
});

it('figureOf(rows, material, fact) says what it misses', () => {
  expect(figureOf(data.catalogue, 'glass', 'density')).toBe(2500);
  expect(() => figureOf(data.catalogue, 'glass', 'resistivity')).toThrow('no figure resistivity of glass');
});
