import type { Air } from '@boothwright/acoustics';
import type { Sourced, SourceRange } from '@boothwright/language';
import { nominalHz } from '../../bands/grid.js';
import type { Memo } from '../../memo/memo.js';
import type { PathResult } from '../../result/result-document.js';
import { textRange } from '../../text/text-range.js';
import { combinedHalfWidth } from '../../uncertainty/combined.js';
import { halfWidthAt, leakHalfWidth } from '../../uncertainty/model-uncertainty.js';
import { propagatedHalfWidth } from '../../uncertainty/propagated.js';
import type { BoothPath } from '../booth-path.js';
import { slitBandLoss } from './slit-loss.js';

export interface LongGap {
  readonly id: string;
  readonly kind: PathResult['kind'];
  readonly name: string;
  readonly range: SourceRange;
  /** m */
  readonly length: number;
  readonly gap: Sourced<number>;
  /** m, through the wall */
  readonly depth: number;
  /** `edge` where a gap runs along a corner, which doubles the sound at its mouth. */
  readonly position: 'mid' | 'edge';
}

/** A gap narrower than this is closed, m: nothing built is known to a micrometre. */
export const closedBelow = 1e-6;

/** Sound through a long narrow gap; undefined when it is closed. */
export function slitPath(
  { id, kind, name, range, length, gap, depth, position }: LongGap,
  air: Air,
  memo: Memo,
): BoothPath | undefined {
  if (gap.value < closedBelow || length <= 0) return undefined;
  const loss = slitBandLoss({ gap: gap.value, depth, position }, air, memo);
  const area = length * gap.value;
  const spread = gapSpread(gap, depth, position, air, memo);
  return {
    result: { id, kind, name, range: textRange(range), areaM2: area, transmissionLossDb: loss, notes: [] },
    halfWidth: nominalHz.map((nominal, band) =>
      combinedHalfWidth(halfWidthAt(leakHalfWidth, nominal), spread[band] as number),
    ),
    elements: [{ kind: 'slit', length, gap: gap.value, depth, position }],
    leak: true,
  };
}

/** The lower end of a gap with its tolerance is held at this share of it: a gap that closes has no finite loss. */
export const leastShareOfGap = 0.5;

/**
 * Half-width that a stated tolerance of the gap causes, dB by band: the slit computed again with the wider and the
 * narrower gap, both referred to the area of the stated one. With friction it is far steeper than the area alone.
 */
function gapSpread(
  { value, tolerance }: Sourced<number>,
  depth: number,
  position: LongGap['position'],
  air: Air,
  memo: Memo,
): number[] {
  const at = (gap: number) =>
    slitBandLoss({ gap, depth, position }, air, memo).map((loss) => loss - 10 * Math.log10(gap / value));
  const alternatives =
    tolerance === undefined || tolerance <= 0
      ? []
      : [{ up: at(value + tolerance), down: at(Math.max(value - tolerance, leastShareOfGap * value)) }];
  return propagatedHalfWidth(alternatives, nominalHz.length);
}
