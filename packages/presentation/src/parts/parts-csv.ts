import type { ResultDocument } from '@boothwright/assessment';
import { mm } from './mm.js';

/**
 * The cut list as comma-separated values, RFC 4180: a head line, CRLF line ends, fields with a comma, a quote or a line
 * break in quotes, and quotes doubled. Lengths in mm, masses in kg. A field that a spreadsheet would read as a formula
 * starts with an apostrophe.
 */
export function partsCsv(result: ResultDocument): string {
  const head = [
    'booth',
    'mark',
    'count',
    'owner',
    'use',
    'stock',
    'width mm',
    'length mm',
    'thickness mm',
    'cut out m2',
    'kg each',
  ];
  const rows = Object.entries(result.booths).flatMap(([booth, { build }]) =>
    build.parts.map((part) => [
      booth,
      part.mark,
      String(part.count),
      part.owner,
      part.use,
      part.stock,
      mm(part.widthM),
      mm(part.lengthM),
      part.thicknessM === null ? '' : mm(part.thicknessM),
      part.cutOutM2 === 0 ? '' : String(Number(part.cutOutM2.toFixed(4))),
      part.massKg === null ? '' : String(Number(part.massKg.toFixed(3))),
    ]),
  );
  return [head, ...rows].map((row) => `${row.map(csvField).join(',')}\r\n`).join('');
}

/** One field, escaped. */
export function csvField(text: string): string {
  const plain = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
