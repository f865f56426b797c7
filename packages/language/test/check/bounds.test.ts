import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

const many = (count: number, line: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => line(i)).join('\n');
const ids = (text: string): readonly string[] => [...new Set(checkText(text).problems.map((problem) => problem.id))];

describe('a text that is odd on purpose ends in a few clear problems', () => {
  it('when twenty thousand values lead to each other', () => {
    const { problems } = checkText(`${many(20_000, (i) => `let a${i} = a${i + 1}`)}\nlet a20000 = 3 mm\n`);
    expect([...new Set(problems.map((problem) => problem.id))]).toEqual(['let-too-deep']);
    expect(problems.length).toBeLessThanOrEqual(501);
  });

  it('when every one of thousands of names is misspelt', () => {
    const text = `${many(3000, (i) => `material stuff-number-${i} { kind limp; density 2000 kg/m3 }`)}\nassembly a {\n${many(3000, (i) => `stuf-number-${i} 3 mm`)}\n}\n`;
    const { problems } = checkText(text);
    expect(problems.map((problem) => problem.id).slice(499)).toEqual(['unknown-name', 'too-many-problems']);
    expect(problems[0]!.hint).toMatch(/did you mean/);
  });

  it('when thousands of doors overlap', () => {
    const door = (i: number): string => `door d${i} on front { size 300 mm x 1900 mm; offset 0 mm; leaf osb 18 mm }`;
    const text = `use catalog\nassembly s { osb 50 mm }\nbooth b { inside 1 m x 1 m x 2 m; walls s; roof s; floor s\n${many(2000, door)}\n}\n`;
    expect(ids(text)).toEqual(['openings-overlap', 'too-many-problems']);
  });

  it('when a variant has more changes than one may have', () => {
    expect(ids(`let gap = 3 mm\nvariant v {\n${many(150, (i) => `gap = ${i + 1} mm`)}\n}\n`)).toEqual([
      'too-many-changes',
    ]);
  });

  it('when facts and variants together are more than a check may cost', () => {
    const text = `${many(10_000, (i) => `let a${i} = ${i + 1} mm`)}\n${many(100, (i) => `variant v${i} { a0 = 7 mm }`)}\n`;
    const { spec, problems } = checkText(text);
    expect(problems.map((problem) => problem.id)).toEqual(['too-many-variants']);
    expect(spec.variants.length).toBeLessThan(40);
  });

  it('when an item or a noise has thousands of twins', () => {
    expect(ids(`budget {\n${many(5000, () => 'item a 1 at 3 EUR')}\n}\n`)).toEqual(['name-twice', 'too-many-problems']);
    expect(ids(`site {\n${many(5000, () => 'impact a')}\n}\n`)).toEqual(['name-twice', 'too-many-problems']);
  });
});
