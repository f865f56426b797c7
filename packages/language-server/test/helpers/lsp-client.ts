import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  createMessageConnection,
  type InitializeResult,
  type MessageConnection,
  type PublishDiagnosticsParams,
  type Range,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node.js';

const packageFolder = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

export interface LspClient {
  readonly connection: MessageConnection;
  readonly capabilities: InitializeResult['capabilities'];
  readonly server: ChildProcess;
  /** What the server wrote to the editor's log. */
  readonly log: readonly string[];
  uri(name: string): string;
  open(name: string, text: string): void;
  /** Sends the whole text anew. */
  change(name: string, text: string): void;
  /** Types over a stretch, as an editor does. */
  edit(name: string, range: Range, text: string): void;
  /** The next report about a document that is as wished. */
  diagnostics(name: string, wished?: (report: PublishDiagnosticsParams) => boolean): Promise<PublishDiagnosticsParams>;
  request<T>(method: string, params: unknown): Promise<T>;
  /** Ends the server as the protocol orders; answers its exit code. */
  shutdown(): Promise<number | null>;
}

export interface BuiltServer {
  /** The script of a process. */
  readonly process: string;
  /** The script of a web worker. */
  readonly worker: string;
  remove(): void;
}

/**
 * Bundles the server as it is handed out, into a folder of the test's own, since tests run at the same time.
 */
export function buildServer(): BuiltServer {
  const folder = mkdtempSync(path.join(tmpdir(), 'booth-server-'));
  execFileSync(process.execPath, ['esbuild.mjs', `--outdir=${folder}`], {
    cwd: packageFolder,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  return {
    process: path.join(folder, 'server.cjs'),
    worker: path.join(folder, 'server.worker.js'),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Starts a built server in a process of its own and speaks with it over its standard streams. */
export async function startClient(server: string, folder: string, initializationOptions = {}): Promise<LspClient> {
  const child = spawn(process.execPath, [server, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const log: string[] = [];
  const reports: PublishDiagnosticsParams[] = [];
  const waiting = new Set<() => void>();
  const uri = (name: string): string => `${pathToFileURL(folder)}/${name}`;
  const versions = new Map<string, number>();

  const sendChange = (name: string, change: { range?: Range; text: string }): void => {
    const version = (versions.get(name) ?? 0) + 1;
    versions.set(name, version);
    connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: uri(name), version },
      contentChanges: [change],
    });
  };

  connection.onNotification('window/logMessage', ({ message }: { message: string }) => log.push(message));
  connection.onNotification('textDocument/publishDiagnostics', (report: PublishDiagnosticsParams) => {
    reports.push(report);
    for (const look of waiting) look();
  });
  connection.listen();
  const { capabilities } = await connection.sendRequest<InitializeResult>('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: [{ uri: String(pathToFileURL(folder)), name: 'booths' }],
    capabilities: {},
    initializationOptions,
  });
  connection.sendNotification('initialized', {});

  return {
    connection,
    capabilities,
    server: child,
    log,
    uri,
    open(name, text) {
      versions.set(name, 1);
      connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri: uri(name), languageId: 'booth', version: 1, text },
      });
    },
    change: (name, text) => sendChange(name, { text }),
    edit: (name, range, text) => sendChange(name, { range, text }),
    diagnostics(name, wished = () => true) {
      const found = (): PublishDiagnosticsParams | undefined =>
        reports.findLast(
          (report) => report.uri === uri(name) && (report.version ?? 0) === versions.get(name) && wished(report),
        );
      return new Promise((resolve, reject) => {
        const late = setTimeout(() => {
          waiting.delete(look);
          reject(new Error(`No such report came; the last was ${JSON.stringify(reports.at(-1))?.slice(0, 800)}`));
        }, 10_000);
        const look = (): void => {
          const report = found();
          if (report === undefined) return;
          clearTimeout(late);
          waiting.delete(look);
          resolve(report);
        };
        waiting.add(look);
        look();
      });
    },
    request: (method, params) => connection.sendRequest(method, params),
    async shutdown() {
      await connection.sendRequest('shutdown');
      const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
      await connection.sendNotification('exit');
      return ended;
    },
  };
}
