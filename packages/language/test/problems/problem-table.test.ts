import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { problemTable } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { badInputs } from '../bad-inputs.js';
import { checkText } from '../check-text.js';
import { problemPage } from './problem-page.js';

const root = join(import.meta.dirname, '../../../..');
const sources = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && !/-problems\.ts$/.test(entry.name))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));
const source = sources(join(root, 'packages/language/src')).join('\n');
const results = badInputs.map(({ files }) => checkText(files));

describe('the table of problems', () => {
  it('has every identifier that a text can bring about, with its severity', () => {
    const told = new Set(results.flatMap(({ problems }) => problems.map(({ id }) => id)));
    expect([...told].filter((id) => !Object.hasOwn(problemTable, id))).toEqual([]);
    const others = results.flatMap(({ problems }) =>
      problems.filter(({ id, severity }) => problemTable[id]!.severity !== severity).map(({ id }) => id),
    );
    // Without `inside` the faces make the booth, so that a missing one is an error.
    expect([...new Set(others)]).toEqual(['face-missing']);
  });

  it('has every identifier that the source names where it complains', () => {
    const named = [
      ...source.matchAll(
        /\b(?:complain|warn|report|fail)\(\s*(?:[\w.]+|\{[^}]*\}|hearing\([^)]*\)),\s*'([a-z0-9-]+)'/g,
      ),
      ...source.matchAll(/\bid: '([a-z]+-[a-z0-9-]+)'/g),
    ].map((match) => match[1]!);
    expect(new Set(named).size).toBeGreaterThan(90);
    expect([...new Set(named)].filter((id) => !Object.hasOwn(problemTable, id))).toEqual([]);
  });

  it('has none that nothing brings about', () => {
    // Some are put together, such as `mic-outside`.
    const parts = (id: string): boolean => id.endsWith('-outside') && source.includes('-outside`');
    expect(Object.keys(problemTable).filter((id) => !source.includes(`'${id}'`) && !parts(id))).toEqual([]);
  });
});

describe('the pages of the problems', () => {
  it.each(Object.keys(problemTable))('%s has a page that says what the table says', async (id) => {
    const page = problemPage(id, problemTable[id]!, results);
    await expect(page).toMatchFileSnapshot(join(root, `docs/problems/${id}.md`));
  });

  it('are those of the table, and are listed', () => {
    const pages = readdirSync(join(root, 'docs/problems')).filter((name) => name !== 'README.md');
    expect(pages.toSorted()).toEqual(
      Object.keys(problemTable)
        .map((id) => `${id}.md`)
        .toSorted(),
    );
    const list = readFileSync(join(root, 'docs/problems/README.md'), 'utf8');
    for (const [id, { severity, means }] of Object.entries(problemTable))
      expect(list).toContain(`| [${id}](${id}.md) | ${severity} | ${means.replaceAll('|', '\\|')} |`);
  });
});
