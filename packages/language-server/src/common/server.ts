import { symbolAt } from '@boothwright/language';
import { showing } from '@boothwright/presentation';
import {
  type CancellationToken,
  CodeLensRefreshRequest,
  type Connection,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  ErrorCodes,
  type InitializeResult,
  type Position,
  ResponseError,
  TextDocumentSyncKind,
  TextDocuments,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { catalogueRequest } from './catalogue-uri.js';
import { answerClientRequests } from './client-requests.js';
import { createCodeActions } from './code-actions/service.js';
import { offeredKinds } from './code-actions.js';
import { codeLenses } from './code-lenses.js';
import { completeItem, completion } from './completion.js';
import { definition } from './definition.js';
import { diagnostics } from './diagnostics.js';
import { documentHighlights } from './document-highlights.js';
import { documentLinks } from './document-links.js';
import { documentSymbols } from './document-symbols.js';
import { withPages } from './documentation-pages.js';
import { foldingRanges } from './folding-ranges.js';
import { followMoves, movedFiles } from './follow-moves.js';
import { formatting, rangeFormatting } from './formatting.js';
import { guarded, guardedLater } from './guarded.js';
import { asksForAssembly } from './hover/asks-for-assembly.js';
import { hover } from './hover.js';
import { inlayHints } from './inlay-hints.js';
import { createNumbers, type Numbers } from './numbers.js';
import { onTypeFormatting, typedCharacters } from './on-type-formatting.js';
import type { Platform } from './platform.js';
import { references } from './references.js';
import { prepareRename, RenameRefused, rename } from './rename.js';
import { createScheduler } from './scheduler.js';
import { selectionRanges } from './selection-ranges.js';
import { tokenModifiers, tokenTypes } from './semantic-tokens.js';
import { readSettings, type Settings } from './settings.js';
import { severityComplaints } from './severities.js';
import { shownComplaints } from './shown-settings.js';
import { signatureCharacters, signatureHelp } from './signature-help.js';
import { createSinceCommit } from './since-commit/since-commit.js';
import { soon, unlessCancelled } from './soon.js';
import { createTokenMemory } from './token-memory.js';
import { tooLongDiagnostic } from './too-long-diagnostic.js';
import { useCompletion, usePathAt } from './use-completion.js';
import type { View } from './view.js';
import { catalogueDocumentText, createWorkspace, type Workspace } from './workspace.js';
import { workspaceFiles } from './workspace-files.js';
import { workspaceSymbols } from './workspace-symbols.js';

/** What an editor says about itself when it starts the server, beside the protocol's own capabilities. */
interface ClientOptions {
  /** It can open the document `booth-catalog:/catalog.booth`. */
  readonly catalogueDocument: boolean;
  /** It shows pictures in hovers. */
  readonly pictures: boolean;
  /** It has a live sheet: it is told when there is something new for it, and lenses open it. */
  readonly sheet: boolean;
  /** The history of the workspace may be read: git is asked, so the workspace must be trusted. */
  readonly readsCommits: boolean;
  /** Where its user finds the documentation, so that a diagnostic leads to its page. */
  readonly documentation?: string;
}

/** Answers one editor over one connection until the connection ends. */
export function startServer(connection: Connection, platform: Platform): void {
  const documents = new TextDocuments(TextDocument);
  let folders: string[] = [];
  let settings: Settings = readSettings(undefined);
  let client: ClientOptions = { catalogueDocument: false, pictures: false, sheet: false, readsCommits: false };
  let canRefreshHints = false;
  let resolvesEdits = false;
  let canRefreshLenses = false;
  let canWatchSettings = false;
  let canWatchFolders = false;
  let canWatchFiles = false;
  let workspace: Workspace = newWorkspace();
  let numbers: Numbers = newNumbers();

  function newWorkspace(): Workspace {
    return createWorkspace({
      platform,
      folders: () => folders,
      documents: () => documents.all(),
      catalogueDocument: client.catalogueDocument,
    });
  }

  function newNumbers(): Numbers {
    return createNumbers(workspace, platform.assess, {
      arrived(uri) {
        publish(uri);
        refreshAnswers();
      },
      assembliesArrived(uri) {
        refreshHints();
        tellSheet(uri);
      },
      baseArrived(uri) {
        publish(uri);
        refreshAnswers();
        tellSheet(uri);
      },
    });
  }

  const takeSettings = (sent: unknown): void => {
    settings = readSettings(sent);
    const { severities, show } = (sent ?? {}) as { severities?: unknown; show?: unknown };
    for (const complaint of [...severityComplaints(severities), ...shownComplaints(show)]) {
      connection.console.warn(complaint);
    }
  };
  const log = (message: string): void => connection.console.error(message);
  const publish = guarded('Reporting', log, undefined, (uri: string): void => {
    const document = documents.get(uri);
    if (document === undefined) return;
    const view = workspace.view(uri);
    const found = view === undefined ? tooLongDiagnostic(document.getText()) : diagnostics(view, settings.severities);
    const explained = withPages(found, view?.results, client.documentation);
    connection.sendDiagnostics({ uri, version: document.version, diagnostics: explained });
    // While numbers are worked out there is nothing new to show: build-ups and booths are told of when they come.
    if (view?.pending !== true) tellSheet(uri);
  });
  /** A live sheet asks for what is new itself, so that it gets only what it shows. */
  const tellSheet = (uri: string): void => {
    if (client.sheet) connection.sendNotification('boothwright/sheetChanged', { uri }).catch(() => undefined);
  };
  const refreshHints = (): void => {
    if (canRefreshHints) connection.languages.inlayHint.refresh().catch(() => undefined);
  };
  const refreshLenses = (): void => {
    if (canRefreshLenses) connection.sendRequest(CodeLensRefreshRequest.type).catch(() => undefined);
  };
  const refreshAnswers = (): void => {
    refreshHints();
    refreshLenses();
  };
  const settle = guardedLater('Assessing', log, false, (uri: string) => numbers.settle(uri));
  /** What goes wrong is told by the whole. */
  const settleAssemblies = (uri: string): Promise<unknown> => numbers.settleAssemblies(uri).catch(() => settle(uri));
  const settleBase = (uri: string): Promise<unknown> => numbers.settleBase(uri).catch(() => settle(uri));
  const scheduler = createScheduler({
    platform,
    reportText: publish,
    isPending: guarded('Checking', log, false, (uri: string) => workspace.pending(uri) !== undefined),
    async settleNumbers(uri) {
      await settle(uri);
    },
  });
  const sinceCommit = createSinceCommit({
    platform,
    folders: () => folders,
    isWanted: () => client.readsCommits && settings.codeLens.sinceCommit,
    arrived(uri) {
      refreshLenses();
      tellSheet(uri);
    },
  });
  const tokens = createTokenMemory();
  const everything = (): void => scheduler.changed(documents.keys());

  connection.onInitialize(({ capabilities, workspaceFolders, rootUri, initializationOptions }): InitializeResult => {
    folders = (workspaceFolders ?? []).map(({ uri }) => uri);
    if (folders.length === 0 && typeof rootUri === 'string') folders = [rootUri];
    const told = (initializationOptions ?? {}) as Record<
      'catalogueDocument' | 'pictures' | 'sheet' | 'readsCommits' | 'documentation' | 'boothwright',
      unknown
    >;
    const documentation = typeof told.documentation === 'string' ? { documentation: told.documentation } : {};
    client = {
      catalogueDocument: told.catalogueDocument === true,
      pictures: told.pictures === true,
      sheet: told.sheet === true,
      readsCommits: told.readsCommits === true,
      ...documentation,
    };
    takeSettings(told.boothwright);
    resolvesEdits = capabilities.textDocument?.codeAction?.resolveSupport?.properties.includes('edit') === true;
    canRefreshHints = capabilities.workspace?.inlayHint?.refreshSupport === true;
    canRefreshLenses = capabilities.workspace?.codeLens?.refreshSupport === true;
    canWatchSettings = capabilities.workspace?.didChangeConfiguration?.dynamicRegistration === true;
    canWatchFiles = capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
    canWatchFolders = capabilities.workspace?.workspaceFolders === true;
    workspace = newWorkspace();
    numbers = newNumbers();
    return {
      serverInfo: { name: 'boothwright' },
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        inlayHintProvider: true,
        completionProvider: { triggerCharacters: [' ', '.', '"', '/'], resolveProvider: true },
        signatureHelpProvider: { triggerCharacters: [...signatureCharacters] },
        documentHighlightProvider: true,
        documentSymbolProvider: true,
        definitionProvider: true,
        referencesProvider: true,
        workspaceSymbolProvider: true,
        renameProvider: { prepareProvider: true },
        documentFormattingProvider: true,
        documentRangeFormattingProvider: true,
        documentOnTypeFormattingProvider: {
          firstTriggerCharacter: typedCharacters.first,
          moreTriggerCharacter: [...typedCharacters.more],
        },
        codeLensProvider: { resolveProvider: false },
        documentLinkProvider: { resolveProvider: false },
        selectionRangeProvider: true,
        semanticTokensProvider: {
          legend: { tokenTypes: [...tokenTypes], tokenModifiers: [...tokenModifiers] },
          full: { delta: true },
          range: true,
        },
        codeActionProvider: { codeActionKinds: offeredKinds, resolveProvider: true },
        foldingRangeProvider: true,
        workspace: {
          workspaceFolders: { supported: true, changeNotifications: true },
          fileOperations: { willRename: { filters: movedFiles } },
        },
      },
    };
  });

  connection.onInitialized(() => {
    if (canWatchSettings) {
      connection.client
        .register(DidChangeConfigurationNotification.type, { section: 'boothwright' })
        .catch((error) => log(String(error)));
    }
    if (canWatchFiles) {
      connection.client
        .register(DidChangeWatchedFilesNotification.type, { watchers: [{ globPattern: '**/*.booth' }] })
        .catch((error) => log(String(error)));
    }
    if (!canWatchFolders) return;
    connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
      const gone = new Set(removed.map(({ uri }) => uri));
      folders = [...folders.filter((uri) => !gone.has(uri)), ...added.map(({ uri }) => uri)];
      workspace.changedOnDisk();
      everything();
    });
  });

  documents.onDidChangeContent(({ document }) => {
    const changed = [document.uri, ...workspace.changed(document.uri)];
    for (const uri of changed) numbers.changed(uri);
    scheduler.changed(changed);
  });
  documents.onDidClose(({ document: { uri } }) => {
    const users = workspace.changed(uri);
    workspace.closed(uri);
    scheduler.closed(uri);
    tokens.closed(uri);
    sinceCommit.closed(uri);
    connection.sendDiagnostics({ uri, diagnostics: [] });
    scheduler.changed(users);
  });
  documents.onDidSave(({ document: { uri } }) => sinceCommit.refresh(uri));
  // An editor learns of it later when a workspace comes to be trusted.
  connection.onNotification('boothwright/readsCommits', () => {
    client = { ...client, readsCommits: true };
    refreshLenses();
    for (const uri of documents.keys()) tellSheet(uri);
  });
  connection.onDidChangeWatchedFiles(() => {
    workspace.changedOnDisk();
    everything();
  });
  connection.onDidChangeConfiguration(({ settings: sent }) => {
    takeSettings((sent as { boothwright?: unknown } | null)?.boothwright);
    for (const uri of documents.keys()) publish(uri);
    refreshAnswers();
  });

  const viewOf = (uri: string) => workspace.view(uri);
  /** Written in the units and with the ratings that the settings name. */
  const told = <T>(write: () => T): T => showing(settings.show, write);
  /** An answer about one document, told by nothing but its view. */
  const ofView = <P extends { readonly textDocument: { readonly uri: string } }, R>(
    what: string,
    nothing: R,
    answer: (view: View, asked: P) => R,
  ) =>
    guarded(what, log, nothing, (asked: P): R => {
      const view = viewOf(asked.textDocument.uri);
      return view === undefined ? nothing : answer(view, asked);
    });
  const files = () => workspaceFiles({ platform, folders: () => folders, documents: () => documents.all() });
  /** The other specs whose text holds the name at a position: only they can use it. */
  const specsNaming = async (uri: string, position: Position): Promise<readonly View[]> => {
    const view = viewOf(uri);
    const hit = view && symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
    if (hit === undefined) return [];
    const naming = (await files()).filter((file) => file.uri !== uri && file.text.includes(hit.symbol.name));
    return naming.flatMap((file) => viewOf(file.uri) ?? workspace.viewOfText(file.uri, file.text) ?? []);
  };

  connection.onHover(
    guardedLater('Hover', log, null, async ({ textDocument, position }) => {
      const { uri } = textDocument;
      const before = viewOf(uri);
      await soon(before !== undefined && asksForAssembly(before, position) ? settleAssemblies(uri) : settleBase(uri));
      const view = viewOf(uri);
      return (view && told(() => hover(view, position, client))) ?? null;
    }),
  );
  connection.languages.inlayHint.on(
    guardedLater('Inlay hints', log, [], async ({ textDocument: { uri }, range }, token: CancellationToken) => {
      // An editor may begin to listen for refreshes only once it has a first answer, so that one has to be whole.
      const isFirst = viewOf(uri)?.results === undefined;
      // Later the build-ups are enough: when the rest is there the editor asks again, if it can be told to.
      const isEnough = canRefreshHints ? settleAssemblies : settle;
      await (isFirst ? unlessCancelled(settle(uri), token) : soon(isEnough(uri)));
      const view = token.isCancellationRequested ? undefined : viewOf(uri);
      return view === undefined ? [] : told(() => inlayHints(view, range, settings));
    }),
  );
  connection.onCodeLens(
    guardedLater('Lenses', log, [], async ({ textDocument: { uri } }, token: CancellationToken) => {
      const isFirst = viewOf(uri)?.results === undefined;
      await (isFirst ? unlessCancelled(settle(uri), token) : soon(settle(uri)));
      const view = token.isCancellationRequested ? undefined : viewOf(uri);
      return view === undefined ? [] : told(() => codeLenses(view, settings, client.sheet, sinceCommit.of(view)));
    }),
  );
  connection.onCompletion(
    guardedLater('Completion', log, [], async ({ textDocument, position }) => {
      const view = viewOf(textDocument.uri);
      if (view === undefined) return [];
      const path = usePathAt(view, position);
      return path === undefined
        ? told(() => completion(view, position, settings.show.currency))
        : useCompletion(view, path, await files());
    }),
  );
  connection.onCompletionResolve((item) =>
    guarded('Completion', log, item, () => told(() => completeItem(item, viewOf)))(),
  );
  connection.onSignatureHelp(ofView('Signature', null, (view, { position }) => signatureHelp(view, position) ?? null));
  connection.onDocumentSymbol(ofView('Outline', [], (view) => documentSymbols(view)));
  connection.onDocumentHighlight(ofView('Highlights', [], (view, { position }) => documentHighlights(view, position)));
  connection.onDefinition(ofView('Definition', [], (view, { position }) => definition(view, position)));
  connection.onReferences(
    guardedLater('References', log, [], async ({ textDocument, position, context }) => {
      const others = await specsNaming(textDocument.uri, position);
      const view = viewOf(textDocument.uri);
      return view === undefined ? [] : references(view, position, context.includeDeclaration, others);
    }),
  );
  connection.onPrepareRename(ofView('Rename', null, (view, { position }) => prepareRename(view, position) ?? null));
  connection.onRenameRequest(
    guardedLater('Rename', log, null, async ({ textDocument, position, newName }) => {
      const others = await specsNaming(textDocument.uri, position);
      const view = viewOf(textDocument.uri);
      try {
        return (view && rename(view, position, newName, others)) ?? null;
      } catch (error) {
        if (error instanceof RenameRefused) return new ResponseError(ErrorCodes.InvalidRequest, error.message);
        throw error;
      }
    }),
  );
  connection.onWorkspaceSymbol(
    guardedLater('Names of the workspace', log, [], async ({ query }) => workspaceSymbols(await files(), query)),
  );
  connection.workspace.onWillRenameFiles(
    guardedLater('Following moved files', log, null, async ({ files: moves }) =>
      followMoves(await files(), moves, folders),
    ),
  );
  connection.onDocumentFormatting(ofView('Formatting', [], (view) => formatting(view)));
  connection.onDocumentRangeFormatting(ofView('Formatting', [], (view, { range }) => rangeFormatting(view, range)));
  connection.onDocumentOnTypeFormatting(
    ofView('Formatting', [], (view, { position, ch, options }) => onTypeFormatting(view, position, ch, options)),
  );
  connection.onDocumentLinks(ofView('Links', [], (view) => documentLinks(view)));
  connection.onSelectionRanges(ofView('Selection', [], (view, { positions }) => selectionRanges(view, positions)));
  connection.languages.semanticTokens.on(ofView('Tokens', { data: [] }, (view) => tokens.full(view)));
  connection.languages.semanticTokens.onDelta(
    ofView('Tokens', { data: [] }, (view, { previousResultId }) => tokens.delta(view, previousResultId)),
  );
  connection.languages.semanticTokens.onRange(
    ofView('Tokens', { data: [] }, (view, { range }) => tokens.range(view, range)),
  );
  connection.onFoldingRanges(ofView('Folding', [], (view) => foldingRanges(view)));
  const actions = createCodeActions({
    viewOf,
    settle,
    assess: platform.assess,
    later: platform.later,
    resolvesEdits: () => resolvesEdits,
    severities: () => settings.severities,
    shown: () => settings.show,
  });
  connection.onCodeAction(guardedLater('Code actions', log, [], actions.offer));
  connection.onCodeActionResolve((action) => guarded('Code actions', log, action, actions.resolve)(action));
  connection.onRequest(catalogueRequest, () => catalogueDocumentText());
  answerClientRequests(connection, log, {
    viewOf,
    settle,
    assess: platform.assess,
    sinceCommit: (view) => sinceCommit.of(view),
    shown: () => settings.show,
  });

  documents.listen(connection);
  connection.listen();
}
