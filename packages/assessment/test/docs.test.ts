import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const root = new URL('../../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, root), 'utf8');
const sources = (folder: string) =>
  readdirSync(new URL(`packages/assessment/src/${folder}/`, root)).map((file) =>
    read(`packages/assessment/src/${folder}/${file}`),
  );

describe('the pages of findings and cautions', () => {
  const findings = new Set(
    sources('findings').flatMap((text) => [...text.matchAll(/\bid: '([a-z-]+)'/g)].map((match) => match[1])),
  );
  const cautions = new Set(
    sources('cautions').flatMap((text) => [
      ...[...text.matchAll(/caution\(\s*'([a-z-]+)'/g)].map((match) => match[1]),
      ...[...text.matchAll(/\? '(door-[a-z-]+)' : '(door-[a-z-]+)'/g)].flatMap((match) => [match[1], match[2]]),
    ]),
  );

  it('has a page of its own for every finding, and no page without one', () => {
    const pages = readdirSync(new URL('docs/findings/', root)).map((file) => file.replace(/\.md$/, ''));
    expect(findings.size).toBeGreaterThanOrEqual(6);
    expect(pages.sort()).toEqual([...findings].sort());
  });

  it('lists every caution', () => {
    const page = read('docs/cautions.md');
    expect(cautions.size).toBeGreaterThanOrEqual(18);
    for (const id of cautions) expect(page).toContain(`\`${id}\``);
  });

  it('points from every finding to its page', () => {
    for (const id of findings) {
      expect(sources('findings').some((text) => text.includes(`docs/findings/${id}.md`))).toBe(true);
    }
  });

  it('pronounces nothing fit', () => {
    const texts = [
      ...sources('findings'),
      ...sources('cautions'),
      ...sources('requirements'),
      read('docs/cautions.md'),
    ];
    for (const text of texts) expect(text).not.toMatch(/\b(is|are|as) (safe|compliant|approved)\b/i);
  });
});
