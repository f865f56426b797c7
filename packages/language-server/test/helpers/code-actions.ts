import type { CodeAction } from 'vscode-languageserver';
import { textActions } from '../../src/common/code-actions.js';
import type { View } from '../../src/common/view.js';
import { markedText } from './marked-text.js';
import { openSpecs } from './open-specs.js';

/** What an edit of an action makes of the text. */
export function applied(view: View, { edit }: CodeAction): string {
  const edits = edit?.changes?.[view.uri] ?? [];
  const places = edits
    .map(({ range, newText }) => ({
      from: view.lines.offsetAt(range.start),
      to: view.lines.offsetAt(range.end),
      newText,
    }))
    .sort((a, b) => b.from - a.from || b.to - a.to);
  let { text } = view;
  for (const { from, to, newText } of places) text = text.slice(0, from) + newText + text.slice(to);
  return text;
}

export interface OfferedAction {
  readonly action: CodeAction;
  readonly title: string;
  readonly preferred: boolean;
  /** The text once it is applied. */
  readonly after: string;
}

/** The actions at the cursor `<|>` or on the range `<|…|>` of a text, without its numbers. */
export function actionsAt(marked: string, only?: readonly string[]): OfferedAction[] {
  const { text, cursors, ranges } = markedText(marked);
  const view = openSpecs({ 'test.booth': text }).view('test.booth');
  const from = ranges[0]?.from ?? cursors[0] ?? 0;
  const range = view.lines.rangeOf({ from, to: ranges[0]?.to ?? from });
  return textActions(view, range, only === undefined ? {} : { only: [...only] }).map((action) => ({
    action,
    title: action.title,
    preferred: action.isPreferred === true,
    after: applied(view, action),
  }));
}

/** Errors and warnings of a text. */
export function problemsOf(text: string): string[] {
  return openSpecs({ 'test.booth': text })
    .view('test.booth')
    .checked.problems.filter(({ severity }) => severity !== 'hint')
    .map(({ id }) => id);
}
