import type { Fact, Part } from './shape.js';

/**
 * A line of the language as a reader of a reference wants it: fixed words as they are, what the user fills in in
 * capitals, what may be left out in brackets. `shapeText(air)` is `air LENGTH`.
 */
export function shapeText(fact: Fact): string {
  const parts = fact.parts.map(partText).filter((text) => text !== '');
  const clause = fact.sourced ? ['[from [KIND] "TEXT"]'] : [];
  const block = fact.block ? [fact.block.required ? '{ … }' : '[{ … }]'] : [];
  return [...(fact.keyword === '' ? [] : [fact.keyword]), ...parts, ...clause, ...block].join(' ');
}

/** One part of `shapeText`; that of a part within another stands in its text. */
export function partText(part: Part): string {
  switch (part.kind) {
    case 'quantity':
      return part.dimension.toUpperCase();
    case 'amount':
      return 'LENGTH | MASS-PER-AREA';
    case 'any-value':
    case 'tokens':
      return 'VALUE';
    case 'size': {
      const size = part.axes.map((axis) => axis.toUpperCase()).join(' x ');
      return part.single ? `(${size} | ${part.single.toUpperCase()})` : size;
    }
    case 'position':
      return part.axes.map((axis) => axis.toUpperCase()).join(', ');
    case 'choice':
      return part.options.length > 1 ? `(${part.options.join(' | ')})` : part.options.join('');
    case 'reference':
      return part.to.map((kind) => kind.toUpperCase()).join(' | ');
    case 'new-name':
      return 'NAME';
    case 'title':
      return '["TITLE"]';
    case 'text':
      return '"TEXT"';
    case 'literal':
      return part.word;
    case 'optional':
      return `[${part.parts.map(partText).join(' ')}]`;
    case 'either':
      return `(${part.branches.map((branch) => branch.map(partText).join(' ')).join(' | ')})`;
    case 'face':
      return 'FACE';
    case 'faces':
      return 'FACE, …';
    case 'bands':
      return `(octave | third) FREQUENCY ${part.dimension === 'count' ? 'NUMBER' : part.dimension.toUpperCase()}, …`;
    case 'pairs':
      return `${part.first.toUpperCase()} ${part.second.toUpperCase()}, …`;
    case 'clock':
      return 'TIME-OF-DAY';
    case 'hours':
      return 'TIME-OF-DAY to TIME-OF-DAY, …';
    case 'price':
      return part.per ? 'MONEY [per (m2 | m | m3 | kg | sheet | piece)]' : 'MONEY';
    case 'nominal':
      return 'NOMINAL';
    case 'path':
      return 'PATH';
  }
}
