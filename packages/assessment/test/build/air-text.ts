import { checkSpec } from '@boothwright/language';
import { assess } from '../../src/index.js';
import type { BoothResult, ResultDocument } from '../../src/result/result-document.js';

/** A booth in panels with two air paths; `line` goes into the first of them. Invented. */
export function fromText(
  line: string,
  { wall = 'osb 18 mm', more = '', panels = 'panels { width 600 mm }' } = {},
): ResultDocument {
  const text = `use catalog
material duct-liner { kind porous; density 48 kg/m3; resistivity 20 kPa.s/m2 }
assembly shell { ${wall} }
assembly hull { osb 18 mm }
booth box {
  inside 1.20 m x 1.30 m x 2.00 m
  walls shell
  front hull
  roof hull
  floor hull
  door entry on front { size 660 mm x 1900 mm; leaf osb 18 mm }
  vent intake on left { duct 125 mm; run 1.2 m; ${line} }
  vent exhaust on right { duct 100 mm x 150 mm; run 0.8 m }
  ${panels}
  ${more}
}
`;
  const checked = checkSpec('box.booth', {
    read: (path) => (path === 'box.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
  const errors = checked.problems.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('; '));
  return assess(checked.spec);
}

export function boothNamed(result: ResultDocument, name = 'box'): BoothResult {
  const found = result.booths[name];
  if (found === undefined) throw new Error(`no booth ${name}`);
  return found;
}
