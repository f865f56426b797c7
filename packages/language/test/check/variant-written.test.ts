import { checkSpec } from '@boothwright/language';
import { expect, test } from 'vitest';

const text = `use catalog
let gap = 6 mm
assembly shell { osb 18 mm }
variant deeper "a deep gap" {
  gap   =   50 mm # far more
  assembly shell {
    osb 22 mm
  }
}
variant none { }
`;

test('a variant carries its changes as the text has them, single-spaced, of a block its first line', () => {
  const { spec } = checkSpec('spec.booth', {
    read: (file: string) => (file === 'spec.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
  const written = spec.variants.map((variant) => variant.written.map((change) => change.text));
  expect(written).toEqual([['gap = 50 mm', 'assembly shell'], []]);
  const [first] = spec.variants[0]?.written ?? [];
  expect(text.slice(first?.range.from, first?.range.to)).toBe('gap   =   50 mm');
});
