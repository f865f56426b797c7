import { airProperties } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { type LongGap, slitPath } from '../../../src/booth/openings/slit-path.js';
import { createMemo } from '../../../src/memo/memo.js';
import { given, place } from '../../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const memo = createMemo();
const gapOf = (gap: number, tolerance?: number, changes: Partial<LongGap> = {}) =>
  slitPath(
    {
      id: 'slit:a',
      kind: 'slit',
      name: 'a',
      range: place(),
      length: 2,
      gap: given(gap, tolerance),
      depth: 0.05,
      position: 'mid',
      ...changes,
    },
    air,
    memo,
  );
const spreadOf = (gap: number, tolerance: number, band: number) => {
  const width = (path: ReturnType<typeof gapOf>) => path?.halfWidth[band] as number;
  return Math.sqrt(width(gapOf(gap, tolerance)) ** 2 - width(gapOf(gap)) ** 2);
};

describe('slitPath(gap) with a tolerance', () => {
  it('is steeper than the open area where friction rules', () => {
    // Between plates the flow goes with the cube of the gap, so the energy with its sixth power: +-20 % are 5 dB.
    expect(spreadOf(0.1e-3, 0.02e-3, 3)).toBeGreaterThan(4);
    expect(spreadOf(0.1e-3, 0.02e-3, 3)).toBeLessThan(30 * Math.log10(1.2 / 0.8) + 0.2);
  });

  it('is that of the open area for a wide gap through nothing, within a decibel', () => {
    expect(spreadOf(10e-3, 2e-3, 10)).toBeLessThan(2);
  });

  it('stays finite for a tolerance as wide as the gap', () => {
    for (const width of gapOf(0.3e-3, 0.3e-3)?.halfWidth ?? []) expect(width).toBeLessThan(25);
  });

  it('hands the position on to the closed box', () => {
    expect(gapOf(1e-3, undefined, { position: 'edge' })?.elements[0]).toMatchObject({ position: 'edge' });
  });
});
