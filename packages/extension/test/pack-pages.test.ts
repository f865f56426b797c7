import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { findingIds } from '@boothwright/assessment';
import { problemTable } from '@boothwright/language';
import { expect, it } from 'vitest';
import { packPages } from '../pack-pages.mjs';

const pages = packPages(fileURLToPath(new URL('../../../docs', import.meta.url)));

it('packs a page for every problem and every finding, and those that several share', () => {
  const wanted = [
    ...Object.keys(problemTable).map((id) => `problems/${id}.md`),
    ...[...findingIds].map((id) => `findings/${id}.md`),
    'cautions.md',
    'assessment.md',
  ];
  expect(wanted.length).toBeGreaterThan(100);
  expect(wanted.filter((page) => pages[page] === undefined)).toEqual([]);
  for (const page of wanted) expect(pages[page], page).toMatch(/^# /);
});

it('leads from a page only to others that are packed', () => {
  expect(pages['problems/README.md']).toContain('](dimensions-disagree.md)');
  for (const [page, text] of Object.entries(pages)) {
    for (const [, target = ''] of text.matchAll(/\]\(([^)\s#]+)/g)) {
      if (/^[a-z]+:/.test(target)) continue;
      const leadsTo = new URL(target, `pages:/${page}`).pathname.slice(1);
      expect(Object.keys(pages), `${target} on ${page}`).toContain(leadsTo);
    }
  }
});

it('takes little room in the package', () => {
  expect(gzipSync(JSON.stringify(pages)).length).toBeLessThan(80_000);
});
