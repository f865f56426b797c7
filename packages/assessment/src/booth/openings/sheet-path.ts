import type { Air } from '@boothwright/acoustics';
import type { Assembly, Door, Window } from '@boothwright/language';
import { constructionOf } from '../../assembly/construction.js';
import { transmissionLossOf } from '../../assembly/transmission-loss.js';
import type { Memo } from '../../memo/memo.js';
import { textRange } from '../../text/text-range.js';
import type { BoothPath } from '../booth-path.js';
import type { PartSizes } from '../part-sizes.js';

/** Sound through the leaf of a door or the pane of a window, of its own size. */
export function sheetPath(
  opening: Door | Window,
  kind: 'door' | 'window',
  sheet: Assembly,
  air: Air,
  memo: Memo,
  sizes?: PartSizes,
): BoothPath {
  const size = { width: opening.size.width.value, height: opening.size.height.value };
  const area = size.width * size.height;
  const loss = transmissionLossOf(sheet.layers, size, air, memo, sizes?.(sheet.layers));
  const { layers } = constructionOf(sheet.layers);
  return {
    result: {
      id: `${kind}:${opening.name}`,
      kind,
      name: opening.name,
      range: textRange(opening.nameRange),
      areaM2: area,
      transmissionLossDb: loss.total,
      notes: [],
    },
    halfWidth: loss.halfWidth,
    elements: layers.length === 0 ? [{ kind: 'leak', area, depth: 0 }] : [{ kind: 'wall', layers, area, size }],
    leak: layers.length === 0,
  };
}
