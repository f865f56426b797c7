import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Beyond these a folder is not searched; a spec uses files near it. */
const mostFolders = 500;
const mostFiles = 1000;
const longestFile = 10_000_000;

/**
 * Hands the server the specs of folders that it cannot read itself: all of them in a browser, those of a virtual
 * workspace elsewhere. What changes later is sent again.
 */
export async function sendFiles(
  client: BaseLanguageClient,
  readsFolder: (folder: vscode.Uri) => boolean,
): Promise<vscode.Disposable> {
  const isSent = (uri: vscode.Uri): boolean => {
    const folder = vscode.workspace.getWorkspaceFolder(uri);
    return folder !== undefined && !readsFolder(folder.uri);
  };
  const send = async (uris: readonly vscode.Uri[]): Promise<void> => {
    const files = await Promise.all(
      uris.map(async (uri) => ({ uri: client.code2ProtocolConverter.asUri(uri), text: await textOf(uri) })),
    );
    await client.sendNotification('boothwright/files', { files });
    const changes = files.map(({ uri }) => ({ uri, type: 2 }));
    await client.sendNotification('workspace/didChangeWatchedFiles', { changes });
  };
  const sendFolders = async (folders: readonly vscode.WorkspaceFolder[]): Promise<void> => {
    for (const { uri } of folders) {
      if (readsFolder(uri)) continue;
      const found = await specsBelow(uri);
      if (found.length > 0) await send(found);
    }
  };

  await sendFolders(vscode.workspace.workspaceFolders ?? []);
  const watcher = vscode.workspace.createFileSystemWatcher('**/*.booth');
  const changed = (uri: vscode.Uri): void => {
    if (isSent(uri)) void send([uri]);
  };
  return vscode.Disposable.from(
    watcher,
    watcher.onDidCreate(changed),
    watcher.onDidChange(changed),
    watcher.onDidDelete(changed),
    vscode.workspace.onDidSaveTextDocument(({ uri, languageId }) => {
      if (languageId === 'booth') changed(uri);
    }),
    vscode.workspace.onDidChangeWorkspaceFolders(({ added }) => void sendFolders(added)),
  );
}

async function textOf(uri: vscode.Uri): Promise<string | null> {
  try {
    const { size } = await vscode.workspace.fs.stat(uri);
    if (size > longestFile) return null;
    return new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
  } catch {
    return null;
  }
}

/** A virtual folder may have no search of its own, so it is walked. */
async function specsBelow(folder: vscode.Uri): Promise<vscode.Uri[]> {
  const found: vscode.Uri[] = [];
  const open = [folder];
  for (let seen = 0; seen < mostFolders && found.length < mostFiles; seen++) {
    const next = open.shift();
    if (next === undefined) break;
    const entries = await vscode.workspace.fs.readDirectory(next).then(
      (listed) => listed,
      (): [string, vscode.FileType][] => [],
    );
    for (const [name, type] of entries) {
      if (type === vscode.FileType.Directory && !name.startsWith('.') && name !== 'node_modules')
        open.push(vscode.Uri.joinPath(next, name));
      if (type === vscode.FileType.File && name.endsWith('.booth')) found.push(vscode.Uri.joinPath(next, name));
    }
  }
  return found.slice(0, mostFiles);
}
