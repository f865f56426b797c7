import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { diagnostics } from '../../src/common/diagnostics.js';
import { withPages } from '../../src/common/documentation-pages.js';
import { smallBooth, viewOf } from '../helpers/index.js';

const docs = new URL('../../../../docs/', import.meta.url);
const pagesOf = (text: string, base: string | undefined) => {
  const view = viewOf(text);
  return withPages(diagnostics(view), view.results, base).map(({ codeDescription }) => codeDescription?.href);
};

it('leads every diagnostic to a page that is there', () => {
  const broken = smallBooth.replace('12.5 mm', '12,5 mm').replace('leaf wall', 'leaf wal');
  const found = [...pagesOf(smallBooth, docs.href), ...pagesOf(broken, docs.href.replace(/\/$/, ''))];
  expect(found.some((page) => page?.includes('/problems/'))).toBe(true);
  expect(found.some((page) => page?.includes('/findings/'))).toBe(true);
  expect(found.filter((page) => page === undefined || !existsSync(fileURLToPath(page)))).toEqual([]);
});

it('says nothing of pages to an editor that told no address', () => {
  expect(pagesOf(smallBooth, undefined).every((page) => page === undefined)).toBe(true);
});
