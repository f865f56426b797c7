import { valueAt } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';
import { cursor } from './cursor.js';

const at = (marked: string): readonly string[] => {
  const { text, offset } = cursor(marked);
  const { values } = checkText(text);
  return valueAt(values, 'spec.booth', offset).map(
    ({ label, value }) => `${label} = ${String(value.value)} (${value.origin.kind})`,
  );
};

describe('valueAt(values, file, offset)', () => {
  it('finds the value under the cursor, in SI', () => {
    expect(at('session { length 9<|>0 min }')).toEqual(['session: length = 5400 (given)']);
  });

  it('finds the defaults on the header of the block that lacks the facts', () => {
    const found = at('sess<|>ion { length 90 min }');
    expect(found).toContain('session: people = 1 (default)');
    expect(found).toContain('session: co2-rate = 0.000005555555555555556 (default)');
  });

  it('finds the mass per area that a thickness comes to', () => {
    expect(at('use catalog\nassembly a { gypsum-board 12.<|>5 mm }')).toEqual([
      'assembly a, gypsum-board = 0.0125 (given)',
      'assembly a, gypsum-board: mass per area = 9.5 (catalogue)',
    ]);
  });
});
