import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  coverageOf,
  derivedHalfWidths,
  kindOf,
  leaveOneOutCoverage,
  pools,
  roundingAllowance,
  shippedHalfWidths,
} from './coverage.js';
import { groups, insulationCurves, summaryOf } from './insulation-results.js';
import { readOpenData } from './open-data.js';
import { rootMeanSquare } from './statistics.js';

const root = path.resolve(import.meta.dirname, '../..');
const curves = insulationCurves(readOpenData(root));

describe('half-widths of the assessment', () => {
  it('are those that the comparison gives, in whole dB', () => {
    const [shipped, derived] = [shippedHalfWidths(), derivedHalfWidths(curves)];
    for (const kind of pools.flat())
      shipped[kind]!.forEach((width, zone) => {
        expect(Number.isInteger(width)).toBe(true);
        expect(Math.abs(width - derived[kind]![zone]!), `${kind}, zone ${zone + 1}`).toBeLessThan(roundingAllowance);
      });
  });

  it('hold about nine of ten measured values, and hardly fewer of a curve that they were derived without', () => {
    const all = pools.flat();
    const { within, of } = coverageOf(curves, all, shippedHalfWidths());
    expect(within / of).toBeGreaterThan(0.87);
    expect(within / of).toBeLessThan(0.94);
    const out = leaveOneOutCoverage(curves, all);
    expect(out.of).toBe(of);
    expect(out.within / out.of).toBeGreaterThan(0.85);
    expect(out.within).toBeLessThanOrEqual(within);
  });

  it('stand in docs/models/uncertainty.md with the curves and the coverage they have', () => {
    const page = readFileSync(path.join(root, 'docs/models/uncertainty.md'), 'utf8');
    const shipped = shippedHalfWidths();
    for (const kinds of pools) {
      const count = curves.filter(({ construction }) => kinds.includes(kindOf(construction) ?? 'open')).length;
      expect(page).toContain(`| ${shipped[kinds[0]!]!.join(' | ')} | ${count} curves |`);
    }
    const [, held, all] = /(\d+) of (\d+) values \(\d+ %\) lie within/.exec(page) ?? [];
    const [, heldWithout] = /derived without it, (\d+) do/.exec(page) ?? [];
    const { within, of } = coverageOf(curves, pools.flat(), shipped);
    expect(Number(all)).toBe(of);
    // A value at the very edge may turn over with a thousandth of a dB.
    expect(Math.abs(Number(held) - within)).toBeLessThanOrEqual(2);
    expect(Math.abs(Number(heldWithout) - leaveOneOutCoverage(curves, pools.flat()).within)).toBeLessThanOrEqual(2);
  });

  it('grow with the errors they are derived from', () => {
    const doubled = curves.map((curve) => ({ ...curve, errors: curve.errors.map((error) => 2 * error) }));
    const [once, twice] = [derivedHalfWidths(curves), derivedHalfWidths(doubled)];
    for (const kind of pools.flat())
      twice[kind]!.forEach((width, zone) => {
        expect(width).toBeCloseTo(2 * once[kind]![zone]!, 9);
      });
  });
});

describe('the comparison', () => {
  const named = (name: string) => summaryOf(curves, groups.find((group) => group.name === name)!);

  it('has the layered model nearer to the measurements than the mass law and the closed forms', () => {
    const all = named('all but doors');
    expect(all.rms).toBeLessThan(all.closedFormRms);
    expect(all.rms).toBeLessThan(all.massLawRms);
    expect(named('single leaves').rms).toBeLessThan(named('single leaves').closedFormRms);
  });

  it('joins the groups without losing or doubling a curve', () => {
    const count = (name: string) => named(name).curves;
    expect(count('all but doors')).toBe(count('single leaves') + count('all two-leaf') + count('lined leaves'));
    expect(count('all but doors') + count('doors, seals not stated')).toBe(curves.length);
    const errors = curves
      .filter(({ construction }) => construction.type === 'lined leaf')
      .flatMap((curve) => curve.errors);
    expect(named('lined leaves').rms).toBeCloseTo(rootMeanSquare(errors), 12);
  });
});
