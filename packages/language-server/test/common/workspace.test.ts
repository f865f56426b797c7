import { describe, expect, it } from 'vitest';
import { createWorkspace } from '../../src/common/workspace.js';
import { openSpecs, smallBooth } from '../helpers/index.js';

describe('createWorkspace', () => {
  it('prefers the unsaved text of an open file to that on disk', () => {
    const uses = 'use "./parts.booth"\nassembly a {\n  air width\n}\n';
    const onDisk = { 'parts.booth': 'let other = 5 mm\n' };
    const errors = (specs: ReturnType<typeof openSpecs>) =>
      specs.view('a.booth').checked.problems.filter(({ severity }) => severity === 'error').length;
    expect(errors(openSpecs({ 'a.booth': uses }, onDisk))).toBeGreaterThan(0);
    expect(errors(openSpecs({ 'a.booth': uses, 'parts.booth': 'let width = 5 mm\n' }, onDisk))).toBe(0);
  });

  it('names the open documents that rest on a changed one', () => {
    const specs = openSpecs({
      'a.booth': 'use "./parts.booth"\n',
      'parts.booth': 'let width = 5 mm\n',
      'c.booth': '\n',
    });
    for (const name of ['a.booth', 'parts.booth', 'c.booth']) specs.view(name);
    expect(specs.workspace.changed(specs.uri('parts.booth'))).toEqual([specs.uri('a.booth')]);
  });

  it('works the numbers out once for each text', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    expect(specs.assess('a.booth')).toBe(true);
    expect(specs.assess('a.booth')).toBe(false);
    specs.change('a.booth', smallBooth.replace('60 mm', '61 mm'));
    expect(specs.workspace.pending(specs.uri('a.booth'))?.text).toContain('61 mm');
  });

  it('works out nothing for a broken text and keeps what was', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    specs.assess('a.booth');
    const before = specs.view('a.booth').results;
    specs.change('a.booth', `${smallBooth}let =\n`);
    expect(specs.assess('a.booth')).toBe(false);
    expect(specs.view('a.booth').stale).toBe(true);
    expect(specs.view('a.booth').results?.assemblies).toEqual(before?.assemblies);
  });

  it('knows nothing of a document that is not open', () => {
    expect(openSpecs({}).workspace.view('file:///booths/none.booth')).toBeUndefined();
  });

  it('opens the catalogue as a document of its own, without an error', async () => {
    const { catalogueText } = await import('@boothwright/language');
    const uri = 'booth-catalog:/catalog.booth';
    const workspace = createWorkspace({
      catalogueDocument: true,
      folders: () => ['file:///booths'],
      documents: () => [{ uri, version: 1, getText: () => catalogueText }],
      platform: { read: () => ({ kind: 'missing' }) },
    });
    const view = workspace.view(uri);
    expect(view?.checked.spec.materials.size).toBeGreaterThan(5);
    expect(view?.checked.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    const [first] = view!.checked.symbols.symbols;
    expect(view?.locate(first!.nameRange)?.uri).toBe(uri);
  });
});
