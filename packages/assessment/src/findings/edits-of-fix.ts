import type { AssemblyLayer, Booth, Sourced, SourceRange } from '@boothwright/language';
import type { FixEdit } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Facts that a fix may change although the text does not give them, by where they stand in the model. */
const factWords: Readonly<Record<string, string>> = {
  perimeterGap: 'gap perimeter',
  thresholdGap: 'gap threshold',
  run: 'run',
  bends: 'bends',
};

/** Material of the catalogue that a proposed layer of generic fibre is written as. */
const writtenFibre = 'mineral-wool-40';

/**
 * The changes of the text that make a fix, from what it changes in the booths: figures, lines that go, facts that were
 * assumed, the order of layers. Empty where no fix can be computed or the text cannot say it line by line.
 */
export function editsOfFix({ fixed }: Found, booths: readonly Booth[]): readonly FixEdit[] {
  if (fixed === undefined) return [];
  const edits = new Map<string, FixEdit>();
  for (const booth of booths) {
    const changes = difference(booth, fixed(booth), '');
    if (changes === null) return [];
    for (const edit of changes) edits.set(`${edit.range.file} ${edit.range.from} ${edit.text}`, edit);
  }
  return [...edits.values()];
}

/** Null for a difference that no such edit can make. */
function difference(before: unknown, after: unknown, key: string): readonly FixEdit[] | null {
  if (before === after) return [];
  if (Array.isArray(before) && Array.isArray(after)) return ofList(before, after, key);
  if (!isObject(before) || !isObject(after)) return null;
  if (isFigure(before) && isFigure(after)) return [ofFigure(before, after.value, key)];
  if (isLayer(before) && isLayer(after) && before.kind !== after.kind) return ofNewLayer(before, after);
  return together(Object.keys({ ...before, ...after }).map((part) => difference(before[part], after[part], part)));
}

function ofList(before: readonly unknown[], after: readonly unknown[], key: string): readonly FixEdit[] | null {
  const isOrder = before.length === after.length && after.every((each) => before.includes(each));
  if (isOrder) {
    return before.flatMap((old, at): FixEdit[] => {
      const come = after[at];
      return come === old || !isPlaced(old) || !isPlaced(come)
        ? []
        : [{ kind: 'move', range: textRange(old.range), text: '', from: textRange(come.range) }];
    });
  }
  if (before.length === after.length) return together(before.map((old, at) => difference(old, after[at], key)));
  const gone = before.filter((old) => !after.includes(old));
  if (gone.length !== before.length - after.length || !gone.every(isPlaced)) return null;
  return gone.map(({ range }) => ({ kind: 'remove', range: textRange(range), text: '', from: null }));
}

function ofFigure(before: Figure, value: number, key: string): FixEdit {
  const text = inWrittenUnit(before, value, key);
  const word = factWords[key];
  return before.origin.kind === 'default' && word !== undefined
    ? { kind: 'fact', range: textRange(before.range), text: `${word} ${text}`, from: null }
    : { kind: 'value', range: textRange(before.range), text, from: null };
}

/** A gap that is filled: the line gives way to one of fibre. */
function ofNewLayer(before: AssemblyLayer, after: AssemblyLayer): readonly FixEdit[] | null {
  if (after.kind !== 'material' || after.material.kind !== 'porous' || before.kind !== 'air') return null;
  if (after.thickness === undefined) return null;
  const text = `${writtenFibre} ${inWrittenUnit(before.thickness, after.thickness.value, '')}`;
  return [{ kind: 'value', range: textRange(before.range), text, from: null }];
}

/** The number in the unit that the writer chose; a length that is no single number comes in millimetres. */
function inWrittenUnit({ value: was, text = '' }: Figure, value: number, key: string): string {
  if (key === 'bends') return String(value);
  const written = /^([\d.]+) ?(mm|cm|m|in|ft)$/.exec(text);
  const [number, unit] = written === null ? [NaN, ''] : [Number(written[1]), written[2] as string];
  const scale = number > 0 && was > 0 ? number / was : NaN;
  return Number.isFinite(scale) ? `${rounded(value * scale)} ${unit}` : `${rounded(value * 1000)} mm`;
}

/** Sizes are cut to a part in a thousand at best. */
function rounded(value: number): number {
  return Number(value.toPrecision(4));
}

type Figure = Sourced<number>;

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function isPlaced(value: unknown): value is { readonly range: SourceRange } {
  return isObject(value) && isObject(value.range);
}

function isFigure(value: object): value is Figure {
  return 'origin' in value && 'range' in value && 'value' in value && typeof value.value === 'number';
}

function isLayer(value: object): value is AssemblyLayer {
  return 'kind' in value && 'range' in value && ['material', 'air', 'frame'].includes(value.kind as string);
}

function together(parts: readonly (readonly FixEdit[] | null)[]): readonly FixEdit[] | null {
  return parts.includes(null) ? null : parts.flatMap((part) => part ?? []);
}
