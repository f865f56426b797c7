import type { Problem } from '@boothwright/language';
import { describe, expect, test } from 'vitest';
import { renderProblems } from '../../src/text/render-problems.js';

const plain = { colour: false, width: 100, detail: 'full' } as const;

/** A problem on the first place where `on` stands in the text. */
function problem(text: string, on: string, more: Partial<Problem> = {}): Problem {
  const from = text.indexOf(on);
  return {
    id: 'unit-of-wrong-dimension',
    severity: 'error',
    message: 'a thickness is a length; `5 kg/m2` is a mass per area',
    range: { file: 'a.booth', from, to: from + on.length },
    ...more,
  };
}

function render(text: string, ...problems: Problem[]): string {
  return renderProblems(problems, new Map([['a.booth', text]]), plain);
}

describe('renderProblems(problems, texts, style)', () => {
  test('prints place, id, message, line, carets and help', () => {
    const text = '# notes\nassembly a {\n  hardboard 5 kg/m2\n}\n';
    expect(render(text, problem(text, '5 kg/m2', { hint: 'write a thickness such as `3.2 mm`' }))).toBe(
      `a.booth:3:13: error[unit-of-wrong-dimension]: a thickness is a length; \`5 kg/m2\` is a mass per area
  3 |   hardboard 5 kg/m2
    |             ^^^^^^^
  help: write a thickness such as \`3.2 mm\`
`,
    );
  });

  test('prints the other lines involved, each with its own place', () => {
    const text = 'let a = 1 mm\nlet a = 2 mm\n';
    const second: Problem = {
      ...problem(text, 'a = 2'),
      id: 'declared-twice',
      message: '`a` is declared twice',
      related: [{ range: { file: 'a.booth', from: 4, to: 5 }, message: 'first declared here' }],
    };
    expect(render(text, second)).toBe(
      `a.booth:2:5: error[declared-twice]: \`a\` is declared twice
  2 | let a = 2 mm
    |     ^^^^^
  a.booth:1:5: first declared here
  1 | let a = 1 mm
    |     ^
`,
    );
  });

  test('keeps the carets under wide characters, tabs and control characters', () => {
    const text = '\t防音 "\u001b[31mx" bad\r\n';
    expect(render(text, problem(text, 'bad', { message: 'm' }))).toBe(
      'a.booth:1:14: error[unit-of-wrong-dimension]: m\n  1 |  防音 "<U+001B>[31mx" bad\n    |                       ^^^\n',
    );
  });

  test('underlines only the first line of a range that spans lines', () => {
    const text = 'assembly a {\n  air 5 mm\n';
    expect(
      render(text, { ...problem(text, 'assembly'), range: { file: 'a.booth', from: 0, to: text.length } }),
    ).toContain('  1 | assembly a {\n    | ^^^^^^^^^^^^\n');
  });

  test('cuts a very long line around the place', () => {
    const text = `${'x '.repeat(5000)}bad${' y'.repeat(5000)}`;
    const lines = render(text, problem(text, 'bad')).split('\n');
    expect(lines[1]!.length).toBeLessThan(200);
    expect(lines[2]!.indexOf('^^^')).toBe(lines[1]!.indexOf('bad'));
  });

  test('points one past the text when something is missing at its end', () => {
    const text = 'let a =';
    expect(render(text, { ...problem(text, 'let'), range: { file: 'a.booth', from: 7, to: 7 } })).toContain(
      '    |        ^\n',
    );
  });

  test('prints the message alone when the text is not at hand or empty', () => {
    expect(renderProblems([problem('x', 'x')], new Map(), plain)).toBe(
      'a.booth: error[unit-of-wrong-dimension]: a thickness is a length; `5 kg/m2` is a mass per area\n',
    );
    expect(render('', { ...problem('x', 'x'), message: 'empty' })).toBe(
      'a.booth:1:1: error[unit-of-wrong-dimension]: empty\n',
    );
  });

  test('colours only when asked', () => {
    const text = 'bad';
    expect(
      renderProblems([problem(text, 'bad')], new Map([['a.booth', text]]), { colour: true, width: 80, detail: 'full' }),
    ).toContain('\u001b[31merror[unit-of-wrong-dimension]\u001b[0m');
    expect(render(text, problem(text, 'bad'))).not.toContain('\u001b');
  });

  test('prints ten thousand problems of a long text without looking through it for each', () => {
    const text = 'a bad line\n'.repeat(20_000);
    const problems = Array.from({ length: 10_000 }, (_, index) => ({
      ...problem(text, 'bad'),
      range: { file: 'a.booth', from: index * 22 + 2, to: index * 22 + 5 },
    }));
    expect(render(text, ...problems)).toContain('a.booth:19999:3');
  });
});
