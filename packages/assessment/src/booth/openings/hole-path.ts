import type { Air } from '@boothwright/acoustics';
import type { Hole } from '@boothwright/language';
import { nominalHz } from '../../bands/grid.js';
import type { Memo } from '../../memo/memo.js';
import { textRange } from '../../text/text-range.js';
import { halfWidthAt, leakHalfWidth } from '../../uncertainty/model-uncertainty.js';
import type { BoothPath } from '../booth-path.js';
import { holeBandLoss } from './hole-loss.js';
import { closedBelow } from './slit-path.js';

/** Sound through a round hole; undefined when it is closed. */
export function holePath(hole: Hole, air: Air, memo: Memo): BoothPath | undefined {
  const diameter = hole.diameter.value;
  if (diameter < closedBelow) return undefined;
  const depth = hole.depth.value;
  const area = (Math.PI / 4) * diameter ** 2;
  return {
    result: {
      id: `hole:${hole.name}`,
      kind: 'hole',
      name: hole.name,
      range: textRange(hole.nameRange),
      areaM2: area,
      transmissionLossDb: holeBandLoss({ radius: diameter / 2, depth }, air, memo),
      notes: [],
    },
    halfWidth: nominalHz.map((nominal) => halfWidthAt(leakHalfWidth, nominal)),
    elements: [{ kind: 'leak', area, depth }],
    leak: true,
  };
}
