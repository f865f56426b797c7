import { defaults, type Statement } from '@boothwright/language';
import { keywordHover } from '@boothwright/presentation';

/** What the first word of a line means; nothing for a word that is no fact, or a layer, which has a name instead. */
export function keywordSection({ fact }: Statement): string | undefined {
  return fact === undefined || fact.keyword === '' ? undefined : keywordHover(fact, defaults);
}
