import * as vscode from 'vscode';

interface Example {
  readonly name: string;
  readonly shows: string;
  /** The spec that is opened first. */
  readonly main: string;
  readonly files: readonly string[];
}

/**
 * Copies an example into a folder that the user chooses and opens the copy there. Where no folder can be written, the
 * spec is opened as a new document. `into` names the folder for whoever calls the command; then the copy is not opened
 * as a workspace. Answers the address of the copied spec.
 */
export async function openExample(
  extension: vscode.Uri,
  named: unknown,
  into: unknown,
): Promise<vscode.Uri | undefined> {
  const shipped = vscode.Uri.joinPath(extension, 'dist', 'examples');
  const examples = JSON.parse(await read(vscode.Uri.joinPath(shipped, 'index.json'))) as readonly Example[];
  const example = examples.find(({ name }) => name === named) ?? (await choose(examples));
  if (example === undefined) return undefined;
  const source = vscode.Uri.joinPath(shipped, example.name);
  const target = into instanceof vscode.Uri ? into : await chooseFolder();
  if (target === 'none') return openAsNew(vscode.Uri.joinPath(source, example.main));
  if (target === undefined) return undefined;

  const folder = await freeName(target, example.name);
  for (const file of example.files) {
    const content = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(source, file));
    await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, file), content);
  }
  const spec = vscode.Uri.joinPath(folder, example.main);
  if (into instanceof vscode.Uri) await vscode.window.showTextDocument(spec, { preview: false });
  else await vscode.commands.executeCommand('vscode.openFolder', folder, { forceNewWindow: hasWork() });
  return spec;
}

async function choose(examples: readonly Example[]): Promise<Example | undefined> {
  const items = examples.map((example) => ({ label: example.name, detail: example.shows, example }));
  const picked = await vscode.window.showQuickPick(items, { title: 'Open a copy of an example', matchOnDetail: true });
  return picked?.example;
}

/** `none` where an editor has no folder to write into, as in a browser without one. */
async function chooseFolder(): Promise<vscode.Uri | 'none' | undefined> {
  if (vscode.env.uiKind === vscode.UIKind.Web && vscode.env.remoteName === undefined) return 'none';
  const chosen = await vscode.window.showOpenDialog({
    title: 'Where to put the copy',
    openLabel: 'Copy Example Here',
    canSelectFiles: false,
    canSelectFolders: true,
    canSelectMany: false,
  });
  return chosen?.[0];
}

/** Nothing that is there is written over: `tram-alcove`, `tram-alcove-2` and so on. */
async function freeName(folder: vscode.Uri, name: string): Promise<vscode.Uri> {
  for (let number = 1; ; number++) {
    const free = vscode.Uri.joinPath(folder, number === 1 ? name : `${name}-${number}`);
    const taken = await vscode.workspace.fs.stat(free).then(
      () => true,
      () => false,
    );
    if (!taken) return free;
  }
}

async function openAsNew(file: vscode.Uri): Promise<vscode.Uri> {
  const document = await vscode.workspace.openTextDocument({ language: 'booth', content: await read(file) });
  await vscode.window.showTextDocument(document, { preview: false });
  return document.uri;
}

const hasWork = (): boolean => (vscode.workspace.workspaceFolders ?? []).length > 0;

async function read(file: vscode.Uri): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
}
