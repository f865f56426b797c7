import * as vscode from 'vscode';

const type = 'boothwright';
const mostFiles = 50;

/** What a task in `tasks.json` may say; the manifest tells the same. */
interface Definition extends vscode.TaskDefinition {
  readonly file: string;
  readonly variant?: string;
  readonly full?: boolean;
}

/** Offers a task that checks each spec of the workspace with the command line, and the command that runs one. */
export function provideTasks(extension: vscode.Uri): vscode.Disposable {
  const provider = vscode.tasks.registerTaskProvider(type, {
    async provideTasks() {
      const files = await vscode.workspace.findFiles('**/*.booth', '**/node_modules/**', mostFiles);
      return files.flatMap((uri) => taskOf(extension, uri) ?? []);
    },
    resolveTask(task) {
      const definition = task.definition as Partial<Definition>;
      if (typeof definition.file !== 'string') return undefined;
      const folder = typeof task.scope === 'object' ? task.scope : vscode.workspace.workspaceFolders?.[0];
      return folder && checkTask(extension, folder, definition as Definition);
    },
  });
  const command = vscode.commands.registerCommand('boothwright.checkFile', async () => {
    const document = vscode.window.activeTextEditor?.document;
    const task = document?.languageId === 'booth' ? taskOf(extension, document.uri) : undefined;
    if (document === undefined || task === undefined) {
      void vscode.window.showInformationMessage('Open a .booth file of a folder on disk to check it.');
      return;
    }
    await document.save();
    await vscode.tasks.executeTask(task);
  });
  return vscode.Disposable.from(provider, command);
}

function taskOf(extension: vscode.Uri, uri: vscode.Uri): vscode.Task | undefined {
  const folder = vscode.workspace.getWorkspaceFolder(uri);
  if (folder === undefined || uri.scheme !== 'file') return undefined;
  return checkTask(extension, folder, { type, file: vscode.workspace.asRelativePath(uri, false) });
}

function checkTask(extension: vscode.Uri, folder: vscode.WorkspaceFolder, definition: Definition): vscode.Task {
  const { file, variant, full } = definition;
  const words = ['check', ...(variant ? ['--variant', variant] : []), ...(full ? ['--full'] : []), '--', file];
  const name = `check ${file}${variant ? ` (${variant})` : ''}`;
  const task = new vscode.Task(definition, folder, name, type, execution(extension, folder, words), '$boothwright');
  task.group = vscode.TaskGroup.Test;
  task.detail = 'Predict what the booth does and hold it against its requirements';
  return task;
}

/** The command line that ships with the extension, on the editor's own Node; or the one that the settings name. */
function execution(extension: vscode.Uri, folder: vscode.WorkspaceFolder, words: string[]): vscode.ProcessExecution {
  const cwd = folder.uri.fsPath;
  const named = vscode.workspace.getConfiguration('boothwright', folder).get('commandLine', '');
  if (named !== '') return new vscode.ProcessExecution(named, words, { cwd });
  const shipped = vscode.Uri.joinPath(extension, 'dist', 'boothwright.mjs').fsPath;
  // A desktop editor's executable is Node only when it is told so.
  const env = { ELECTRON_RUN_AS_NODE: '1' };
  return new vscode.ProcessExecution(process.execPath, [shipped, ...words], { cwd, env });
}
