import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type {
  CompletionItem,
  DocumentSymbol,
  Hover,
  InlayHint,
  LocationLink,
  MarkupContent,
  TextEdit,
} from 'vscode-languageserver-protocol';
import { type BuiltServer, buildServer, type LspClient, startClient } from '../helpers/lsp-client.js';

const example = readFileSync(
  fileURLToPath(new URL('../../../../shared/examples/tram-alcove/tram-alcove.booth', import.meta.url)),
  'utf8',
);

/** Line and character of the end of a text. */
function placeAfter(text: string, part: string) {
  const offset = text.indexOf(part) + part.length;
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)!.length };
}

describe('the built server over its standard streams', () => {
  let folder: string;
  let client: LspClient;
  let built: BuiltServer;
  const file = 'tram-alcove.booth';
  const at = (part: string) => ({ textDocument: { uri: client.uri(file) }, position: placeAfter(example, part) });

  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'booth-lsp-'));
    writeFileSync(path.join(folder, 'doors.booth'), 'assembly leaf {\n  softwood-plywood 18 mm\n}\n');
    built = buildServer();
    client = await startClient(built.process, folder, { pictures: true, catalogueDocument: true });
    // Bundling takes long on a machine that has other work to do.
  }, 60_000);
  afterAll(() => {
    client.server.kill();
    built.remove();
    rmSync(folder, { recursive: true });
  });

  it('says what it can do', () => {
    expect(client.capabilities).toMatchObject({
      hoverProvider: true,
      inlayHintProvider: true,
      definitionProvider: true,
      documentFormattingProvider: true,
    });
  });

  it('reports the text, then the numbers', async () => {
    client.open(file, example);
    const first = await client.diagnostics(file);
    expect(first.diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
    const later = await client.diagnostics(file, ({ diagnostics }) =>
      diagnostics.some(({ code }) => code === 'requirement-missed'),
    );
    expect(later.diagnostics.find(({ code }) => code === 'requirement-missed')?.severity).toBe(2);
  });

  it('answers a hover with a table and a picture', async () => {
    const { contents } = await client.request<Hover>('textDocument/hover', at('assembly shel'));
    const { value } = contents as MarkupContent;
    expect(value).toMatch(/STC \d+/);
    expect(value).toContain('data:image/svg+xml;base64,');
    expect(value.length).toBeLessThan(100_000);
  });

  it('completes a layer and tells more about it when asked', async () => {
    const place = placeAfter(example, '  gypsum-board ');
    const items = await client.request<CompletionItem[]>('textDocument/completion', {
      textDocument: { uri: client.uri(file) },
      position: { ...place, character: 4 },
    });
    const board = items.find(({ label }) => label === 'gypsum-board');
    expect(board?.labelDetails?.description).toMatch(/kg\/m³/);
    const full = await client.request<CompletionItem>('completionItem/resolve', board);
    expect((full.documentation as MarkupContent).value).toContain('density');
  });

  it('answers inlay hints for the lines asked for', async () => {
    const range = { start: { line: 0, character: 0 }, end: { line: 500, character: 0 } };
    const textDocument = { uri: client.uri(file) };
    const hints = await client.request<InlayHint[]>('textDocument/inlayHint', { textDocument, range });
    expect(hints.some(({ label }) => /STC \d+/.test(String(label)))).toBe(true);
    const line = hints[0]!.position.line;
    const one = { start: { line, character: 0 }, end: { line, character: 100 } };
    const few = await client.request<InlayHint[]>('textDocument/inlayHint', { textDocument, range: one });
    expect(few.length).toBeGreaterThan(0);
    expect(few.every(({ position }) => position.line === line)).toBe(true);
  });

  it('leads into the catalogue and hands the catalogue out', async () => {
    const [link] = await client.request<LocationLink[]>('textDocument/definition', at('  gypsum-bo'));
    expect(link?.targetUri).toBe('booth-catalog:/catalog.booth');
    const catalogue = await client.request<string>('boothwright/catalogue', undefined);
    const line = catalogue.split('\n')[link!.targetSelectionRange.start.line];
    expect(line).toMatch(/^material gypsum-board\b/);
  });

  it('outlines and formats', async () => {
    const textDocument = { uri: client.uri(file) };
    const outline = await client.request<DocumentSymbol[]>('textDocument/documentSymbol', { textDocument });
    expect(outline.map(({ name }) => name)).toContain('alcove');
    const edits = await client.request<TextEdit[]>('textDocument/formatting', {
      textDocument,
      options: { tabSize: 2, insertSpaces: true },
    });
    expect(Array.isArray(edits)).toBe(true);
  });

  it('keeps the last numbers, marked, while the text is broken', async () => {
    client.change(file, example.replace('gypsum-board     12.5 mm', 'gypsum-board     12.5 kPa'));
    const broken = await client.diagnostics(file, ({ diagnostics }) =>
      diagnostics.some(({ severity }) => severity === 1),
    );
    expect(broken.diagnostics.some(({ message }) => message.includes('from before the text was broken'))).toBe(true);
    const textDocument = { uri: client.uri(file) };
    const range = { start: { line: 0, character: 0 }, end: { line: 500, character: 0 } };
    const hints = await client.request<InlayHint[]>('textDocument/inlayHint', { textDocument, range });
    expect(hints.some(({ label }) => /^was STC \d+/.test(String(label)))).toBe(true);
    client.change(file, example);
    await client.diagnostics(file, ({ diagnostics }) => diagnostics.every(({ severity }) => severity !== 1));
  });

  it('reads other files of the folder, and their unsaved text when they are open', async () => {
    const text =
      'use catalog\nuse "./doors.booth"\nassembly wall {\n  softwood-plywood 9 mm\n}\nrequire stc of leaf >= 10\n';
    client.open('wall.booth', text);
    const sound = await client.diagnostics('wall.booth', ({ diagnostics }) =>
      diagnostics.every(({ severity }) => severity !== 1),
    );
    expect(sound.diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
    client.open('doors.booth', 'assembly panel {\n  softwood-plywood 18 mm\n}\n');
    const broken = await client.diagnostics('wall.booth', ({ diagnostics }) =>
      diagnostics.some(({ severity, message }) => severity === 1 && message.includes('leaf')),
    );
    expect(broken.diagnostics.length).toBeGreaterThan(0);
  });

  it('refuses a text that is too long, with a message, and goes on', async () => {
    client.open('huge.booth', `# ${'x'.repeat(10_000_001)}`);
    const { diagnostics } = await client.diagnostics('huge.booth');
    expect(diagnostics.map(({ code }) => code)).toEqual(['text-too-long']);
    expect(await client.request('textDocument/hover', at('assembly shel'))).not.toBeNull();
  });

  it('answers nothing for a document that it does not know', async () => {
    const textDocument = { uri: client.uri('unknown.booth') };
    const position = { line: 0, character: 0 };
    expect(await client.request('textDocument/hover', { textDocument, position })).toBeNull();
    expect(await client.request('textDocument/completion', { textDocument, position })).toEqual([]);
  });

  it('has failed at nothing, and ends when told', async () => {
    expect(client.log).toEqual([]);
    expect(await client.shutdown()).toBe(0);
  });
});
