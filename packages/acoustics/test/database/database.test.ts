import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { absorptionAtThickness } from '../../src/database/absorption-at-thickness.js';
import { absorptionInThirds } from '../../src/database/absorption-in-thirds.js';
import { absorptionRows as rows } from '../../src/database/absorption-rows.generated.js';
import { findAbsorptionRows } from '../../src/database/find-absorption-rows.js';

describe('absorptionRows', () => {
  it('are those of the open data file', () => {
    const path = new URL('../../../../shared/open-data/absorption.json', import.meta.url);
    expect(rows).toEqual(JSON.parse(readFileSync(path, 'utf8')));
  });

  it('have unique ids, ascending bands, a value for each and a provenance', () => {
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    for (const row of rows) {
      expect(row.values).toHaveLength(row.bandsHz.length);
      expect([...row.bandsHz].sort((a, b) => a - b)).toEqual(row.bandsHz);
      for (const value of row.values) {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1.5);
      }
      expect(row.provenance.source.length).toBeGreaterThan(10);
      expect(row.provenance.where.length).toBeGreaterThan(3);
    }
  });
});

describe('findAbsorptionRows(rows, query)', () => {
  it('wants every word, and takes the start of a word', () => {
    const found = findAbsorptionRows(rows, { words: 'velv curt' });
    expect(found.map((row) => row.id)).toEqual(['vor-curtains-velvet']);
    expect(findAbsorptionRows(rows, { words: 'curtain submarine' })).toEqual([]);
    expect(findAbsorptionRows(rows, {})).toHaveLength(rows.length);
  });

  it('filters by category, mounting, thickness and licence', () => {
    const thick = findAbsorptionRows(rows, { mounting: 'E400', thickness: { atLeast: 0.05, atMost: 0.08 } });
    expect(thick.map((row) => row.id)).toEqual(['long-gfboard-48-50-e400', 'long-gfboard-48-75-e400']);
    const people = findAbsorptionRows(rows, { quantities: ['area-per-person'] });
    expect(people).toHaveLength(3);
    const open = findAbsorptionRows(rows, { categories: ['curtain'], openOnly: true });
    expect(open.length).toBeGreaterThan(5);
    for (const row of open) expect(row.provenance.licence).toContain('MIT');
  });

  it('rejects a thickness that cannot be', () => {
    expect(() => findAbsorptionRows(rows, { thickness: { atLeast: -1 } })).toThrow('thickness is -1');
  });
});

describe('absorptionAtThickness(rows, series, thickness)', () => {
  it('gives back a measured thickness and lies halfway between two', () => {
    const measured = absorptionAtThickness(rows, 'bies-wool-16', 0.05);
    expect(measured).toMatchObject({ interpolated: false, between: ['bies-wool-16-50'] });
    const between = absorptionAtThickness(rows, 'bies-wool-16', 0.0625);
    expect(between.between).toEqual(['bies-wool-16-50', 'bies-wool-16-75']);
    expect(between.values[0]!).toBeCloseTo((0.17 + 0.3) / 2, 9);
  });

  it('says what was measured beyond the range', () => {
    expect(() => absorptionAtThickness(rows, 'bies-wool-16', 0.2)).toThrow(
      'thickness is 0.2, expected a number of metres inside the measured range 0.025 to 0.1',
    );
    expect(() => absorptionAtThickness(rows, 'bies-wool-16', 0.01)).toThrow('measured range');
    expect(() => absorptionAtThickness(rows, 'moss', 0.1)).toThrow('series is moss, expected one of');
  });
});

describe('absorptionInThirds(bandsHz, values)', () => {
  it('keeps the octave values at their centres and is null outside', () => {
    const found = absorptionInThirds([125, 250, 500, 1000, 2000, 4000], [0.1, 0.4, 0.7, 0.9, 0.8, 0.6]);
    expect(found.slice(0, 3)).toEqual([null, null, null]);
    expect(found[3]).toBeCloseTo(0.1, 9);
    expect(found[4]).toBeCloseTo(0.1, 9);
    expect(found[5]).toBeCloseTo(0.2, 9);
    expect(found[7]).toBeCloseTo(0.4, 9);
    expect(found[13]).toBeCloseTo(0.9, 9);
    expect(found[19]).toBeCloseTo(0.6, 9);
    expect(found[20]).toBeCloseTo(0.6, 9);
  });

  it('uses 8 kHz where it was measured, and knows nothing of nothing', () => {
    expect(absorptionInThirds([4000, 8000], [0.3, 0.9])[20]).toBeCloseTo(0.5, 9);
    expect(absorptionInThirds([], []).every((value) => value === null)).toBe(true);
  });

  it('rejects bands that are no octaves', () => {
    expect(() => absorptionInThirds([125, 200], [0, 0])).toThrow('band 2 of 2 is 200');
    expect(() => absorptionInThirds([125], [0, 0])).toThrow('number of values is 2');
  });
});
