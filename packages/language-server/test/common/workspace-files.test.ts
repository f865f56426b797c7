import { expect, it } from 'vitest';
import { workspaceFiles } from '../../src/common/workspace-files.js';

it('gives every spec once, an open one as it is in the editor, without what cannot be read', async () => {
  const stored: Record<string, string> = { 'a.booth': 'stored a', 'deep/b c.booth': 'stored b' };
  const files = await workspaceFiles({
    folders: () => ['file:///booths/'],
    documents: () => [
      { uri: 'file:///booths/a.booth', version: 2, getText: () => 'typed a' },
      { uri: 'untitled:new', version: 1, getText: () => 'typed new' },
      { uri: 'booth-catalog:/catalog.booth', version: 1, getText: () => 'the catalogue' },
    ],
    platform: {
      list: async () => ['a.booth', 'deep/b c.booth', 'gone.booth'],
      read: (_folder, path) => (path in stored ? { kind: 'text', text: stored[path]! } : { kind: 'missing' }),
    },
  });
  expect(files).toEqual([
    { uri: 'file:///booths/a.booth', text: 'typed a' },
    { uri: 'untitled:new', text: 'typed new' },
    { uri: 'file:///booths/deep/b%20c.booth', text: 'stored b' },
  ]);
});
