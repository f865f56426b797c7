import { describe, expect, it } from 'vitest';
import { useCompletion, usePathAt } from '../../src/common/use-completion.js';
import { edited, markedText, openSpecs } from '../helpers/index.js';

const files = ['main.booth', 'parts.booth', 'deep/doors.booth', 'deep/main.booth', 'note.txt'].map((path) => ({
  uri: `file:///booths/${path}`,
  text: `# ${path}\n`,
}));

/** The paths offered at the cursor, and the text after the first of them was taken. */
function offered(path: string, marked: string): { paths: string[]; first: string } | undefined {
  const { text, cursors } = markedText(marked);
  const view = openSpecs({ [path]: text }).view(path);
  const place = usePathAt(view, view.lines.positionAt(cursors[0]!));
  if (place === undefined) return undefined;
  const items = useCompletion(view, place, files);
  const { textEdit } = items[0]!;
  if (textEdit === undefined || !('range' in textEdit)) throw new Error('the first item has no edit');
  return { paths: items.map(({ label }) => label), first: edited(view, [textEdit]) };
}

describe('completion of the path of a use', () => {
  it('offers the other specs, the nearest first, and fills the quotes', () => {
    expect(offered('main.booth', 'use "<|>"\n')).toEqual({
      paths: ['./parts.booth', './deep/doors.booth', './deep/main.booth'],
      first: 'use "./parts.booth"\n',
    });
  });

  it('leads up where the spec lies deeper, and ends at the line where a quote is missing', () => {
    expect(offered('deep/main.booth', 'use "./d<|>\nlet a = 1 mm\n')).toEqual({
      paths: ['./doors.booth', '../main.booth', '../parts.booth'],
      first: 'use "./doors.booth\nlet a = 1 mm\n',
    });
  });

  it('is nothing outside the quotes, and in other texts', () => {
    for (const text of [
      'use <|>"./a.booth"\n',
      'use "./a.booth"<|>\n',
      'assembly a "<|>" { air 5 mm }\n',
      '# use "<|>"\n',
    ]) {
      expect(offered('main.booth', text)).toBeUndefined();
    }
  });
});
