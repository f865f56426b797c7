import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import * as acoustics from '../src/index.js';

const read = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');
const readme = read('../README.md');

/** The text of the first fenced block of a language. */
function block(language: string): string {
  const found = new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(readme);
  if (!found) throw new Error(`no ${language} block in the README`);
  return found[1]!;
}

test('the example of the README is the file beside this test, to the letter', () => {
  expect(block('ts')).toBe(read('./readme-example.ts'));
});

test('the example of the README prints what the README says', async () => {
  const printed = vi.spyOn(console, 'log').mockImplementation(() => {});
  await import('./readme-example.js');
  const lines = printed.mock.calls.map(([line]) => String(line));
  printed.mockRestore();
  expect(`${lines.join('\n')}\n`).toBe(block('text'));
});

test('every name in the table of functions of the README is exported', () => {
  const table = readme.slice(readme.indexOf('## Functions by folder'), readme.indexOf('## Validity'));
  const names = [...table.matchAll(/`([a-z][a-zA-Z0-9]*)`/g)].map((match) => match[1]!);
  expect(names.length).toBeGreaterThan(40);
  expect(names.filter((name) => !(name in acoustics))).toEqual([]);
});

test('every exported function that computes something is named in the table of functions of the README', () => {
  const table = readme.slice(readme.indexOf('## Functions by folder'), readme.indexOf('## Validity'));
  const functions = Object.entries(acoustics)
    .filter(([name, value]) => typeof value === 'function' && !/^(check|require)[A-Z]/.test(name))
    .map(([name]) => name);
  expect(functions.length).toBeGreaterThan(200);
  expect(functions.filter((name) => !table.includes(`\`${name}\``))).toEqual([]);
});
