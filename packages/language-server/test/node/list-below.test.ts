import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listBelow } from '../../src/node/list-below.js';

describe('listBelow', () => {
  let folder: string;
  const uri = () => String(pathToFileURL(folder));
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'booth-list-'));
    for (const below of ['deep/deeper', '.hidden', 'node_modules/kit'])
      mkdirSync(path.join(folder, below), { recursive: true });
    for (const file of [
      'b.booth',
      'a.booth',
      'note.txt',
      'deep/c.booth',
      'deep/deeper/d.booth',
      '.hidden/e.booth',
      'node_modules/kit/f.booth',
    ])
      writeFileSync(path.join(folder, file), '');
    symlinkSync(path.join(folder, 'deep'), path.join(folder, 'linked'));
    symlinkSync(path.join(folder, 'a.booth'), path.join(folder, 'z.booth'));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('finds the specs of a folder, the nearest first, and follows no links', async () => {
    expect(await listBelow(uri())).toEqual(['a.booth', 'b.booth', 'deep/c.booth', 'deep/deeper/d.booth']);
  });

  it('finds nothing where there is no such folder, and none that is not on disk', async () => {
    expect(await listBelow(`${uri()}/none`)).toEqual([]);
    expect(await listBelow('memfs:/booths')).toEqual([]);
  });
});
