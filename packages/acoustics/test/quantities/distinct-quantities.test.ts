import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

/** Messages of the compiler about a few lines that use the sources of the package. */
function complaints(lines: string): string[] {
  const file = fileURLToPath(new URL('./lines.ts', import.meta.url));
  const options: ts.CompilerOptions = {
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2023.d.ts'],
    strict: true,
    noEmit: true,
    types: [],
    allowImportingTsExtensions: false,
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.fileExists = (name) => name === file || fileExists(name);
  host.readFile = (name) => (name === file ? lines : readFile(name));
  host.getSourceFile = (name, version, ...rest) =>
    name === file ? ts.createSourceFile(name, lines, version) : getSourceFile(name, version, ...rest);
  const program = ts.createProgram([file], options, host);
  return ts
    .getPreEmitDiagnostics(program, program.getSourceFile(file))
    .map((each) => ts.flattenDiagnosticMessageText(each.messageText, ' '));
}

const head = `
import { asInsertionLoss, asLevelDifference, asTransmissionLoss } from '../../src/quantities/index.js';
import { compositeTransmissionLoss } from '../../src/composite/index.js';
import { noiseIsolationClass, soundTransmissionClass, weightedLevelDifference, weightedSoundReduction } from '../../src/ratings/index.js';
const numbers: readonly number[] = new Array<number>(21).fill(40);
const r = asTransmissionLoss(numbers);
const d = asLevelDifference(numbers);
const il = asInsertionLoss(numbers);
`;

const right = [
  'soundTransmissionClass(r);',
  'weightedSoundReduction(r);',
  'noiseIsolationClass(d);',
  'weightedLevelDifference(d);',
  'compositeTransmissionLoss([{ area: 1, transmissionLoss: r }]);',
  'const plain: readonly number[] = il; void plain;',
];
const wrong = [
  'soundTransmissionClass(d);',
  'soundTransmissionClass(il);',
  'weightedSoundReduction(d);',
  'noiseIsolationClass(r);',
  'noiseIsolationClass(il);',
  'weightedLevelDifference(r);',
  'compositeTransmissionLoss([{ area: 1, transmissionLoss: d }]);',
  'compositeTransmissionLoss([{ area: 1, transmissionLoss: numbers }]);',
];

test('R, D and IL go where they belong', () => {
  expect(complaints(head + right.join('\n'))).toEqual([]);
}, 60_000);

test('R, D and IL are refused where another of them belongs', () => {
  const found = complaints(head + wrong.join('\n'));
  expect(found).toHaveLength(wrong.length);
  for (const message of found) expect(message).toMatch(/not assignable/);
}, 60_000);
