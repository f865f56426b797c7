import { expect, it } from 'vitest';
import { headline } from '../../src/common/headline.js';
import { openSpecs } from '../helpers/index.js';

const assemblies = 'use catalog\nassembly wall { osb 18 mm }\n';
const booth = (name: string) =>
  `booth ${name} {\n  outside 1.3 m x 1.5 m x 2.1 m\n  walls wall; roof wall; floor wall\n}\n`;

function place(text: string, at: string) {
  const before = text.slice(0, text.indexOf(at)).split('\n');
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

it('tells the booth at the cursor with what it meets', () => {
  const text = `${assemblies}${booth('one')}${booth('two')}require mass <= 10 kg\nrequire height <= 3 m\n`;
  const specs = openSpecs({ 'a.booth': text });
  specs.assess('a.booth');
  const inTwo = headline(specs.view('a.booth'), place(text, 'booth two'));
  expect(inTwo?.booth).toBe('two');
  expect(inTwo?.text).toMatch(/^1 of 2 met · .*\d+ kg/);
  expect(inTwo?.missed).toEqual(['missed: mass <= 10 kg']);
  expect(inTwo?.state).toBe('fresh');
  expect(headline(specs.view('a.booth'), { line: 0, character: 0 })?.booth).toBe('one');
});

it('marks what is left of an earlier text', () => {
  const text = `${assemblies}${booth('one')}`;
  const specs = openSpecs({ 'a.booth': text });
  expect(headline(specs.view('a.booth'), { line: 0, character: 0 })).toBeUndefined();
  specs.assess('a.booth');
  specs.change('a.booth', text.replace('osb 18 mm', 'osb 22 mm'));
  expect(headline(specs.view('a.booth'), { line: 0, character: 0 })?.state).toBe('pending');
  specs.change('a.booth', text.replace('osb 18 mm', 'osb 18 kg'));
  expect(headline(specs.view('a.booth'), { line: 0, character: 0 })?.state).toBe('stale');
});
