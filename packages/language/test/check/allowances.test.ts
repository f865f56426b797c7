import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const board = (before: string, behind: string): string =>
  `use catalog\nassembly wall {\n  osb 9 mm\n${before}  air 1.5 m${behind}\n  osb 9 mm\n}\n`;

describe('a comment that allows', () => {
  it('keeps a warning of its line away, with its reason', () => {
    const { problems, allowed } = checkText(board('', ' # allow value-unusual: a room between two walls'));
    expect(problems).toEqual([]);
    expect(allowed.map(({ problem, allowance }) => [problem.id, allowance.reason])).toEqual([
      ['value-unusual', 'a room between two walls'],
    ]);
  });

  it('stands above its line as well, among other comments', () => {
    expect(problemIds(board('  # allow value-unusual: a room\n\n  # as built\n', ''))).toEqual([]);
  });

  it('without a reason allows nothing', () => {
    const result = checkText(board('', ' # allow value-unusual'));
    expect(result.problems.map(({ id }) => id)).toEqual(['value-unusual', 'allow-without-reason']);
    expect(underlined(result, 1)).toBe('value-unusual');
    expect(problemIds(board('', ' # allow value-unusual:  '))).toEqual(['value-unusual', 'allow-without-reason']);
  });

  it('is told where nothing of the kind is at its line', () => {
    expect(problemIds(board('  osb 9 mm # allow value-unusual: why not\n', ''))).toEqual([
      'allow-unused',
      'value-unusual',
    ]);
    expect(problemIds('use catalog\n# allow value-unusual: at the end\n')).toEqual(['allow-unused']);
  });

  it('cannot allow an error', () => {
    const result = checkText(board('', ' 3 mm # allow two-values: I know'));
    expect(result.problems.map(({ id }) => id)).toEqual(['two-values', 'allow-of-error']);
    expect(result.allowed).toEqual([]);
  });

  it('may name several, each for itself', () => {
    const result = checkText(board('', ' # allow value-unusual, variant-empty: a room'));
    expect(result.problems.map(({ id }) => id)).toEqual(['allow-unused']);
    expect(underlined(result)).toBe('variant-empty');
  });

  it('of something beyond the text is handed on', () => {
    const { spec, problems } = checkText(board('', ' # allow value-unusual, third-leaf: listed in the survey'));
    expect(problems).toEqual([]);
    expect(spec.allowances?.map(({ id, reason }) => [id, reason])).toEqual([['third-leaf', 'listed in the survey']]);
  });

  it.each(['# allow 5 mm for the carpet', '# allow airflow', '# Allow: nothing', '# allow the cat in: it insists'])(
    'is not the remark `%s`',
    (remark) => {
      const { spec, problems } = checkText(`use catalog\n${remark}\nassembly wall { osb 9 mm }\n`);
      expect(problems).toEqual([]);
      expect(spec.allowances).toEqual([]);
    },
  );

  it('works in a file that is used', () => {
    const files = {
      'spec.booth': 'use catalog\nuse "./walls.booth"\n',
      'walls.booth': 'assembly wall { osb 9 mm; air 1.5 m; osb 9 mm } # allow value-unusual: a room\n',
    };
    expect(problemIds(files)).toEqual([]);
  });
});
