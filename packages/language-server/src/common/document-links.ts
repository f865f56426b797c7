import { resolvePath, type Statement } from '@boothwright/language';
import type { DocumentLink } from 'vscode-languageserver';
import { catalogueUri } from './catalogue-uri.js';
import type { View } from './view.js';

/** Used files, the catalogue where the editor can show it, and the addresses that sources and comments name. */
export function documentLinks(view: View): DocumentLink[] {
  const uses = view.parsed.tree.statements.flatMap((statement) => useLink(view, statement) ?? []);
  return [...uses, ...addresses(view)];
}

function useLink(view: View, statement: Statement): DocumentLink | undefined {
  if (statement.fact?.keyword !== 'use') return undefined;
  const catalogue = statement.slots.get('catalog');
  if (catalogue !== undefined) {
    const [first] = view.checked.symbols.symbols.filter(({ fromCatalogue }) => fromCatalogue);
    // Only an editor that can show the catalogue is led there.
    if (first === undefined || view.locate(first.nameRange) === undefined) return undefined;
    return { range: view.lines.rangeOf(catalogue), target: catalogueUri, tooltip: 'Show the catalogue' };
  }
  const path = statement.slots.get('path');
  if (path?.kind !== 'string') return undefined;
  const resolved = resolvePath(view.file, path.value);
  // A file that was not read, since it is missing or lies outside, leads nowhere.
  if ('refused' in resolved || !view.checked.files.some(({ file }) => file === resolved.path)) return undefined;
  const target = view.locate({ file: resolved.path, from: 0, to: 0 })?.uri;
  if (target === undefined) return undefined;
  return {
    range: view.lines.rangeOf({ from: path.from + 1, to: path.to - 1 }),
    target,
    tooltip: `Open ${resolved.path}`,
  };
}

const address = /\bhttps?:\/\/[^\s"<>]+|\bdoi:\s?(10\.\d{4,9}\/[^\s"<>]+)/gi;

function addresses(view: View): DocumentLink[] {
  return view.parsed.tokens
    .filter(({ kind }) => kind === 'string' || kind === 'comment')
    .flatMap((token) =>
      [...token.text.matchAll(address)].map((match) => {
        // A sentence ends behind the address, not in it.
        const written = match[0].replace(/[.,;:)\]]+$/, '');
        const from = token.from + match.index;
        const doi = match[1]?.slice(0, match[1].length - (match[0].length - written.length));
        return {
          range: view.lines.rangeOf({ from, to: from + written.length }),
          target: doi === undefined ? written : `https://doi.org/${doi}`,
          ...(doi === undefined ? {} : { tooltip: 'Open the source' }),
        };
      }),
    );
}
