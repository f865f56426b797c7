import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { beforeAll, expect, it } from 'vitest';
import { buildServer } from '../helpers/lsp-client.js';

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly params?: { readonly diagnostics?: readonly { readonly severity: number }[] };
  readonly result?: unknown;
}

/** A worker without anything of Node: its only globals are those that every web worker has. */
function startWorker(script: string) {
  const sent: Message[] = [];
  const self: Record<string, unknown> = {
    console,
    setTimeout,
    clearTimeout,
    URL,
    TextEncoder,
    TextDecoder,
    performance,
    AbortController,
    addEventListener: () => undefined,
    postMessage: (message: Message) => sent.push(message),
  };
  self.self = self;
  runInContext(script, createContext(self));
  return {
    sent,
    send(message: object) {
      (self.onmessage as (event: { data: object }) => void)({ data: { jsonrpc: '2.0', ...message } });
    },
    async until(wished: (message: Message) => boolean): Promise<Message> {
      for (let tries = 0; tries < 1000; tries++) {
        const found = sent.find(wished);
        if (found !== undefined) return found;
        await new Promise((resolve) => setTimeout(resolve, 10));
      }
      throw new Error(`No such message came; these did: ${JSON.stringify(sent).slice(0, 800)}`);
    },
  };
}

let script: string;
beforeAll(() => {
  const built = buildServer();
  script = readFileSync(built.worker, 'utf8');
  built.remove();
  // Bundling takes a while on a machine that does other things too.
}, 60_000);

it('answers in a web worker', async () => {
  const worker = startWorker(script);
  worker.send({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
  await worker.until(({ id }) => id === 1);
  worker.send({ method: 'initialized', params: {} });
  const text = 'use catalog\nassembly wall {\n  gypsum-board 12.5 kg\n}\n';
  const textDocument = { uri: 'inmemory:/a.booth', languageId: 'booth', version: 1, text };
  worker.send({ method: 'textDocument/didOpen', params: { textDocument } });
  const report = await worker.until(({ method }) => method === 'textDocument/publishDiagnostics');
  expect(report.params?.diagnostics?.some(({ severity }) => severity === 1)).toBe(true);

  const contentChanges = [{ text: text.replace('12.5 kg', '12.5 mm') }];
  worker.send({
    method: 'textDocument/didChange',
    params: { textDocument: { uri: textDocument.uri, version: 2 }, contentChanges },
  });
  worker.send({
    id: 2,
    method: 'textDocument/hover',
    params: { textDocument: { uri: textDocument.uri }, position: { line: 1, character: 11 } },
  });
  const hover = await worker.until(({ id }) => id === 2);
  expect(JSON.stringify(hover.result)).toMatch(/STC \d+/);
});

it('reads the files that the editor sends, and writes a first spec', async () => {
  const worker = startWorker(script);
  const workspaceFolders = [{ uri: 'vfs://host/booths', name: 'booths' }];
  worker.send({
    id: 1,
    method: 'initialize',
    params: { processId: null, rootUri: null, capabilities: {}, workspaceFolders },
  });
  await worker.until(({ id }) => id === 1);
  worker.send({ method: 'initialized', params: {} });
  const files = [{ uri: 'vfs://host/booths/my%20parts.booth', text: 'use catalog\nassembly wall { osb 18 mm }\n' }];
  worker.send({ method: 'boothwright/files', params: { files } });
  const textDocument = {
    uri: 'vfs://host/booths/a.booth',
    languageId: 'booth',
    version: 1,
    text: 'use "./my parts.booth"\nrequire stc of wall >= 10\n',
  };
  worker.send({ method: 'textDocument/didOpen', params: { textDocument } });
  const report = await worker.until(({ method }) => method === 'textDocument/publishDiagnostics');
  expect(report.params?.diagnostics?.filter(({ severity }) => severity === 1)).toEqual([]);

  worker.send({ id: 2, method: 'boothwright/firstSpec', params: { answers: { room: '4 x 3 x 2.4 m' } } });
  const answered = await worker.until(({ id }) => id === 2);
  expect(JSON.stringify(answered.result)).toContain('room 4 m x 3 m x 2.4 m');
});
