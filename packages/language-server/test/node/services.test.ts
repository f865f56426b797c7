import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type {
  CodeLens,
  CompletionItem,
  DocumentLink,
  Location,
  SelectionRange,
  SemanticTokens,
  SemanticTokensDelta,
  SignatureHelp,
  SymbolInformation,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { smallBooth } from '../helpers/index.js';
import { type BuiltServer, buildServer, type LspClient, startClient } from '../helpers/lsp-client.js';

const leaf = 'assembly leaf "door leaf" {\n  softwood-plywood 18 mm\n}\n';
const open = `use "./parts/leaf.booth"\n${smallBooth.replace('    leaf wall', '    leaf leaf')}`;
const stored = 'use catalog\nuse "./parts/leaf.booth"\nrequire stc of leaf >= 10\n';

/** Line and character of the end of a text. */
function placeAfter(text: string, part: string) {
  const before = text.slice(0, text.indexOf(part) + part.length).split('\n');
  return { line: before.length - 1, character: before.at(-1)!.length };
}

describe('services that a plain client asks for over the standard streams', () => {
  let folder: string;
  let client: LspClient;
  let built: BuiltServer;
  const textDocument = () => ({ uri: client.uri('study.booth') });
  const at = (part: string, text = open) => ({ textDocument: textDocument(), position: placeAfter(text, part) });
  const names = (uris: readonly string[]) => uris.map((uri) => uri.slice(client.uri('').length)).sort();

  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'booth-services-'));
    mkdirSync(path.join(folder, 'parts'));
    writeFileSync(path.join(folder, 'parts/leaf.booth'), leaf);
    writeFileSync(path.join(folder, 'stored.booth'), stored);
    built = buildServer();
    client = await startClient(built.process, folder);
    client.open('study.booth', open);
    await client.diagnostics('study.booth');
    // Bundling takes long on a machine that has other work to do.
  }, 60_000);
  afterAll(() => {
    client.server.kill();
    built.remove();
    rmSync(folder, { recursive: true });
  });

  it('finds names over the workspace, also in specs that are not open', async () => {
    const found = await client.request<SymbolInformation[]>('workspace/symbol', { query: 'leaf' });
    expect(found.map(({ name, location }) => `${name} ${names([location.uri])[0]}`)).toContain('leaf parts/leaf.booth');
  });

  it('finds references in specs that are not open', async () => {
    const found = await client.request<Location[]>('textDocument/references', {
      ...at('    leaf lea'),
      context: { includeDeclaration: true },
    });
    expect(names(found.map(({ uri }) => uri))).toEqual(['parts/leaf.booth', 'stored.booth', 'study.booth']);
  });

  it('renames in specs that are not open', async () => {
    const edit = await client.request<WorkspaceEdit>('textDocument/rename', {
      ...at('    leaf lea'),
      newName: 'panel',
    });
    expect(names(Object.keys(edit.changes ?? {}))).toEqual(['parts/leaf.booth', 'stored.booth', 'study.booth']);
    expect(readFileSync(path.join(folder, 'stored.booth'), 'utf8')).toBe(stored);
  });

  it('follows a moved file', async () => {
    const edit = await client.request<WorkspaceEdit>('workspace/willRenameFiles', {
      files: [{ oldUri: client.uri('parts/leaf.booth'), newUri: client.uri('leaf.booth') }],
    });
    expect(names(Object.keys(edit.changes ?? {}))).toEqual(['stored.booth', 'study.booth']);
    expect(Object.values(edit.changes ?? {})[0]?.[0]?.newText).toBe('./leaf.booth');
  });

  it('links used files', async () => {
    const links = await client.request<DocumentLink[]>('textDocument/documentLink', { textDocument: textDocument() });
    expect(links.map(({ target }) => target)).toEqual([client.uri('parts/leaf.booth')]);
  });

  it('widens a selection', async () => {
    const [range] = await client.request<SelectionRange[]>('textDocument/selectionRange', {
      textDocument: textDocument(),
      positions: [placeAfter(open, 'let gap = 6')],
    });
    expect(range?.parent?.parent).toBeDefined();
  });

  it('tells what a line takes', async () => {
    const help = await client.request<SignatureHelp>('textDocument/signatureHelp', at('  density '));
    expect(help.signatures[0]?.label).toContain('density DENSITY');
    expect(JSON.stringify(help.signatures[0]?.parameters)).toContain('kg/m3');
  });

  it('shows the verdicts above the booth and its variant', async () => {
    const lenses = await client.request<CodeLens[]>('textDocument/codeLens', { textDocument: textDocument() });
    expect(lenses.map(({ command }) => command?.title ?? '')).toEqual([
      expect.stringMatching(/^[✓✗?] .*requirement.* dBA/),
      expect.stringMatching(/^[✓✗?] .*requirement/),
    ]);
  });

  it('completes the path of a use', async () => {
    const items = await client.request<CompletionItem[]>('textDocument/completion', at('use "'));
    expect(items.map(({ label }) => label)).toEqual(['./stored.booth', './parts/leaf.booth']);
  });

  it('tells tokens: all, those of a range, and after a change the change', async () => {
    const all = await client.request<SemanticTokens>('textDocument/semanticTokens/full', {
      textDocument: textDocument(),
    });
    const range = { start: { line: 0, character: 0 }, end: { line: 2, character: 0 } };
    const few = await client.request<SemanticTokens>('textDocument/semanticTokens/range', {
      textDocument: textDocument(),
      range,
    });
    expect(few.data.length).toBeGreaterThan(0);
    expect(few.data).toEqual(all.data.slice(0, few.data.length));
    const start = placeAfter(open, 'let gap = ');
    client.edit('study.booth', { start, end: { ...start, character: start.character + 2 } }, '1234');
    const delta = await client.request<SemanticTokensDelta>('textDocument/semanticTokens/full/delta', {
      textDocument: textDocument(),
      previousResultId: all.resultId,
    });
    expect(delta.edits.flatMap(({ data }) => data ?? []).length).toBeLessThan(20);
    client.change('study.booth', open);
  });

  it('formats a range, and what was just typed', async () => {
    const untidy = 'assembly a   {\n      air   50   mm\n  air  20 mm\n}\n';
    client.open('untidy.booth', untidy);
    const options = { tabSize: 2, insertSpaces: true };
    const document = { uri: client.uri('untidy.booth') };
    const inRange = await client.request<TextEdit[]>('textDocument/rangeFormatting', {
      textDocument: document,
      range: { start: { line: 1, character: 0 }, end: { line: 1, character: 5 } },
      options,
    });
    const onType = await client.request<TextEdit[]>('textDocument/onTypeFormatting', {
      textDocument: document,
      position: { line: 3, character: 1 },
      ch: '}',
      options,
    });
    expect(inRange.length).toBeGreaterThan(0);
    expect(inRange.every(({ range }) => range.start.line >= 1 && range.end.line === 1)).toBe(true);
    expect(onType).toEqual([]);
  });

  it('has failed at nothing, and ends when told', async () => {
    expect(client.log).toEqual([]);
    expect(await client.shutdown()).toBe(0);
  });
});
