import { readFileSync } from 'node:fs';
import { checkSpec } from '@boothwright/language';
import { type Assessed, type ComparisonDocument, compareAssessed, createAssessor } from '../../src/index.js';

const { assess } = createAssessor();

/** One side out of its text; a text with errors is allowed. */
export function sideOf(text: string, name = 'test.booth'): Assessed {
  const { spec } = checkSpec(name, { read: (path) => (path === name ? { kind: 'text', text } : { kind: 'missing' }) });
  const base = { ...spec, variants: [] };
  return { name, spec: base, result: assess(base) };
}

export function compared(old: string, now: string): ComparisonDocument {
  return compareAssessed(sideOf(old), sideOf(now));
}

export function example(name: string): string {
  return readFileSync(new URL(`../../../../shared/examples/${name}`, import.meta.url), 'utf8');
}

/** A small booth; everything in it is invented. */
export const small = `use catalog

assembly shell {
  softwood-plywood 12 mm
  frame 45 mm x 70 mm every 400 mm { fill mineral-wool-40 70 mm }
  gypsum-board 12.5 mm
}
assembly deck { softwood-plywood 18 mm }

site {
  room 4 m x 3 m x 2.5 m
  noise street octave 63 Hz 58 dB, 125 Hz 52 dB, 250 Hz 46 dB, 500 Hz 42 dB, 1 kHz 38 dB, 2 kHz 33 dB, 4 kHz 27 dB
}

booth box {
  inside 1.2 m x 1.4 m x 2.0 m
  walls shell
  roof shell
  floor deck
  door entry on front { size 660 mm x 1900 mm; leaf shell; gap perimeter 0.1 mm; gap threshold 0.3 mm }
}

session { people 1; length 60 min }

require mass <= 480 kg
`;
