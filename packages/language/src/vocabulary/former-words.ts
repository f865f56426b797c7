import type { BlockName } from './shape.js';

/** What a keyword was called in an earlier version of the language. */
export interface FormerWord {
  readonly block: BlockName;
  readonly was: string;
  /** The keyword of today, one word or two. */
  readonly now: string;
  /** Version of the language that brought the new word. */
  readonly since: string;
}

/**
 * Keywords that were renamed. A line with the older word is read as before, and told with a hint that an editor can carry
 * out. A word leaves the list, and is then unknown, with the next major version. None was renamed so far.
 */
export const formerWords: FormerWord[] = [];

export function formerWord(block: BlockName, word: string): FormerWord | undefined {
  return formerWords.length === 0 ? undefined : formerWords.find((each) => each.block === block && each.was === word);
}
