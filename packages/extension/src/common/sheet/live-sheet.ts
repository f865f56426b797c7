import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { sheetPage } from './sheet-page.js';
import type { FromPage, Kept, Sheet, SheetPlace, ToPage } from './sheet-protocol.js';

export interface LiveSheet extends vscode.Disposable {
  /** Opens the sheet beside the text, at a place of it when one is given. */
  open(uri?: unknown, position?: unknown): Promise<void>;
}

const viewType = 'boothwright.sheet';

interface Target {
  readonly uri: vscode.Uri;
  readonly position: vscode.Position;
}

/** One panel that follows the cursor through all specs. */
export function liveSheet(context: vscode.ExtensionContext, client: BaseLanguageClient): LiveSheet {
  let panel: vscode.WebviewPanel | undefined;
  let target: Target | undefined;
  let width = 600;
  let shut: readonly string[] = [];
  /** Versions of the folds that the page shows. */
  let known: Record<string, string> = {};
  let isReady = false;
  let isAsking = false;
  let isOutdated = false;

  const tell = (message: ToPage): void => {
    void panel?.webview.postMessage(message);
  };
  const cursorOf = ({ uri, position }: Target) => ({
    uri: client.code2ProtocolConverter.asUri(uri),
    line: position.line,
  });

  /** One question at a time: whatever happens meanwhile is asked about once, afterwards. */
  const ask = async (): Promise<void> => {
    if (panel?.visible !== true || !isReady) return;
    if (isAsking) {
      isOutdated = true;
      return;
    }
    if (target === undefined)
      return tell({ kind: 'nothing', why: 'Open a .booth file: what it comes to is shown here.' });
    if (!client.isRunning()) return tell({ kind: 'nothing', why: 'The language server is starting.' });
    isAsking = true;
    isOutdated = false;
    const asked = target;
    const sheet = await client
      .sendRequest<Sheet | null>('boothwright/sheet', {
        uri: cursorOf(asked).uri,
        position: client.code2ProtocolConverter.asPosition(asked.position),
        width,
        shut,
        known,
      })
      .catch(() => null);
    isAsking = false;
    if (asked.uri.toString() === target?.uri.toString()) {
      if (sheet !== null) show(sheet, target);
      else
        tell({
          kind: 'nothing',
          why: 'This text cannot be shown: it is too long, or the language server failed; the output panel says why.',
        });
    }
    if (isOutdated) await ask();
  };

  const show = (sheet: Sheet, { uri, position }: Target): void => {
    for (const { id, version, html } of sheet.folds ?? []) if (html !== undefined) known[id] = version;
    if (panel !== undefined) panel.title = sheet.booth === null ? 'Live sheet' : `Live sheet: ${sheet.booth}`;
    const file = vscode.workspace.asRelativePath(uri);
    tell({ kind: 'sheet', sheet, file, cursor: cursorOf({ uri, position }) });
  };

  const follow = (editor: vscode.TextEditor | undefined): void => {
    if (editor?.document.languageId !== 'booth') return;
    const { uri } = editor.document;
    const position = editor.selection.active;
    const isOther = uri.toString() !== target?.uri.toString();
    const isOtherLine = position.line !== target?.position.line;
    target = { uri, position };
    if (isOther) known = {};
    if (!isOther && isOtherLine) tell({ kind: 'cursor', cursor: cursorOf(target) });
    if (isOther || isOtherLine) void ask();
  };

  const go = async (place: SheetPlace): Promise<void> => {
    const uri = client.protocol2CodeConverter.asUri(place.uri);
    const shown = vscode.window.visibleTextEditors.find((editor) => editor.document.uri.toString() === uri.toString());
    const range = new vscode.Range(place.line, 0, place.line, 0);
    const document = shown?.document ?? (await vscode.workspace.openTextDocument(uri));
    const editor = await vscode.window.showTextDocument(document, {
      viewColumn: shown?.viewColumn ?? vscode.ViewColumn.One,
      preserveFocus: false,
    });
    const line = editor.document.lineAt(Math.min(place.line, editor.document.lineCount - 1));
    const at = new vscode.Position(line.lineNumber, line.firstNonWhitespaceCharacterIndex);
    editor.selection = new vscode.Selection(at, at);
    editor.revealRange(range, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
  };

  const hear = (message: FromPage): void => {
    switch (message.kind) {
      case 'ready':
        isReady = true;
        known = {};
        ({ width, shut } = message);
        void ask();
        return;
      case 'view':
        ({ width, shut } = message);
        void ask();
        return;
      case 'go':
        void go(message.place).then(undefined, (error) => vscode.window.showErrorMessage(String(error)));
        return;
      case 'copy':
        void vscode.env.clipboard.writeText(message.text);
    }
  };

  const take = (taken: vscode.WebviewPanel): void => {
    panel?.dispose();
    panel = taken;
    isReady = false;
    taken.iconPath = {
      light: vscode.Uri.joinPath(context.extensionUri, 'icons', 'booth-light.svg'),
      dark: vscode.Uri.joinPath(context.extensionUri, 'icons', 'booth-dark.svg'),
    };
    taken.webview.options = {
      enableScripts: true,
      localResourceRoots: [vscode.Uri.joinPath(context.extensionUri, 'dist')],
    };
    taken.webview.onDidReceiveMessage(hear);
    taken.onDidChangeViewState(() => void ask());
    taken.onDidDispose(() => {
      if (panel !== taken) return;
      panel = undefined;
      isReady = false;
    });
    taken.webview.html = sheetPage(taken.webview, context.extensionUri);
  };

  const listening = vscode.Disposable.from(
    vscode.window.onDidChangeActiveTextEditor(follow),
    vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor === vscode.window.activeTextEditor) follow(textEditor);
    }),
    client.onNotification('boothwright/sheetChanged', ({ uri }: { uri: string }) => {
      if (target !== undefined && uri === cursorOf(target).uri) void ask();
    }),
    client.onDidChangeState(() => void ask()),
    vscode.window.registerWebviewPanelSerializer(viewType, {
      async deserializeWebviewPanel(restored: vscode.WebviewPanel, kept: Partial<Kept> | undefined) {
        if (target === undefined && typeof kept?.uri === 'string') {
          target = {
            uri: client.protocol2CodeConverter.asUri(kept.uri),
            position: new vscode.Position(kept.line ?? 0, 0),
          };
        }
        take(restored);
      },
    }),
  );
  follow(vscode.window.activeTextEditor);

  return {
    async open(uri, position) {
      if (typeof uri === 'string') {
        const line = (position as { line?: unknown } | undefined)?.line;
        await go({ uri, line: typeof line === 'number' ? line : 0, endLine: 0 });
      }
      follow(vscode.window.activeTextEditor);
      if (panel !== undefined) return panel.reveal(undefined, true);
      const place = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
      take(vscode.window.createWebviewPanel(viewType, 'Live sheet', place, { enableScripts: true }));
    },
    dispose() {
      listening.dispose();
      panel?.dispose();
    },
  };
}
