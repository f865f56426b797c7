import type { ValueEntry } from '../check/check-result.js';

/** The values that stand at a place, the innermost first; a default stands on the header of the block that lacks it. */
export function valueAt(values: readonly ValueEntry[], file: string, offset: number): readonly ValueEntry[] {
  return values
    .filter(({ value: { range } }) => range.file === file && range.from <= offset && offset <= range.to)
    .sort((a, b) => a.value.range.to - a.value.range.from - (b.value.range.to - b.value.range.from));
}
