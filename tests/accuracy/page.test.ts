import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { readOpenData } from './open-data.js';
import { accuracyReport } from './report.js';

const root = path.resolve(import.meta.dirname, '../..');
const report = accuracyReport(readOpenData(root));

it('docs/accuracy.md is what the comparison gives; npm run accuracy writes it anew', () => {
  expect(readFileSync(path.join(root, 'docs/accuracy.md'), 'utf8')).toBe(report.page);
});

it('its pictures are those of the comparison, and no others', () => {
  const folder = path.join(root, 'docs/accuracy');
  expect(readdirSync(folder).sort()).toEqual(Object.keys(report.pictures).sort());
  for (const [name, svg] of Object.entries(report.pictures)) {
    expect(readFileSync(path.join(folder, name), 'utf8'), name).toBe(svg);
    expect(report.page).toContain(`(accuracy/${name})`);
  }
});

it('no figure of the page is missing or no number', () => {
  expect(report.page).not.toMatch(/NaN|undefined|Infinity/);
  expect(report.lines.join('\n')).not.toMatch(/NaN|undefined|Infinity/);
});
