import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBelow } from '../../src/node/read-below.js';

describe('readBelow', () => {
  let base: string;
  let folder: string;

  beforeAll(() => {
    base = mkdtempSync(path.join(tmpdir(), 'booth-read-'));
    mkdirSync(path.join(base, 'home/parts'), { recursive: true });
    writeFileSync(path.join(base, 'secret.booth'), 'secret');
    writeFileSync(path.join(base, 'home/parts/door.booth'), 'door');
    symlinkSync(path.join(base, 'secret.booth'), path.join(base, 'home/way-out.booth'));
    symlinkSync(path.join(base, 'home/parts/door.booth'), path.join(base, 'home/way-in.booth'));
    writeFileSync(path.join(base, 'home/huge.booth'), '');
    truncateSync(path.join(base, 'home/huge.booth'), 10_000_001);
    folder = String(pathToFileURL(path.join(base, 'home')));
  });
  afterAll(() => rmSync(base, { recursive: true }));

  it('reads a file below the folder', () => {
    expect(readBelow(folder, 'parts/door.booth')).toEqual({ kind: 'text', text: 'door' });
    expect(readBelow(folder, 'way-in.booth')).toEqual({ kind: 'text', text: 'door' });
  });

  it('refuses what lies outside, by name or by a link', () => {
    expect(readBelow(folder, '../secret.booth').kind).toBe('refused');
    expect(readBelow(folder, 'way-out.booth').kind).toBe('refused');
    expect(readBelow(folder, 'parts/../../secret.booth').kind).toBe('refused');
  });

  it('refuses a folder and a file that is too long, and says so', () => {
    expect(readBelow(folder, 'parts').kind).toBe('refused');
    expect(readBelow(folder, 'huge.booth')).toEqual({
      kind: 'refused',
      reason: 'it is 10.0 MB long; at most 10 MB are read',
    });
  });

  it('finds nothing where nothing is, and on no disk', () => {
    expect(readBelow(folder, 'none.booth')).toEqual({ kind: 'missing' });
    expect(readBelow('vscode-vfs://somewhere', 'a.booth')).toEqual({ kind: 'missing' });
  });
});
