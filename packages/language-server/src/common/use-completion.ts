import { type CompletionItem, CompletionItemKind, type Position } from 'vscode-languageserver';
import { decoded } from './file-place.js';
import { relativePath } from './relative-path.js';
import { statementOnLine } from './statement-on-line.js';
import type { View } from './view.js';
import type { WorkspaceFile } from './workspace-files.js';

/** Where the path of a `use` is being typed, between its quotes; undefined elsewhere. */
export function usePathAt(view: View, position: Position): { readonly from: number; readonly to: number } | undefined {
  const offset = view.lines.offsetAt(position);
  const token = view.parsed.tokens.find(({ kind, from, to }) => kind === 'string' && from < offset && offset <= to);
  if (token === undefined) return undefined;
  const isClosed = token.text.length > 1 && token.text.endsWith('"');
  if (isClosed && offset === token.to) return undefined;
  if (statementOnLine(view, token.from)?.fact?.keyword !== 'use') return undefined;
  return { from: token.from + 1, to: isClosed ? token.to - 1 : token.to };
}

/** The other specs of the folder, as a `use` writes them, the nearest first. */
export function useCompletion(
  view: View,
  place: { readonly from: number; readonly to: number },
  files: readonly WorkspaceFile[],
): CompletionItem[] {
  const range = view.lines.rangeOf(place);
  const own = decoded(view.uri);
  const root = own.endsWith(view.file) ? own.slice(0, -view.file.length) : undefined;
  if (root === undefined) return [];
  return files
    .map(({ uri, text }) => ({ uri: decoded(uri), text }))
    .filter(({ uri }) => uri !== own && uri.startsWith(root) && uri.endsWith('.booth'))
    .map(({ uri, text }) => ({ path: relativePath(view.file, uri.slice(root.length)), text }))
    .sort((a, b) => distance(a.path) - distance(b.path) || (a.path < b.path ? -1 : 1))
    .map(({ path, text }, at) => ({
      label: path,
      kind: CompletionItemKind.File,
      sortText: String(at).padStart(4, '0'),
      documentation: text.split(/\r?\n/).slice(0, 12).join('\n'),
      textEdit: { range, newText: path },
    }));
}

/** Folders up count more than folders down: what belongs to a spec mostly lies beside or below it. */
const distance = (path: string): number => path.split('/').length + (path.match(/\.\.\//g)?.length ?? 0);
