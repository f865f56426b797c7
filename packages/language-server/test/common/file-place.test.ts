import { describe, expect, it } from 'vitest';
import { filePlace, sameUri, uriOfPlace } from '../../src/common/file-place.js';

describe('filePlace', () => {
  it('is relative to the deepest workspace folder', () => {
    const folders = ['file:///booths', 'file:///booths/home'];
    expect(filePlace('file:///booths/home/a.booth', folders)).toEqual({
      folderUri: 'file:///booths/home',
      path: 'a.booth',
    });
    expect(filePlace('file:///booths/b/c.booth', folders)).toEqual({ folderUri: 'file:///booths', path: 'b/c.booth' });
  });

  it("is the document's own folder outside every workspace folder", () => {
    expect(filePlace('file:///elsewhere/a%20b.booth', ['file:///booths'])).toEqual({
      folderUri: 'file:///elsewhere',
      path: 'a b.booth',
    });
  });

  it('does not take a folder for one whose name it starts with', () => {
    expect(filePlace('file:///booths-old/a.booth', ['file:///booths']).folderUri).toBe('file:///booths-old');
  });

  it('gives an unsaved document the first folder to read from', () => {
    expect(filePlace('untitled:Untitled-1', ['file:///booths'])).toEqual({
      folderUri: 'file:///booths',
      path: 'Untitled-1',
    });
  });

  it('leads back to the address', () => {
    const uri = 'file:///booths/my%20home/a.booth';
    expect(uriOfPlace(filePlace(uri, ['file:///booths']))).toBe(uri);
  });
});

describe('sameUri', () => {
  it('compares addresses whatever an editor encodes in them', () => {
    expect(sameUri('file:///c%3A/a.booth', 'file:///c:/a.booth')).toBe(true);
    expect(sameUri('file:///a.booth', 'file:///b.booth')).toBe(false);
  });
});
