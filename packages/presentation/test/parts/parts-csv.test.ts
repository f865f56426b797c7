import type { BoothResult, ResultDocument } from '@boothwright/assessment';
import { describe, expect, test } from 'vitest';
import { csvField, partsCsv } from '../../src/parts/parts-csv.js';
import { sampleParts } from '../fixtures/sample-parts.js';
import { sampleResult } from '../fixtures/sample-result.js';

/** Reads RFC 4180 back, by the letter of its grammar. */
function parsed(csv: string): string[][] {
  const rows: string[][] = [[]];
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy;
  for (let match = field.exec(csv); match !== null; match = field.exec(csv)) {
    rows[rows.length - 1]?.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') rows.push([]);
    if (field.lastIndex === csv.length) break;
  }
  return rows.slice(0, -1);
}

function documentWith(owner: string): ResultDocument {
  const [name, booth] = Object.entries(sampleResult.booths)[0] as [string, BoothResult];
  const parts = sampleParts.parts.map((part) => ({ ...part, owner }));
  return { ...sampleResult, booths: { [name]: { ...booth, build: { ...booth.build, parts } } } };
}

describe('partsCsv(result)', () => {
  test('has a head line and one row per row of the cut list, with as many fields', () => {
    const rows = parsed(partsCsv(documentWith('panel 1')));
    expect(rows).toHaveLength(1 + sampleParts.parts.length);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([11]));
    expect(rows[1]?.slice(1, 9)).toEqual(['1a', '1', 'panel 1', 'sheet', 'plywood 12 mm', '446', '2042', '12']);
  });

  test('ends every line with CRLF', () => {
    const csv = partsCsv(documentWith('panel 1'));
    expect(csv.endsWith('\r\n')).toBe(true);
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('brings commas, quotes and line breaks through unharmed', () => {
    const owner = 'panel "1", the\r\nfirst';
    expect(parsed(partsCsv(documentWith(owner)))[1]?.[3]).toBe(owner);
  });
});

describe('csvField(text)', () => {
  test('quotes only what needs it, and doubles quotes', () => {
    expect(csvField('plain')).toBe('plain');
    expect(csvField('a,b')).toBe('"a,b"');
    expect(csvField('a "b"')).toBe('"a ""b"""');
  });

  test('lets no spreadsheet read a name as a formula', () => {
    expect(csvField('=1+1')).toBe("'=1+1");
    expect(csvField('@name')).toBe("'@name");
  });
});
