import { parse } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

/** Seven lines with one broken, then a second block: five sound lines must survive. */
const around = (line: string): string => `use catalog
assembly one {
  hardboard 3 mm
${line}
  gypsum-board 12.5 mm
}
assembly two {
  osb 9 mm
}
`;

const lineOf = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

describe('one broken line costs that line, and gives one message on it', () => {
  const cases: readonly [what: string, text: string, line: number, id: string][] = [
    ['a value is missing', around('  air'), 4, 'value-missing'],
    ['a thickness is missing', around('  gypsum-board'), 4, 'amount-missing'],
    ['a character means nothing', around('  air 2 $ mm'), 4, 'unexpected'],
    ['a parenthesis is not closed', around('  air (2 mm + 3 mm'), 4, 'parenthesis-not-closed'],
    ['a block is not closed', around('').replace('}\nassembly two', 'assembly two'), 2, 'block-not-closed'],
    ['a block is closed too early', around('  }'), 4, 'brace-too-early'],
    ['a word is misspelt', around('  gypsm-board 5 mm'), 4, 'unknown-name'],
    ['a text is not closed', around('').replace('one {', 'one "wall {'), 2, 'text-not-closed'],
    [
      'a name is half typed',
      around('').replace('assembly two', 'variant v { one. = 3 mm }\nassembly two'),
      7,
      'name-missing',
    ],
    ['two values follow each other', around('  air 2 mm 3 mm'), 4, 'two-values'],
  ];
  it.each(cases)('when %s', (_, text, line, id) => {
    const { problems, spec } = checkText(text);
    expect(problems.map((problem) => [problem.id, lineOf(text, problem.range.from)])).toEqual([[id, line]]);
    expect([...spec.assemblies.keys()]).toEqual(['one', 'two']);
    expect(spec.assemblies.get('one')!.layers.length).toBeGreaterThanOrEqual(2);
    expect(spec.assemblies.get('two')!.layers.length).toBe(1);
  });
});

describe('parse(text, file)', () => {
  it('keeps half-built lines in the tree', () => {
    const { tree } = parse('assembly a {\n  frame 45 mm x\n}\n', 'a.booth');
    const frame = tree.statements[0]!.block!.statements[0]!;
    expect(frame.fact?.keyword).toBe('frame');
    expect(frame.complete).toBe(false);
    expect([...frame.slots.keys()]).toEqual(['width']);
  });

  it('reports an unclosed block once, on its own header, and goes on with the next block of the outer one', () => {
    const text =
      'booth k {\n  door d on front {\n    leaf osb 18 mm\n  window w on left {\n    pane glass 4 mm\n  }\n}\nsession { people 1 }\n';
    const { problems, tree } = parse(text, 'a.booth');
    expect(problems.map((problem) => [problem.id, text.slice(problem.range.from, problem.range.to)])).toEqual([
      ['block-not-closed', 'door d on front'],
    ]);
    expect(tree.statements.map((statement) => statement.keyword.word)).toEqual(['booth', 'session']);
    expect(tree.statements[0]!.block!.statements.map((statement) => statement.keyword.word)).toEqual([
      'door',
      'window',
    ]);
  });

  it('sees that a fact of the outer block ends an unclosed inner one when a brace is missing', () => {
    const text = 'booth k {\n  door d on front {\n    leaf osb 18 mm\n  walls shell\n}\nsession { people 1 }\n';
    const { problems, tree } = parse(text, 'a.booth');
    expect(problems.map((problem) => problem.id)).toEqual(['block-not-closed']);
    expect(tree.statements[0]!.block!.statements.map((statement) => statement.keyword.word)).toEqual(['door', 'walls']);
  });

  it('sees that a layer ends an unclosed frame, written in one line or in several', () => {
    const frames = ['frame 2x4 every 600 mm { fill wool 70 mm', 'frame 2x4 every 600 mm {\n    fill wool 70 mm'];
    for (const frame of frames) {
      const text = `assembly a {\n  osb 18 mm\n  ${frame}\n  osb 12 mm\n}\nassembly b { osb 18 mm }\n`;
      const { problems, tree } = parse(text, 'a.booth');
      expect(problems.map((problem) => [problem.id, text.slice(problem.range.from, problem.range.to)])).toEqual([
        ['block-not-closed', 'frame 2x4 every 600 mm'],
      ]);
      expect(problems[0]?.hint).toBe('add a `}` before `osb`');
      expect(tree.statements.map((statement) => statement.block?.statements.length)).toEqual([3, 1]);
    }
  });

  it('gives one problem for what is no text', () => {
    expect(parse('\u0000\u0001PNG', 'a').problems.map((problem) => problem.id)).toEqual(['not-text']);
    expect(parse('\u0001\u0002\u0003'.repeat(20), 'a').problems.map((problem) => problem.id)).toEqual(['not-text']);
  });

  it('says of an empty file what a spec needs first', () => {
    for (const text of ['', '\n\n', '# only a remark\n']) {
      const { problems } = parse(text, 'a');
      expect(problems.map((problem) => [problem.id, problem.severity])).toEqual([['empty-file', 'warning']]);
      expect(problems[0]!.hint).toContain('use catalog');
    }
  });

  it('ends in one problem at each of its limits', () => {
    expect(parse('a'.repeat(2_000_001), 'a').problems.map((problem) => problem.id)).toEqual(['file-too-large']);
    expect(parse(`let a = ${'('.repeat(5000)}1${')'.repeat(5000)}`, 'a').problems.map((problem) => problem.id)).toEqual(
      ['value-too-deep'],
    );
    expect(parse(`let a = 1${' + 1'.repeat(5000)}`, 'a').problems.map((problem) => problem.id)).toEqual([
      'value-too-long',
    ]);
    expect(parse(`let a = ${'-'.repeat(5000)}1`, 'a').problems).toHaveLength(1);
    expect(parse('x\n'.repeat(5000), 'a').problems.length).toBe(501);
    expect(parse('use catalog\n'.repeat(100_001), 'a').problems.map((problem) => problem.id)).toEqual([
      'too-many-lines',
    ]);
  });

  it('reads CRLF and lone CR as line ends', () => {
    expect(parse('let a = 3 mm\r\nlet b = 4 mm\rlet c = 5 mm', 'a').tree.statements.map((s) => s.complete)).toEqual([
      true,
      true,
      true,
    ]);
  });
});
