import { readFileSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createConnection } from 'vscode-languageserver/node.js';
import * as protocol from 'vscode-languageserver-protocol/node.js';
import { startServer } from '../src/common/server.js';

const page = readFileSync(fileURLToPath(new URL('../../../docs/services.md', import.meta.url)), 'utf8');

interface Row {
  readonly methods: readonly string[];
  readonly capability: string;
  readonly used: string;
  readonly why: string;
}

const rows: readonly Row[] = page
  .split('\n')
  .filter((line) => line.startsWith('| `'))
  .map((line) => {
    const [methods = '', capability = '', used = '', why = ''] = line
      .split('|')
      .slice(1)
      .map((cell) => cell.trim());
    return {
      methods: [...methods.matchAll(/`([^`]+)`/g)].map((match) => match[1]!),
      capability: capability.replaceAll('`', ''),
      used,
      why,
    };
  });

/** What the protocol library knows beyond version 3.17, and names that stand for a registration and not a message. */
const others = [
  'textDocument/inlineCompletion',
  'textDocument/rangesFormatting',
  'workspace/foldingRange/refresh',
  'textDocument/semanticTokens',
  'notebookDocument/sync',
  'method',
];

/** What any two ends of the protocol may say to each other. */
const base = ['$/cancelRequest', '$/progress', '$/logTrace', '$/setTrace'];

function messages(): string[] {
  const found = Object.values(protocol).flatMap((value) => {
    const method = (value as { method?: unknown } | undefined)?.method;
    return typeof method === 'string' ? [method] : [];
  });
  return [...new Set([...found, ...base])].filter((method) => !others.includes(method)).sort();
}

async function declared(): Promise<Record<string, unknown>> {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  startServer(
    createConnection(new protocol.StreamMessageReader(toServer), new protocol.StreamMessageWriter(toClient)),
    {
      read: () => ({ kind: 'missing' }),
      list: async () => [],
      assess: () => new Promise(() => undefined),
      later: () => () => undefined,
    },
  );
  const client = protocol.createMessageConnection(
    new protocol.StreamMessageReader(toClient),
    new protocol.StreamMessageWriter(toServer),
  );
  client.listen();
  const { capabilities } = await client.sendRequest<protocol.InitializeResult>('initialize', {
    processId: null,
    rootUri: null,
    capabilities: {},
  });
  client.dispose();
  return capabilities as Record<string, unknown>;
}

function at(path: string, within: unknown): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (value, key) =>
        typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[key] : undefined,
      within,
    );
}

describe('the page of services', () => {
  it('names every message of the protocol once, with a reason', () => {
    expect(rows.flatMap(({ methods }) => methods).sort()).toEqual(messages());
    expect(rows.filter(({ used, why }) => !['yes', 'no'].includes(used) || why === '')).toEqual([]);
  });

  it('says yes exactly where the server declares the capability', async () => {
    const capabilities = await declared();
    for (const { methods, capability, used } of rows) {
      if (capability === '') continue;
      const value = at(capability, capabilities);
      expect(value !== undefined && value !== false, `${methods[0]}: ${capability}`).toBe(used === 'yes');
    }
  });

  it('leaves out no capability that the server declares', async () => {
    const capabilities = await declared();
    const named = rows.map(({ capability }) => capability.split('.')[0]);
    for (const name of Object.keys(capabilities)) expect(named, name).toContain(name);
  });
});
