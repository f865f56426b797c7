import { readFileSync } from 'node:fs';
import path from 'node:path';
import { ArgumentError } from '@boothwright/acoustics';
import { wallTransmissionLosses } from '@boothwright/acoustics/layered';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltServer, buildServer } from '../helpers/lsp-client.js';

/** What only the physics says: an error of a function that works out walls. */
function wordsOfPhysics(): string {
  try {
    wallTransmissionLosses({ layers: [], connections: [] }, {} as never, undefined as never);
  } catch (error) {
    if (error instanceof ArgumentError) return error.argument;
  }
  throw new Error('a wall without layers is refused');
}

describe('the bundles', () => {
  let built: BuiltServer;
  beforeAll(() => {
    built = buildServer();
  });
  afterAll(() => built.remove());

  it('keep the physics in the script of the thread, so that the server starts without it', () => {
    const words = wordsOfPhysics();
    const read = (name: string) => readFileSync(path.join(path.dirname(built.process), name), 'utf8');
    expect(read('assess-thread.cjs')).toContain(words);
    expect(read('server.cjs')).not.toContain(words);
    expect(read('assess-thread.cjs')).not.toContain('textDocument/hover');
    expect(read('server.cjs')).toContain('textDocument/hover');
  });
});
