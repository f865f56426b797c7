import { expect } from 'vitest';
import type { Diagnostic, TextEdit } from 'vscode-languageserver';
import { completion } from '../../src/common/completion.js';
import { definition } from '../../src/common/definition.js';
import { diagnostics } from '../../src/common/diagnostics.js';
import { formatting } from '../../src/common/formatting.js';
import { hover } from '../../src/common/hover.js';
import { inlayHints } from '../../src/common/inlay-hints.js';
import { references } from '../../src/common/references.js';
import { defaultSettings, type HintKind } from '../../src/common/settings.js';
import type { View } from '../../src/common/view.js';
import { markedText } from './marked-text.js';
import { viewOf } from './open-specs.js';

/** Other files of the folder, by name. */
export type OtherFiles = Readonly<Record<string, string>>;

function opened(marked: string, others: OtherFiles = {}) {
  const { text, cursors, ranges } = markedText(marked);
  const view = viewOf(text, others);
  return { view, cursors, ranges, cursor: view.lines.positionAt(cursors[0] ?? 0) };
}

/** The hover's Markdown at the cursor; empty when there is none. */
export function hoverAt(marked: string, others?: OtherFiles, pictures = true): string {
  const { view, cursor } = opened(marked, others);
  const contents = hover(view, cursor, { pictures })?.contents;
  return contents !== undefined && typeof contents === 'object' && 'value' in contents ? contents.value : '';
}

/** What the hover at the cursor `<|>` says, piece by piece. */
export function expectHover(marked: string, pieces: readonly (string | RegExp)[], others?: OtherFiles): void {
  const text = hoverAt(marked, others);
  for (const piece of pieces) {
    if (typeof piece === 'string') expect(text).toContain(piece);
    else expect(text).toMatch(piece);
  }
}

/** The labels offered at the cursor, in the order in which an editor shows them. */
export function completionAt(marked: string, others?: OtherFiles): string[] {
  const { view, cursor } = opened(marked, others);
  return completion(view, cursor)
    .sort((a, b) => ((a.sortText ?? a.label) < (b.sortText ?? b.label) ? -1 : 1))
    .map(({ label }) => label);
}

export function expectCompletion(
  marked: string,
  { has = [], lacks = [] }: { has?: readonly string[]; lacks?: readonly string[] },
  others?: OtherFiles,
): void {
  const labels = completionAt(marked, others);
  for (const label of has) expect(labels).toContain(label);
  for (const label of lacks) expect(labels).not.toContain(label);
}

/** From the cursor `<|>` the name leads to the range `<|name|>`, or to a text in another file. */
export function expectDefinition(
  marked: string,
  elsewhere?: { readonly uri: string; readonly line: number },
  others?: OtherFiles,
): void {
  const { view, cursor, ranges } = opened(marked, others);
  const found = definition(view, cursor).map(({ targetUri, targetSelectionRange }) => ({
    uri: targetUri,
    range: targetSelectionRange,
  }));
  if (elsewhere === undefined) {
    expect(found).toEqual(ranges.map((range) => ({ uri: view.uri, range: view.lines.rangeOf(range) })));
    return;
  }
  expect(found.map(({ uri, range }) => ({ uri, line: range.start.line }))).toEqual([elsewhere]);
}

/** The name at the cursor `<|>` stands at all ranges `<|name|>` and nowhere else. */
export function expectReferences(marked: string, others?: OtherFiles): void {
  const { view, cursor, ranges } = opened(marked, others);
  const found = references(view, cursor, true).map(({ range }) => view.lines.offsetAt(range.start));
  expect(found.sort((a, b) => a - b)).toEqual(ranges.map(({ from }) => from));
}

/** Problems and findings of a text, as `code` on `the text they mark`. */
export function diagnosticsOf(text: string, others?: OtherFiles): { diagnostic: Diagnostic; marked: string }[] {
  const view = viewOf(text, others);
  return diagnosed(view);
}

export function diagnosed(view: View): { diagnostic: Diagnostic; marked: string }[] {
  return diagnostics(view).map((diagnostic) => ({
    diagnostic,
    marked: view.text.slice(view.lines.offsetAt(diagnostic.range.start), view.lines.offsetAt(diagnostic.range.end)),
  }));
}

/** The hints of a text, each with the line on which it stands. */
export function hintsOf(view: View, kinds: readonly HintKind[]): { line: string; hint: string }[] {
  const all = Object.keys(defaultSettings.inlayHints) as HintKind[];
  const settings = {
    ...defaultSettings,
    inlayHints: Object.fromEntries(all.map((kind) => [kind, kinds.includes(kind)])) as Record<HintKind, boolean>,
  };
  const whole = view.lines.rangeOf({ from: 0, to: view.text.length });
  return inlayHints(view, whole, settings).map(({ position, label }) => ({
    line: view.text.split('\n')[position.line]!,
    hint: String(label),
  }));
}

/** The text after formatting. */
export function formatted(text: string): string {
  const view = viewOf(text);
  return edited(view, formatting(view));
}

/** The text of a view with edits in it, none of which may overlap another. */
export function edited(view: View, edits: readonly TextEdit[]): string {
  const placed = edits
    .map(({ range, newText }) => ({
      from: view.lines.offsetAt(range.start),
      to: view.lines.offsetAt(range.end),
      newText,
    }))
    .sort((a, b) => a.from - b.from);
  let result = '';
  let at = 0;
  for (const { from, to, newText } of placed) {
    if (from < at) throw new Error('two edits overlap');
    result += view.text.slice(at, from) + newText;
    at = to;
  }
  return result + view.text.slice(at);
}
