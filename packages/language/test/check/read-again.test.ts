import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatedSpec } from '../../../../tests/bench/latency/generated-spec.js';

import { checkText } from '../check-text.js';

const examples = join(import.meta.dirname, '../../../../shared/examples');
const example = (name: string): string => readFileSync(join(examples, name, `${name}.booth`), 'utf8');
const names = `use catalog
let thick = 12.5 mm
material felt { kind porous; density 40 kg/m3; resistivity 10 kPa.s/m2; source "invented" }
material slab { kind porous; density 50 kg/m3; resistivity thick / 1 mm * 1 kPa.s/m2; source "invented" }
assembly inner { gypsum-board 12.5 mm; felt 20 mm }
assembly outer { inner; frame 45 mm x 95 mm every 400 mm { fill slab thick }; gypsum-board thick }
assembly plain { gypsum-board 9.5 mm; frame 45 mm x 70 mm every 300 mm { fill felt 60 mm }; gypsum-board 12.5 mm }
booth box { inside 2 m x 2 m x 2 m; walls plain; roof outer; floor inner }
variant lighter { felt.density = 30 kg/m3 }
`;

/** The generated spec without most of what fills it, so that a round costs little. */
const generated = generatedSpec(1)
  .text.split('\n')
  .filter((line) => !/^let distance-\d\d/.test(line))
  .join('\n');

const texts: readonly (readonly [string, string])[] = [
  ['a text of names', names],
  ['tram-alcove', example('tram-alcove')],
  ['the spec of the measurements', generated],
];

/** What a writer types over or in: also what breaks a line, opens or closes a block, or declares a name anew. */
const typed = [
  '1',
  '7',
  '0',
  '.',
  ' ',
  '',
  'x',
  'mm',
  '{',
  '}',
  '"',
  '#',
  '//',
  '\n',
  ';',
  '\n}\n',
  ' {\n',
  '\nlet thick = 3 mm\n',
  '\nmaterial felt { kind porous; density 60 kg/m3; resistivity 10 kPa.s/m2 }\n',
  '\nassembly gypsum-board { softwood-plywood 9 mm }\n',
  '\nassembly softwood { softwood-plywood 9 mm }\n',
  '\nmaterial softwood { kind lumber; density 500 kg/m3 }\n',
  '\nuse catalog\n',
  '\nuse "other.booth"\n',
];

const edit = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.constantFrom(0, 0, 1, 1, 2, 9, 120),
  text: fc.constantFrom(...typed),
  /** Over as much as is typed, so that nothing behind it moves. */
  isOver: fc.boolean(),
});

function edited(
  text: string,
  { at, length, text: more, isOver }: { at: number; length: number; text: string; isOver: boolean },
) {
  const from = Math.floor(at * text.length);
  return text.slice(0, from) + more + text.slice(from + (isOver ? more.length : length));
}

describe.each(texts)('checking %s again after changes', (_, text) => {
  it('finds what a first check finds', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 6 }), (edits) => {
        let now = text;
        let before = checkText(now).files;
        for (const one of edits) {
          // Back to a sound text from time to time, as a writer mends what broke.
          now = edited(one.at > 0.8 ? text : now, one);
          const again = checkText(now, { before });
          expect(again).toEqual(checkText(now));
          before = again.files;
        }
      }),
      { numRuns: text.length > 3000 ? 6 : 40 },
    );
  });
});

it('takes declarations that did not change from the earlier check', () => {
  const first = checkText(generated);
  const later = checkText(generated.replace('felt-20 60 mm', 'felt-20 61 mm'), { before: first.files });
  const same = [...later.spec.assemblies].filter(([name, assembly]) => first.spec.assemblies.get(name) === assembly);
  expect(same.map(([name]) => name)).toEqual(
    [...first.spec.assemblies.keys()].filter((name) => name !== 'build-up-20'),
  );
});
