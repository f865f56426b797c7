import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { Headline } from './protocol.js';
import { statusDetails, statusText } from './status-text.js';

export interface StatusBar extends vscode.Disposable {
  refresh(): void;
  text(): string | undefined;
}

/** A cursor that runs through the text asks once when it rests. */
const restMs = 80;

/** Shows the headline of the booth at the cursor, in any `.booth` file. */
export function statusBar(client: BaseLanguageClient): StatusBar {
  const item = vscode.window.createStatusBarItem('boothwright.booth', vscode.StatusBarAlignment.Left, 50);
  item.name = 'Booth at the cursor';
  item.command = 'workbench.actions.view.problems';
  let shown: string | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;

  const hide = (): void => {
    shown = undefined;
    item.hide();
  };
  const ask = async (): Promise<void> => {
    const editor = vscode.window.activeTextEditor;
    const wanted = vscode.workspace.getConfiguration('boothwright').get('statusBar', true);
    if (!wanted || editor?.document.languageId !== 'booth' || !client.isRunning()) return hide();
    asked += 1;
    const turn = asked;
    const headline = await client
      .sendRequest<Headline | null>('boothwright/headline', {
        uri: client.code2ProtocolConverter.asUri(editor.document.uri),
        position: client.code2ProtocolConverter.asPosition(editor.selection.active),
      })
      .catch(() => null);
    // An answer that comes after a later question is of no use.
    if (turn !== asked) return;
    if (headline === null) return hide();
    shown = statusText(headline);
    item.text = shown;
    item.tooltip = statusDetails(headline).join('\n');
    item.accessibilityInformation = { label: `${headline.booth}, ${headline.state}: ${headline.text}` };
    item.show();
  };
  const refresh = (): void => {
    if (waiting !== undefined) clearTimeout(waiting);
    waiting = setTimeout(() => void ask(), restMs);
  };

  const listening = vscode.Disposable.from(
    item,
    vscode.window.onDidChangeActiveTextEditor(refresh),
    vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor.document.languageId === 'booth') refresh();
    }),
    // Numbers that have come are told together with their problems.
    vscode.languages.onDidChangeDiagnostics(refresh),
    vscode.workspace.onDidChangeConfiguration((event) => {
      if (event.affectsConfiguration('boothwright')) refresh();
    }),
  );
  return {
    refresh,
    text: () => shown,
    dispose() {
      if (waiting !== undefined) clearTimeout(waiting);
      listening.dispose();
    },
  };
}
