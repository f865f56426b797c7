import * as vscode from 'vscode';

/** Opens a file of the workspace in an editor. */
export async function open(name: string): Promise<{ document: vscode.TextDocument; editor: vscode.TextEditor }> {
  const folder = vscode.workspace.workspaceFolders?.[0];
  if (folder === undefined) throw new Error('No folder is open');
  const document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder.uri, name));
  return { document, editor: await vscode.window.showTextDocument(document) };
}

/** The place behind the first occurrence of a text, moved by some characters. */
export function placeAfter(document: vscode.TextDocument, text: string, by = 0): vscode.Position {
  const at = document.getText().indexOf(text);
  if (at < 0) throw new Error(`\`${text}\` does not stand in ${document.fileName}`);
  return document.positionAt(at + text.length + by);
}

/** Types over the first occurrence of a text. */
export async function typeOver(editor: vscode.TextEditor, text: string, by: string): Promise<void> {
  const { document } = editor;
  const range = new vscode.Range(placeAfter(document, text, -text.length), placeAfter(document, text));
  if (!(await editor.edit((edit) => edit.replace(range, by)))) throw new Error('The editor took no edit');
}

/** The identifier of a problem, which leads to a page. */
export function idOf({ code }: vscode.Diagnostic): unknown {
  return typeof code === 'object' ? code.value : code;
}

/** Asks again until the answer is as wished, for at most a minute, since a machine may be slow; then says what the last answer was. */
export async function until<T>(ask: () => T | Thenable<T>, wished: (answer: T) => boolean): Promise<T> {
  const end = Date.now() + 60_000;
  for (;;) {
    const answer = await ask();
    if (wished(answer)) return answer;
    if (Date.now() > end)
      throw new Error(`Waited in vain; the last answer was ${JSON.stringify(answer)?.slice(0, 500)}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
