import type { TextRange } from '@boothwright/assessment';

export type SheetSectionId = 'asked' | 'since' | 'loss' | 'ways' | 'noise' | 'decay' | 'modes' | 'air' | 'mass';

/** One fold of the live sheet. */
export interface SheetSection {
  readonly id: SheetSectionId;
  readonly title: string;
  /** What it comes to in a few words, which stand beside the title also while the fold is shut. */
  readonly summary: string;
  /** Our own markup: text of the spec is escaped, and nothing in it needs a style or a script of its own. */
  readonly html: string;
  /** Where the marks lead: the element with `data-mark="2"` belongs to the third of them. */
  readonly marks: readonly TextRange[];
}

/** Places of the text that the marks of one section stand for; the same place has one number. */
export interface Marks {
  readonly ranges: readonly TextRange[];
  of(range: TextRange): number;
}

export function newMarks(): Marks {
  const ranges: TextRange[] = [];
  return {
    ranges,
    of(range) {
      const known = ranges.findIndex(
        ({ file, from, to }) => file === range.file && from === range.from && to === range.to,
      );
      return known >= 0 ? known : ranges.push(range) - 1;
    },
  };
}
