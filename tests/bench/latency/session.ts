import { type ChildProcess, spawn } from 'node:child_process';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  createMessageConnection,
  type Diagnostic,
  type InitializeResult,
  type MessageConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
  TextDocumentSyncKind,
} from 'vscode-languageserver-protocol/node.js';

/** A server and how it is spoken to. */
export interface Contender {
  readonly name: string;
  /** What Node runs, with its arguments. */
  readonly command: readonly string[];
  readonly language: string;
  readonly extension: string;
  readonly initializationOptions?: unknown;
  /** What the editor answers when it is asked for settings, by section. */
  readonly settings?: Readonly<Record<string, unknown>>;
}

/** Longest that any one answer is waited for, ms. */
const longestWait = 60_000;

/** One run of a server with one open document, from its start to its end. */
export interface Session {
  /** From the start of the process to the first diagnostics of the document, ms. */
  readonly coldStart: number;
  readonly process: ChildProcess;
  readonly uri: string;
  request<T>(method: string, params: unknown): Promise<T>;
  /** Types over a stretch of a line. */
  type(line: number, from: number, to: number, text: string): void;
  /** The first diagnostics of the text as it is now that satisfy the condition. */
  diagnostics(satisfies: (found: readonly Diagnostic[]) => boolean): Promise<void>;
  /** The next time that the server says its hints are out of date. */
  nextRefresh(): Promise<void>;
  end(): Promise<void>;
}

export async function startSession(contender: Contender, folder: string, text: string): Promise<Session> {
  const started = performance.now();
  const child = spawn(process.execPath, contender.command, { cwd: folder, stdio: ['pipe', 'pipe', 'ignore'] });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  // What a server says after it was told to end concerns nobody.
  connection.onError(() => undefined);
  const file = path.join(folder, `document.${contender.extension}`);
  const uri = pathToFileURL(file).href;
  let version = 1;
  const reports = new Set<(report: PublishDiagnosticsParams) => void>();
  const refreshes = new Set<() => void>();
  listen(connection, contender, folder, { reports, refreshes, uri });

  const { capabilities } = await within(
    connection.sendRequest<InitializeResult>('initialize', initializeParams(contender, folder)),
    `${contender.name}: initialize`,
  );
  const isWhole = syncKind(capabilities) !== TextDocumentSyncKind.Incremental;
  const pulls = capabilities.diagnosticProvider !== undefined;
  connection.sendNotification('initialized', {});
  if (contender.settings !== undefined) {
    connection.sendNotification('workspace/didChangeConfiguration', { settings: contender.settings });
  }

  const pull = async (satisfies: (found: readonly Diagnostic[]) => boolean): Promise<void> => {
    const report = await connection.sendRequest<{ items?: Diagnostic[] }>('textDocument/diagnostic', {
      textDocument: { uri },
    });
    if (!satisfies(report.items ?? [])) throw new Error(`${contender.name}: the diagnostics are not as expected`);
  };
  const pushed = (satisfies: (found: readonly Diagnostic[]) => boolean): Promise<void> =>
    new Promise((resolve) => {
      const listener = (report: PublishDiagnosticsParams): void => {
        // Servers that tell no version are known by what they report.
        if ((report.version ?? version) < version || !satisfies(report.diagnostics)) return;
        reports.delete(listener);
        resolve();
      };
      reports.add(listener);
    });
  const diagnostics: Session['diagnostics'] = (satisfies) =>
    within((pulls ? pull : pushed)(satisfies), `${contender.name}: diagnostics`);

  const first = pulls ? undefined : diagnostics(() => true);
  connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: contender.language, version, text },
  });
  await (first ?? diagnostics(() => true));
  const coldStart = performance.now() - started;

  const current = text.split('\n');
  return {
    coldStart,
    process: child,
    uri,
    request: <T>(method: string, params: unknown) =>
      within(connection.sendRequest<T>(method, params), `${contender.name}: ${method}`),
    type(line, from, to, typed) {
      version++;
      const before = current[line]!;
      current[line] = before.slice(0, from) + typed + before.slice(to);
      const range = { start: { line, character: from }, end: { line, character: to } };
      const change = isWhole ? { text: current.join('\n') } : { range, text: typed };
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [change],
      });
    },
    diagnostics,
    nextRefresh: () =>
      within(
        new Promise<void>((resolve) => {
          const listener = (): void => {
            refreshes.delete(listener);
            resolve();
          };
          refreshes.add(listener);
        }),
        `${contender.name}: new numbers`,
      ),
    async end() {
      const ended = new Promise((resolve) => child.once('exit', resolve));
      const late = setTimeout(() => child.kill('SIGKILL'), 3000);
      await connection.sendRequest('shutdown').catch(() => undefined);
      await connection.sendNotification('exit').catch(() => undefined);
      await ended;
      clearTimeout(late);
      connection.dispose();
    },
  };
}

interface Listeners {
  readonly reports: ReadonlySet<(report: PublishDiagnosticsParams) => void>;
  readonly refreshes: ReadonlySet<() => void>;
  readonly uri: string;
}

/** Answers what servers ask an editor for. */
function listen(connection: MessageConnection, contender: Contender, folder: string, listeners: Listeners): void {
  connection.onNotification('textDocument/publishDiagnostics', (report: PublishDiagnosticsParams) => {
    if (decodeURIComponent(report.uri) !== decodeURIComponent(listeners.uri)) return;
    for (const listener of [...listeners.reports]) listener(report);
  });
  connection.onRequest('workspace/inlayHint/refresh', () => {
    for (const listener of [...listeners.refreshes]) listener();
    return null;
  });
  connection.onRequest('workspace/configuration', ({ items }: { items: { section?: string }[] }) =>
    items.map(({ section }) => (section === undefined ? null : (contender.settings?.[section] ?? null))),
  );
  connection.onRequest('workspace/workspaceFolders', () => [{ uri: pathToFileURL(folder).href, name: 'latency' }]);
  connection.onRequest(() => null);
  connection.listen();
}

function initializeParams(contender: Contender, folder: string) {
  const rootUri = pathToFileURL(folder).href;
  return {
    processId: process.pid,
    rootUri,
    workspaceFolders: [{ uri: rootUri, name: 'latency' }],
    initializationOptions: contender.initializationOptions,
    capabilities: {
      workspace: { configuration: true, workspaceFolders: true, inlayHint: { refreshSupport: true } },
      textDocument: {
        synchronization: {},
        publishDiagnostics: { versionSupport: true, relatedInformation: true },
        diagnostic: {},
        hover: { contentFormat: ['markdown', 'plaintext'] },
        completion: { completionItem: { snippetSupport: true, documentationFormat: ['markdown'] } },
        inlayHint: {},
      },
    },
  };
}

function syncKind({ textDocumentSync }: InitializeResult['capabilities']): TextDocumentSyncKind | undefined {
  return typeof textDocumentSync === 'object' ? textDocumentSync.change : textDocumentSync;
}

async function within<T>(task: Promise<T>, what: string): Promise<T> {
  let late: ReturnType<typeof setTimeout> | undefined;
  const overdue = new Promise<never>((_, reject) => {
    late = setTimeout(() => reject(new Error(`${what}: no answer within ${longestWait / 1000} s`)), longestWait);
  });
  return Promise.race([task, overdue]).finally(() => clearTimeout(late));
}
