import type { Air } from '@boothwright/acoustics';
import type { Sourced, SourceRange } from '@boothwright/language';
import { nominalHz } from '../../bands/grid.js';
import type { Memo } from '../../memo/memo.js';
import type { PathResult } from '../../result/result-document.js';
import { textRange } from '../../text/text-range.js';
import { combinedHalfWidth } from '../../uncertainty/combined.js';
import { halfWidthAt, leakHalfWidth } from '../../uncertainty/model-uncertainty.js';
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
  return {
    result: { id, kind, name, range: textRange(range), areaM2: area, transmissionLossDb: loss },
    halfWidth: nominalHz.map((nominal) => combinedHalfWidth(halfWidthAt(leakHalfWidth, nominal), gapSpread(gap))),
    elements: [{ kind: 'slit', length, gap: gap.value, depth }],
    leak: true,
  };
}

/** A stated tolerance of the gap moves the open area in proportion, and with it the energy, dB. */
function gapSpread({ value, tolerance }: Sourced<number>): number {
  return tolerance === undefined ? 0 : 10 * Math.log10(1 + tolerance / value);
}
