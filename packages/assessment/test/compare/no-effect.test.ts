import { format } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { compared, example, small } from './compared.js';

// A text that says the same in other words, other order or under other names has no effect.

const examples = [
  'thin-gap-wall/thin-gap-wall.booth',
  'tram-alcove/first-draft.booth',
  'tram-alcove/tram-alcove.booth',
  'under-the-nursery/under-the-nursery.booth',
];

/** Blocks at the top of a text, each with the comments above it. */
function blocks(text: string): string[] {
  const found: string[] = [];
  let current: string[] = [];
  let depth = 0;
  for (const line of text.split('\n')) {
    current.push(line);
    const bare = line.replace(/#.*$/, '').replace(/"[^"]*"/g, '""');
    depth += (bare.match(/\{/g) ?? []).length - (bare.match(/\}/g) ?? []).length;
    if (depth === 0 && bare.trim() !== '') {
      found.push(current.join('\n'));
      current = [];
    }
  }
  return [...found, current.join('\n')];
}

/** Names that the text gives to its own materials and build-ups. */
const ownNames = (text: string) => [...text.matchAll(/^(?:material|assembly)\s+([\w-]+)/gm)].map((found) => found[1]!);

/** Other blanks, other line ends, other places of the brackets. */
const spread = (text: string) =>
  text
    .split('\n')
    .map((line) => line.replace(/^( *)(.*)$/, '$1$1   $2  '))
    .join('\r\n\r\n');

describe.each(examples)('%s', (name) => {
  const text = example(name);

  it('compares with itself as no difference', () => {
    expect(compared(text, text)).toMatchObject({ sameFacts: true, sameEffect: true, renamed: [] });
  });

  it('compares with another layout as no difference', () => {
    expect(spread(text)).not.toBe(format(spread(text)));
    expect(compared(format(text), spread(text))).toMatchObject({ sameFacts: true, sameEffect: true, renamed: [] });
  });

  it('compares with its blocks in another order as no difference', () => {
    const parts = blocks(text);
    const turned = [...parts].reverse().join('\n');
    expect(turned).not.toBe(text);
    const { facts, requirements, effects, bands, findings, cautions, sameEffect } = compared(text, turned);
    expect({ facts, requirements, effects, bands, findings, cautions }).toEqual({
      facts: [],
      requirements: [],
      effects: [],
      bands: [],
      findings: { gained: [], lost: [], changed: [] },
      cautions: { gained: [], lost: [], changed: [] },
    });
    expect(sameEffect).toBe(true);
  });

  it('compares under other names of materials and build-ups as no difference, and tells the names', () => {
    const names = ownNames(text);
    expect(names.length).toBeGreaterThan(0);
    const renamed = names.reduce(
      (so, one) =>
        so.replace(new RegExp(`(?<![\\w-])${one}(?![\\w-])(?=[^"\\n]*(?:"[^"\\n]*"[^"\\n]*)*$)`, 'gm'), `${one}-too`),
      text,
    );
    const comparison = compared(text, renamed);
    expect(comparison.facts).toEqual([]);
    expect(comparison.sameEffect).toBe(true);
    expect(comparison.renamed.map((one) => one.new).sort()).toEqual(names.map((one) => `${one}-too`).sort());
  });
});

it('takes a unit, a sum and a `let` for the figure that they say', () => {
  const other = small
    .replace('assembly shell', 'let cavity = 7 cm\n\nassembly shell')
    .replace('frame 45 mm x 70 mm', 'frame 4.5 cm x cavity')
    .replace('12.5 mm', '0.0125 m');
  expect(compared(small, other)).toMatchObject({ sameFacts: true, sameEffect: true });
});

it('takes two build-ups that swap their names for what they are', () => {
  const swapped = small
    .replaceAll('shell', 'deck#')
    .replaceAll(/deck(?!#)/g, 'shell')
    .replaceAll('deck#', 'deck');
  expect(compared(small, swapped)).toMatchObject({
    sameFacts: true,
    sameEffect: true,
    renamed: [
      { kind: 'assembly', old: 'shell', new: 'deck' },
      { kind: 'assembly', old: 'deck', new: 'shell' },
    ],
  });
});
