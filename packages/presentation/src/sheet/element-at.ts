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

/**
 * What the cursor is on: the build-up that is named there, else the way in or the build-up in whose lines it stands, else
 * the booth as a whole.
 */
export function elementAt(
  { assemblies }: Pick<ResultDocument, 'assemblies'>,
  boothName: string,
  booth: BoothResult,
  {
    file,
    offset,
    assembly,
  }: { readonly file: string; readonly offset: number; readonly assembly?: string | undefined },
): SheetElement {
  const holds = (range: TextRange) => range.file === file && range.from <= offset && offset <= range.to;
  const named = assembly ?? Object.entries(assemblies).find(([, { range }]) => holds(range))?.[0];
  const found = named === undefined ? undefined : assemblies[named];
  if (named !== undefined && found !== undefined) return ofAssembly(named, found);
  // The innermost; the leaf of a door before its seals, which stand in the same lines.
  const path = booth.paths
    .filter((each) => holds(each.range))
    .toSorted((a, b) => a.range.to - a.range.from - (b.range.to - b.range.from))[0];
  if (path !== undefined) {
    return {
      name: pathWords(path),
      note: 'as built in: referred to its own area, without the walls around it',
      range: path.range,
      lossDb: path.transmissionLossDb,
      rating: ratingOf(path.transmissionLossDb),
    };
  }
  return {
    name: boothName,
    note: 'the whole booth: every face, opening and gap together; put the cursor on a build-up or an opening to see it alone',
    range: booth.range,
    lossDb: booth.compositeTransmissionLossDb,
    rating: ratingOf(booth.compositeTransmissionLossDb),
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
