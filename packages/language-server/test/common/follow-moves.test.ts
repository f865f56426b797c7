import { describe, expect, it } from 'vitest';
import { followMoves } from '../../src/common/follow-moves.js';

const folder = 'file:///booths';
const texts: Record<string, string> = {
  'main.booth': 'use catalog\nuse "./parts/doors.booth"\nuse "./parts/walls.booth"\n',
  'parts/doors.booth': 'use "./walls.booth"\nassembly leaf { air 5 mm }\n',
  'parts/walls.booth': 'let a = 1 mm\n',
};
const files = Object.entries(texts).map(([path, text]) => ({ uri: `${folder}/${path}`, text }));

/** Each changed line, by the file in which it stands. */
function followed(...moves: [string, string][]): Record<string, string[]> {
  const edit = followMoves(
    files,
    moves.map(([from, to]) => ({ oldUri: `${folder}/${from}`, newUri: `${folder}/${to}` })),
    [folder],
  );
  return Object.fromEntries(
    Object.entries(edit?.changes ?? {}).map(([uri, edits]) => [
      uri.slice(folder.length + 1),
      edits.map(({ range, newText }) => `${range.start.line}: ${newText}`),
    ]),
  );
}

describe('following moved files', () => {
  it('leads every use to the new place, and those of the moved file from it', () => {
    expect(followed(['parts/doors.booth', 'doors.booth'])).toEqual({
      'main.booth': ['1: ./doors.booth'],
      'parts/doors.booth': ['0: ./parts/walls.booth'],
    });
  });

  it('leaves a use between two files that move together', () => {
    expect(followed(['parts', 'kit/parts'])).toEqual({
      'main.booth': ['1: ./kit/parts/doors.booth', '2: ./kit/parts/walls.booth'],
    });
  });

  it('has nothing to do where no use is concerned', () => {
    expect(followed(['main.booth', 'new.booth'])).toEqual({});
    expect(followMoves(files, [], [folder])).toBeNull();
  });

  it('leaves a use of a file that moves out of the folder: the text says then that it is missing', () => {
    const edit = followMoves(
      files,
      [{ oldUri: `${folder}/parts/walls.booth`, newUri: 'file:///else/walls.booth' }],
      [folder],
    );
    expect(edit).toBeNull();
  });
});
