import type { Named, SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, nameOf, titleOf } from './block-reader.js';
import { complain, wholeOf } from './context.js';

/**
 * Reads every line of these keywords that has a name of its own. A second of the same name is reported and left out;
 * the name of one that cannot be read is not missed by whoever refers to it.
 */
export function eachNamed<T>(
  reader: BlockReader,
  keywords: readonly string[],
  read: (statement: Statement, named: Named) => T | undefined,
): T[] {
  const { ctx } = reader;
  const places = new Map<string, SourceRange>();
  const found: T[] = [];
  for (const statement of reader.header.block?.statements ?? []) {
    if (!statement.fact || !keywords.includes(statement.fact.keyword)) continue;
    const named = nameOf(statement);
    if (!named) continue;
    const twin = places.get(named.name);
    if (twin) {
      const article = /^[aeio]/.test(keywords[0]!) ? 'an' : 'a';
      complain(
        ctx,
        'name-twice',
        named.nameRange,
        `${article} ${keywords[0]!} called \`${named.name}\` is already there`,
        { related: [{ range: twin, message: 'the first stands here' }] },
      );
      continue;
    }
    places.set(named.name, named.nameRange);
    const one = read(statement, { ...named, ...titleOf(statement), range: wholeOf(statement) });
    if (one) found.push(one);
    else ctx.broken.add(named.name);
  }
  return found;
}
