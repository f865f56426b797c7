import { soundTransmissionClass, weightedSoundReduction } from '@boothwright/acoustics';
import type { BoothResult, ResultDocument, TextRange } from '@boothwright/assessment';
import { pathWords } from '../numbers/path-words.js';
import { ratingRange } from '../numbers/rating-range.js';

/** Something with a transmission loss: a build-up, a way in, or the booth as a whole. */
export interface SheetElement {
  readonly name: string;
  readonly note: string;
  readonly range: TextRange;
  readonly lossDb: readonly number[];
  /** Half-width of the range by band, and its two ends; not known for a way in and for the whole. */
  readonly spread?: {
    readonly rangeDb: readonly number[];
    readonly lowDb: readonly number[];
    readonly highDb: readonly number[];
  };
  readonly rating: {
    readonly stc: number;
    readonly stcRange?: readonly [number, number];
    readonly rw: number;
    readonly rwRange?: readonly [number, number];
    /** From 125 Hz. */
    readonly contour: readonly number[];
  };
}

/** Where the cursor stands: the build-up that is named there, and the headers of the blocks and lines around it, the innermost first. */
export interface SheetCursor {
  readonly file: string;
  readonly assembly: string | undefined;
  readonly headers: readonly { readonly from: number; readonly to: number }[];
}

/**
 * What the cursor is on: the build-up that is named there, else the way in or the build-up that the innermost of the blocks
 * around it declares, else the booth as a whole.
 */
export function elementAt(
  { assemblies }: Pick<ResultDocument, 'assemblies'>,
  boothName: string,
  booth: BoothResult,
  { file, assembly, headers }: SheetCursor,
): SheetElement {
  const declares = (header: { readonly from: number; readonly to: number }) => (range: TextRange) =>
    range.file === file && header.from <= range.from && range.from <= header.to;
  const named = assembly === undefined ? undefined : assemblies[assembly];
  if (assembly !== undefined && named !== undefined) return ofAssembly(assembly, named);
  for (const header of headers) {
    const isHere = declares(header);
    // The leaf of a door comes before its seals, which have the same place.
    const path = booth.paths.find(({ range }) => isHere(range));
    if (path !== undefined) return ofPath(path);
    const around = Object.entries(assemblies).find(([, { range }]) => isHere(range));
    if (around !== undefined) return ofAssembly(...around);
  }
  return {
    name: boothName,
    note: 'the whole booth: every face, opening and gap together; put the cursor on a build-up or an opening to see it alone',
    range: booth.range,
    lossDb: booth.compositeTransmissionLossDb,
    rating: ratingOf(booth.compositeTransmissionLossDb),
  };
}

function ofPath(path: BoothResult['paths'][number]): SheetElement {
  return {
    name: pathWords(path),
    note: ['as built in, referred to its own area', ...path.notes].join('; '),
    range: path.range,
    lossDb: path.transmissionLossDb,
    rating: ratingOf(path.transmissionLossDb),
  };
}

function ofAssembly(name: string, result: ResultDocument['assemblies'][string]): SheetElement {
  const range = ratingRange(result);
  return {
    name,
    note: result.layers.map(({ text }) => text).join(' · '),
    range: result.range,
    lossDb: result.transmissionLossDb,
    spread: {
      rangeDb: result.transmissionLossRangeDb,
      lowDb: result.transmissionLossLowDb,
      highDb: result.transmissionLossHighDb,
    },
    rating: { ...ratingOf(result.transmissionLossDb), stcRange: range.stc, rwRange: range.rw },
  };
}

function ratingOf(lossDb: readonly number[]): SheetElement['rating'] {
  const { stc, contour } = soundTransmissionClass([...lossDb]);
  return { stc, contour, rw: weightedSoundReduction([...lossDb]).rw };
}
