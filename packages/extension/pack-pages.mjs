import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

const folders = ['problems', 'findings'];
const single = ['cautions.md', 'assessment.md'];

/**
 * The pages that diagnostics lead to, by their path below the folder of the documentation: in one file, since an
 * extension in a browser reads each file by a request of its own. A link out of these pages keeps its words only.
 *
 * @param {string} docs the folder of the documentation
 * @returns {Record<string, string>}
 */
export function packPages(docs) {
  const names = folders.flatMap((folder) =>
    readdirSync(path.join(docs, folder))
      .filter((name) => name.endsWith('.md'))
      .map((name) => `${folder}/${name}`),
  );
  const pages = [...single, ...names];
  for (const page of single) if (!existsSync(path.join(docs, page))) throw new Error(`The documentation lacks ${page}`);
  const packed = new Set(pages);
  return Object.fromEntries(
    pages.map((page) => [page, withinPages(readFileSync(path.join(docs, page), 'utf8'), page, packed)]),
  );
}

/** @param {string} text @param {string} page @param {ReadonlySet<string>} packed */
function withinPages(text, page, packed) {
  return text.replace(/(?<!!)\[([^\]]+)\]\(([^)\s]+)\)/g, (link, words, target) => {
    if (/^([a-z]+:|#)/i.test(target)) return link;
    const leadsTo = path.posix.join(path.posix.dirname(page), target.replace(/#.*$/, ''));
    return packed.has(leadsTo) ? link : words;
  });
}
