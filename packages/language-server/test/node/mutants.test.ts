import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type BuiltServer, buildServer, type LspClient, startClient } from '../helpers/lsp-client.js';

const example = readFileSync(
  fileURLToPath(new URL('../../../../shared/examples/tram-alcove/tram-alcove.booth', import.meta.url)),
  'utf8',
);

// Every 40th character is taken out in turn: 120 texts or so, spread over the whole example.
const step = 40;

let folder: string;
let client: LspClient;
let built: BuiltServer;
beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'booth-mutants-'));
  built = buildServer();
  client = await startClient(built.process, folder);
});
afterAll(() => {
  client.server.kill();
  built.remove();
  rmSync(folder, { recursive: true });
});

it('answers for every text that lacks one character, without a failure', { timeout: 240_000 }, async () => {
  const file = 'mutant.booth';
  const textDocument = { uri: client.uri(file) };
  client.open(file, example);
  let tried = 0;
  for (let at = 7; at < example.length; at += step) {
    const lines = example.slice(0, at).split('\n');
    const position = { line: lines.length - 1, character: lines.at(-1)!.length };
    const next =
      example[at] === '\n'
        ? { line: position.line + 1, character: 0 }
        : { ...position, character: position.character + 1 };
    client.edit(file, { start: position, end: next }, '');
    const { diagnostics } = await client.diagnostics(file);
    expect(Array.isArray(diagnostics)).toBe(true);
    const hover = await client.request<object | null>('textDocument/hover', { textDocument, position });
    expect(hover === null || 'contents' in hover).toBe(true);
    const items = await client.request<unknown>('textDocument/completion', { textDocument, position });
    expect(Array.isArray(items)).toBe(true);
    client.edit(file, { start: position, end: position }, example[at]!);
    tried += 1;
  }
  // After all the typing the text is what it was.
  const { diagnostics } = await client.diagnostics(file);
  expect(diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
  expect(tried).toBeGreaterThan(100);
  expect(client.log).toEqual([]);
  expect(client.server.exitCode).toBeNull();
});
