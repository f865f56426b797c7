import type { BoothResult } from '@boothwright/assessment';
import type { Statement } from '@boothwright/language';
import type { View } from '../view.js';

export type NamedBooth = readonly [name: string, booth: BoothResult];

/** The booth in whose block a line stands; all booths for a line outside of every one. */
export function boothsAt({ results, file }: View, statements: readonly Statement[]): readonly NamedBooth[] {
  const all = Object.entries(results?.booths ?? {});
  const [block] = statements;
  if (block?.keyword.word !== 'booth') return all;
  return all.filter(([, { range }]) => range.file === file && range.from >= block.from && range.from <= block.headerTo);
}
