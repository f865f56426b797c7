import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { readOpenData } from './open-data.js';
import { accuracyReport } from './report.js';

const root = path.resolve(import.meta.dirname, '../..');
const report = accuracyReport(readOpenData(root));

const figure = /\d+(?:\.\d+)?/g;

/**
 * Words as they are, figures within one unit of their last digit: a change of a prediction by a thousandth of a dB may turn
 * a rounded figure over, and the page is no staler for it.
 */
function expectSame(kept: string, made: string, name: string): void {
  expect(kept.replace(figure, '#'), name).toBe(made.replace(figure, '#'));
  const wanted = made.match(figure) ?? [];
  (kept.match(figure) ?? []).forEach((text, index) => {
    const digits = Math.max(text.split('.')[1]?.length ?? 0, wanted[index]!.split('.')[1]?.length ?? 0);
    const apart = Math.abs(Number(text) - Number(wanted[index]));
    expect(apart, `${name}: ${text} in the file, ${wanted[index]} by the comparison`).toBeLessThan(
      1.01 * 10 ** -digits,
    );
  });
}

it('docs/accuracy.md is what the comparison gives; npm run accuracy writes it anew', () => {
  expectSame(readFileSync(path.join(root, 'docs/accuracy.md'), 'utf8'), report.page, 'docs/accuracy.md');
});

it('its pictures are those of the comparison, and no others', () => {
  const folder = path.join(root, 'docs/accuracy');
  expect(readdirSync(folder).sort()).toEqual(Object.keys(report.pictures).sort());
  for (const [name, svg] of Object.entries(report.pictures)) {
    expectSame(readFileSync(path.join(folder, name), 'utf8'), svg, name);
    expect(report.page).toContain(`(accuracy/${name})`);
  }
});

it('no figure of the page is missing or no number', () => {
  expect(report.page).not.toMatch(/NaN|undefined|Infinity/);
  expect(report.lines.join('\n')).not.toMatch(/NaN|undefined|Infinity/);
});
