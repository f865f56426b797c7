import ts from 'typescript';
import type { Example } from './collect-examples.js';

/** A statement of an example that states its result. */
export type StatedResult = {
  /** Line of the source file, from 1. */
  readonly line: number;
  readonly expression: string;
  /** The comment behind it: `49`, `[1.5, 2]`, `{ stc: 49 }`, `'sum'`, or `throws` and a part of the message. */
  readonly stated: string;
};

/**
 * Wraps each statement `expression; // result` of an example into a call `check(index, () => expression)`, so that a run
 * can compare. Answers the TypeScript code and what is stated.
 */
export function instrumentExample({ code, line: firstLine }: Example): { code: string; results: StatedResult[] } {
  const source = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true);
  const results: StatedResult[] = [];
  let out = '';
  let from = 0;
  for (const statement of source.statements) {
    if (!ts.isExpressionStatement(statement)) continue;
    const restOfLine = /^[^\n]*/.exec(code.slice(statement.end))![0];
    const stated = /^\s*\/\/\s*(.+?)\s*$/.exec(restOfLine)?.[1];
    if (stated === undefined) continue;
    const start = statement.getStart(source);
    const expression = statement.expression.getText(source);
    const line = firstLine + source.getLineAndCharacterOfPosition(start).line;
    out += `${code.slice(from, start)}check(${results.length}, () => (${expression}));`;
    from = statement.end;
    results.push({ line, expression, stated });
  }
  return { code: out + code.slice(from), results };
}
