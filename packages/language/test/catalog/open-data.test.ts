import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BandTable, Material, Sourced } from '@boothwright/language';
import { Ajv } from 'ajv';
import { expect, it } from 'vitest';
import { checkText } from '../check-text.js';

const folder = join(import.meta.dirname, '../../../../shared/open-data');

const UNITS = {
  density: 'kg/m3',
  surfaceMass: 'kg/m2',
  thickness: 'm',
  modulus: 'Pa',
  modulusAcross: 'Pa',
  shearModulus: 'Pa',
  poisson: '1',
  lossFactor: '1',
  resistivity: 'Pa.s/m2',
  flowResistance: 'Pa.s/m',
  gauge: 'm',
  absorption: '1',
} as const;

function rows(material: Material): unknown {
  const figures = (Object.keys(UNITS) as (keyof typeof UNITS)[]).flatMap((fact) => {
    const figure: Sourced<number | BandTable> | undefined = material[fact];
    if (figure?.origin.kind !== 'catalogue') return [];
    const { value, origin } = figure;
    const plain =
      typeof value === 'number' ? value : Object.fromEntries(value.values.map((band) => [band.hz, band.value]));
    return [{ fact, unit: UNITS[fact], value: plain, evidence: origin.evidence, source: origin.source }];
  });
  return { name: material.name, title: material.title, kind: material.kind, figures };
}

const data = [...checkText('use catalog\n').spec.materials.values()].map(rows);

it('materials.json is what the catalogue says', async () => {
  await expect(`${JSON.stringify(data, null, 2)}\n`).toMatchFileSnapshot(join(folder, 'materials.json'));
});

it('materials.json has the form of its schema', () => {
  const validate = new Ajv({ allErrors: true }).compile(
    JSON.parse(readFileSync(join(folder, 'materials.schema.json'), 'utf8')),
  );
  validate(JSON.parse(readFileSync(join(folder, 'materials.json'), 'utf8')));
  expect(validate.errors).toBeNull();
});
