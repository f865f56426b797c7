import * as vscode from 'vscode';

/** Scheme of the read-only pages that ship with the extension, one for each kind of problem; the manifest names the same. */
export const pageScheme = 'booth-docs';
/** What the server puts before the path of a page. */
export const pagesAddress = `${pageScheme}:/`;

/** The pages that diagnostics lead to. They are packed, so that they are there without a network. */
export function providePages(extension: vscode.Uri): vscode.TextDocumentContentProvider {
  const packed = vscode.Uri.joinPath(extension, 'dist', 'pages.json');
  let pages: Promise<Record<string, string>> | undefined;
  const read = async (): Promise<Record<string, string>> =>
    JSON.parse(new TextDecoder().decode(await vscode.workspace.fs.readFile(packed)));
  return {
    async provideTextDocumentContent({ path }) {
      pages ??= read();
      const all = await pages.catch((error) => {
        pages = undefined;
        throw error;
      });
      const page = path.replace(/^\//, '');
      return Object.hasOwn(all, page) ? all[page] : `There is no page \`${page}\`.`;
    },
  };
}

/** Opens the page of the problem at the cursor; of several that of the one which is told most narrowly. */
export async function explainProblem(): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  const found = editor === undefined ? [] : vscode.languages.getDiagnostics(editor.document.uri);
  const pages = found
    .filter(({ range }) => editor !== undefined && range.contains(editor.selection.active))
    .sort((a, b) => (a.range.contains(b.range) ? 1 : 0) - (b.range.contains(a.range) ? 1 : 0))
    .flatMap(({ code }) => (typeof code === 'object' && code.target.scheme === pageScheme ? [code.target] : []));
  if (pages[0] === undefined) {
    void vscode.window.showInformationMessage('There is no problem at the cursor of a booth spec.');
    return;
  }
  await vscode.commands.executeCommand('vscode.open', pages[0]);
}
