import { describe, expect, it } from 'vitest';
import { documentLinks } from '../../src/common/document-links.js';
import { viewOf } from '../helpers/index.js';

function linksOf(text: string, others: Record<string, string> = {}) {
  const view = viewOf(text, others);
  return documentLinks(view).map(({ range, target }) => ({
    text: view.text.slice(view.lines.offsetAt(range.start), view.lines.offsetAt(range.end)),
    target,
  }));
}

describe('document links', () => {
  it('lead from a use to the file and to the catalogue', () => {
    expect(linksOf('use catalog\nuse "./parts/doors.booth"\n', { 'parts/doors.booth': 'let a = 1 mm\n' })).toEqual([
      { text: 'catalog', target: 'booth-catalog:/catalog.booth' },
      { text: './parts/doors.booth', target: 'file:///booths/parts/doors.booth' },
    ]);
  });

  it('lead nowhere from a file that is missing or outside the folder', () => {
    expect(linksOf('use "./none.booth"\nuse "../../out.booth"\nuse "/etc/hosts"\n')).toEqual([]);
  });

  it('lead to the addresses of sources, without the sign that ends the sentence', () => {
    const text =
      'material m {\n  kind panel\n  source "see https://example.org/a(1).pdf, or doi:10.1000/xyz-1."\n}\n# http://example.org.\n';
    expect(linksOf(text)).toEqual([
      { text: 'https://example.org/a(1).pdf', target: 'https://example.org/a(1).pdf' },
      { text: 'doi:10.1000/xyz-1', target: 'https://doi.org/10.1000/xyz-1' },
      { text: 'http://example.org', target: 'http://example.org' },
    ]);
  });
});
