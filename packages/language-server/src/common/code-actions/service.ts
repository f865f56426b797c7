import type { ResultDocument } from '@boothwright/assessment';
import type { BoothSpec, Severities } from '@boothwright/language';
import type { Shown } from '@boothwright/presentation';
import {
  type CancellationToken,
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  CodeActionTriggerKind,
} from 'vscode-languageserver';
import { editOf, fixAllKind, isWanted, textActions } from '../code-actions.js';
import { soon } from '../soon.js';
import type { View } from '../view.js';
import { type DesignMemory, designFixes } from './design-fixes.js';
import { fixedText } from './fix-all.js';

export interface CodeActionServices {
  viewOf(uri: string): View | undefined;
  /** Settles when the numbers of the present text are there; never fails. */
  settle(uri: string): Promise<unknown>;
  assess(spec: BoothSpec): Promise<ResultDocument>;
  later(task: () => void): () => void;
  /** True when the editor asks for the edit of an action once it is chosen. */
  resolvesEdits(): boolean;
  severities(): Severities;
  shown(): Shown;
}

/** How long design fixes are worked out, ms: for the mark at a line, and when the writer asks. */
const patience = { automatic: 800, invoked: 4000 } as const;

export interface CodeActions {
  offer(params: CodeActionParams, token: CancellationToken): Promise<CodeAction[]>;
  resolve(action: CodeAction): CodeAction;
}

/** Answers what can be done at a place: at once what needs the text only, then what has to be worked out. */
export function createCodeActions(services: CodeActionServices): CodeActions {
  // One text at a time: a writer asks about the one that the cursor is in.
  let memory: DesignMemory & { readonly uri: string } = { uri: '', text: '', fixes: new Map() };
  const memoryOf = (uri: string, text: string): DesignMemory => {
    if (memory.uri !== uri || memory.text !== text) memory = { uri, text, fixes: new Map() };
    return memory;
  };

  const designs = async ({ textDocument: { uri }, range, context }: CodeActionParams, token: CancellationToken) => {
    const isAutomatic = context.triggerKind === CodeActionTriggerKind.Automatic;
    const end = Date.now() + (isAutomatic ? patience.automatic : patience.invoked);
    await soon(services.settle(uri));
    const view = services.viewOf(uri);
    if (view?.results === undefined || view.stale || view.pending || token.isCancellationRequested) return [];
    return designFixes(
      view,
      view.results,
      view.lines.offsetAt(range.start),
      view.lines.offsetAt(range.end),
      memoryOf(uri, view.text),
      {
        assess: services.assess,
        severities: services.severities(),
        shown: services.shown(),
        pause: () => new Promise((resolve) => services.later(resolve)),
        isWanted: () => !token.isCancellationRequested && Date.now() < end && services.viewOf(uri)?.text === view.text,
      },
    );
  };

  return {
    async offer(params, token) {
      const { textDocument, range, context } = params;
      const view = services.viewOf(textDocument.uri);
      if (view === undefined) return [];
      const found = textActions(view, range, context, services.severities());
      if (isWanted(fixAllKind, context.only) && canFixAll(view)) found.push(fixAll(view, services.resolvesEdits()));
      const wantsDesigns = [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite].some((kind) =>
        isWanted(kind, context.only),
      );
      if (!wantsDesigns) return found;
      const computed = await designs(params, token);
      return [...found, ...computed.filter(({ kind }) => isWanted(kind!, context.only))];
    },
    resolve(action) {
      const { uri } = (action.data ?? {}) as { uri?: unknown };
      const view = typeof uri === 'string' ? services.viewOf(uri) : undefined;
      return action.kind === fixAllKind && view !== undefined ? { ...action, ...fixAllEdit(view) } : action;
    },
  };
}

/** Only errors are mended unseen. */
function canFixAll({ checked, file }: View): boolean {
  return checked.problems.some(({ severity, range }) => severity === 'error' && range.file === file);
}

/** Trying all mends takes a while, so an editor that can wait for the edit gets it when it is wanted. */
function fixAll(view: View, later: boolean): CodeAction {
  const action: CodeAction = { title: 'Mend what has one sensible mend', kind: fixAllKind };
  return later ? { ...action, data: { uri: view.uri } } : { ...action, ...fixAllEdit(view) };
}

function fixAllEdit(view: View): Pick<CodeAction, 'edit'> {
  const text = fixedText(view);
  return { edit: editOf(view, text === view.text ? [] : [{ ...between(view.text, text) }]) };
}

/** The stretch in which two texts differ. */
function between(old: string, now: string) {
  let from = 0;
  while (from < old.length && from < now.length && old[from] === now[from]) from++;
  let tail = 0;
  while (tail < Math.min(old.length, now.length) - from && old.at(-1 - tail) === now.at(-1 - tail)) tail++;
  return { from, to: old.length - tail, text: now.slice(from, now.length - tail) };
}
