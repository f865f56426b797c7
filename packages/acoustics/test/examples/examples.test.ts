import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { beforeAll, describe, expect, test } from 'vitest';
import { collectExamples, type Example } from './collect-examples.js';
import { instrumentExample, type StatedResult } from './instrument-example.js';
import { compareResult, type Disagreement } from './run-example.js';

const sources = fileURLToPath(new URL('../../src/', import.meta.url));
const examples = collectExamples(sources);
type Check = (index: number, evaluate: () => unknown) => void;
type Run = (check: Check) => void;

/** All examples as one script of functions, each with its own names, compiled from the sources of the package. */
async function compile(instrumented: readonly { code: string; results: StatedResult[] }[]): Promise<Run[]> {
  const bundle = await build({
    stdin: {
      contents: instrumented.map((_, index) => `export { run as run${index} } from 'example:${index}';`).join('\n'),
      resolveDir: sources,
    },
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'examples',
    platform: 'browser',
    plugins: [
      {
        name: 'examples',
        setup({ onResolve, onLoad }) {
          onResolve({ filter: /^example:/ }, ({ path }) => ({ path, namespace: 'example' }));
          onResolve({ filter: /^@boothwright\/acoustics(\/|$)/ }, ({ path }) => ({
            path: join(sources, path.slice('@boothwright/acoustics'.length), 'index.ts'),
          }));
          onLoad({ filter: /./, namespace: 'example' }, ({ path }) => ({
            contents: asFunction(instrumented[Number(path.slice('example:'.length))]!.code),
            loader: 'ts',
            resolveDir: sources,
          }));
        },
      },
    ],
  });
  const compiled = new Function(`${bundle.outputFiles[0]!.text}; return examples;`)() as Record<string, Run>;
  return instrumented.map((_, index) => compiled[`run${index}`]!);
}

/** The imports stay at the top; the rest becomes the body of `run`. */
function asFunction(code: string): string {
  const imports = /^(?:import[\s\S]*?from '[^']+';\s*)*/.exec(code)![0];
  return `${imports}\nexport function run(check) {\n${code.slice(imports.length)}\n}`;
}

describe('examples in the docstrings', () => {
  const instrumented = examples.map((example) => instrumentExample(example));
  let runs: Run[] = [];
  beforeAll(async () => {
    runs = await compile(instrumented);
  });

  test('there are some', () => {
    expect(examples.length).toBeGreaterThan(0);
  });

  const named = examples.map((example, index): [string, Example, number] => [
    `${example.file}:${example.line}`,
    example,
    index,
  ]);
  test.each(named)('%s gives what it states', (_, __, index) => {
    const { results } = instrumented[index]!;
    expect(results.length, 'an example states at least one result').toBeGreaterThan(0);
    const compared: number[] = [];
    const wrong: Disagreement[] = [];
    runs[index]!((at, evaluate) => {
      compared.push(at);
      const disagreement = compareResult(results[at]!, evaluate);
      if (disagreement) wrong.push(disagreement);
    });
    expect(wrong).toEqual([]);
    expect(compared).toEqual(results.map((_, at) => at));
  });

  test.each(named)('%s is read by the sub-path it imports', (_, { code }) => {
    expect(code).toMatch(/from '@boothwright\/acoustics(\/[a-z-]+)?';/);
  });
});
