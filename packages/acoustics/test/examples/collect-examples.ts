import fs from 'node:fs';
import path from 'node:path';

/** An example in the docstring of a source file. */
export type Example = {
  /** File below `src`, with slashes. */
  readonly file: string;
  /** Line of the file at which the code begins, from 1. */
  readonly line: number;
  readonly code: string;
};

/** Every `@example` of the sources below a folder, in the order of their paths. */
export function collectExamples(sources: string): Example[] {
  const files = fs
    .readdirSync(sources, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort();
  return files.flatMap((file) =>
    examplesOf(fs.readFileSync(path.join(sources, file), 'utf8'), file.replaceAll(path.sep, '/')),
  );
}

/** The examples in the text of one source file. An example without a closed block of code is an error. */
export function examplesOf(text: string, file: string): Example[] {
  const lines = text.split('\n');
  const examples: Example[] = [];
  for (let at = 0; at < lines.length; at++) {
    if (!/^\s*\* @example\b/.test(lines[at]!)) continue;
    const open = at + 1;
    if (!/^\s*\* ```ts$/.test(lines[open] ?? '')) {
      throw new Error(`${file}:${open + 1} is no line "\`\`\`ts", expected one after @example`);
    }
    let close = open + 1;
    while (close < lines.length && !/^\s*\* ```$/.test(lines[close]!)) {
      if (lines[close]!.includes('*/')) throw new Error(`${file}:${at + 1} has an example without an end`);
      close++;
    }
    const code = lines.slice(open + 1, close).map((line) => line.replace(/^\s*\* ?/, ''));
    examples.push({ file, line: open + 2, code: `${code.join('\n')}\n` });
    at = close;
  }
  return examples;
}
