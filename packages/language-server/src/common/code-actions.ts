import { type Problem, type Severities, withSeverities } from '@boothwright/language';
import { type CodeAction, type CodeActionContext, CodeActionKind, type Range } from 'vscode-languageserver';
import type { Candidate } from './code-actions/candidate.js';
import { extractLet } from './code-actions/extract-let.js';
import { inlineLet } from './code-actions/inline-let.js';
import { quickFixes } from './code-actions/quick-fixes.js';
import type { TextChange } from './code-actions/text-change.js';
import { unusedAndUnsourced } from './code-actions/unused-and-unsourced.js';
import { problemDiagnostic } from './diagnostics.js';
import type { View } from './view.js';

/** Asked about a whole text, an editor gets the ways to mend its first problems. */
const mostProblems = 20;

/** Mends everything that has one sensible mend. */
export const fixAllKind = `${CodeActionKind.SourceFixAll}.boothwright`;

/** The kinds of actions there are. */
export const offeredKinds: string[] = [
  CodeActionKind.QuickFix,
  CodeActionKind.RefactorExtract,
  CodeActionKind.RefactorInline,
  CodeActionKind.RefactorRewrite,
  fixAllKind,
];

/**
 * What can be done at a place at once: ways to mend its problems, and to write the same in another way. A problem that
 * the settings leave out is not mended either.
 */
export function textActions(
  view: View,
  range: Range,
  { only }: Pick<CodeActionContext, 'only'>,
  severities: Severities = {},
): CodeAction[] {
  const from = view.lines.offsetAt(range.start);
  const to = view.lines.offsetAt(range.end);
  const found: CodeAction[] = [];
  if (isWanted(CodeActionKind.QuickFix, only)) {
    for (const problem of problemsAt(view, from, to, severities)) {
      for (const { candidate, preferred } of quickFixes(view, problem)) {
        found.push({
          ...action(view, CodeActionKind.QuickFix, candidate),
          diagnostics: [problemDiagnostic(view, problem)],
          ...(preferred ? { isPreferred: true } : {}),
        });
      }
    }
    found.push(...unusedAndUnsourced(view, from).map((each) => action(view, CodeActionKind.QuickFix, each)));
  }
  if (isWanted(CodeActionKind.RefactorExtract, only)) {
    found.push(...extractLet(view, from, to).map((each) => action(view, CodeActionKind.RefactorExtract, each)));
  }
  if (isWanted(CodeActionKind.RefactorInline, only)) {
    found.push(...inlineLet(view, from).map((each) => action(view, CodeActionKind.RefactorInline, each)));
  }
  return found;
}

/** True for a kind that was asked for, by itself or by one above it; without a wish everything is wanted. */
export function isWanted(kind: string, only: readonly string[] | undefined): boolean {
  return only === undefined || only.some((wanted) => wanted === '' || kind === wanted || kind.startsWith(`${wanted}.`));
}

export function editOf(view: View, changes: readonly TextChange[]): NonNullable<CodeAction['edit']> {
  const edits = changes.map((change) => ({ range: view.lines.rangeOf(change), newText: change.text }));
  return { changes: { [view.uri]: edits } };
}

function action(view: View, kind: string, { title, changes }: Candidate): CodeAction {
  return { title, kind, edit: editOf(view, changes) };
}

function problemsAt(view: View, from: number, to: number, severities: Severities): readonly Problem[] {
  return withSeverities(view.checked.problems, severities)
    .filter(({ range }) => range.file === view.file && range.from <= to && from <= range.to)
    .slice(0, mostProblems);
}
