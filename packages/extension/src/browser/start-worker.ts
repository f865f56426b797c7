import * as vscode from 'vscode';

/** What a web worker has of a browser, as far as it is used; the compiler knows the globals of Node only. */
declare const Worker: new (address: string) => Worker;
declare const Blob: new (parts: readonly Uint8Array[], options: { type: string }) => object;
declare const URL: { createObjectURL(blob: object): string };

export interface Worker {
  postMessage(message: unknown): void;
  onmessage: unknown;
}

/**
 * Starts a script of the extension in a worker. An extension that a remote machine serves has no address from which a
 * worker may start, so its script is read first and started from memory.
 */
export async function startWorker(script: vscode.Uri): Promise<Worker> {
  if (/^https?$/.test(script.scheme)) return new Worker(script.toString(true));
  const text = await vscode.workspace.fs.readFile(script);
  return new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })));
}
