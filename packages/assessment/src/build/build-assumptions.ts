import type { BoothSpec, Material } from '@boothwright/language';
import type { DefaultUsed } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { airBoxes } from './air-boxes.js';
import { loosePieces } from './owned-parts.js';
import { type BuiltPanel, panelsOf } from './panels.js';
import { stockName } from './stock-name.js';
import { assumedKerf, assumedSheet, assumedStockLength } from './stock-rows.js';

/** What stands in where the text cuts its faces into panels and does not say how faces meet or in what sizes boards are sold. */
export function buildAssumptions(spec: BoothSpec): DefaultUsed[] {
  return [...panelAssumptions(spec), ...boxBoards(spec)];
}

/** Boxes in air paths whose board the text does not say are taken as built of the outermost board of their face. */
function boxBoards({ booths }: BoothSpec): DefaultUsed[] {
  const first = booths.flatMap((booth) => {
    const box = airBoxes(booth).find(({ assumed, board }) => assumed && board !== undefined);
    const vent = booth.vents.find(({ name }) => box?.owner.endsWith(` of ${name}`));
    return box?.board === undefined || vent === undefined ? [] : [{ board: box.board, vent }];
  })[0];
  if (first === undefined) return [];
  const { material, thickness } = first.board;
  return [
    {
      name: 'air-box-board',
      value: stockName({ form: 'sheet', material, widthM: 0, thicknessM: thickness?.value }),
      evidence: 'common-practice',
      source:
        'boxes in air paths are mostly built of what is left of the sheets; here the outermost board of their face',
      range: textRange(first.vent.range),
    },
  ];
}

function panelAssumptions({ booths, budget }: BoothSpec): DefaultUsed[] {
  const booth = booths.find(({ panels }) => panels !== undefined);
  if (booth?.panels === undefined) return [];
  const built: readonly Pick<BuiltPanel, 'pieces'>[] = panelsOf(booth).built;
  const pieces = [...built, ...loosePieces(booth)].flatMap((owner) => owner.pieces);
  const without = (form: 'sheet' | 'stick', size: 'sheet' | 'stockLength') => [
    ...new Set(
      pieces
        .filter((piece) => piece.form === form && piece.material[size] === undefined)
        .map(({ material }): Material['name'] => material.name),
    ),
  ];
  const common = { evidence: 'common-practice', range: textRange(booth.panels.range) };
  const boards = without('sheet', 'sheet');
  const timber = without('stick', 'stockLength');
  return [
    {
      name: 'walls-meet',
      value: 'front and back over the whole width, left and right between them, roof on top, deck between',
      source: 'how a box of panels is mostly put together',
      ...common,
    },
    ...(boards.length === 0
      ? []
      : [
          {
            name: 'sheet-size',
            value: `${assumedSheet.width} m x ${assumedSheet.height} m`,
            source: `a size that most boards are also sold in; ${boards.join(', ')} state none`,
            ...common,
          },
        ]),
    ...(timber.length === 0
      ? []
      : [
          {
            name: 'stock-length',
            value: `${assumedStockLength} m`,
            source: `a length that most yards keep; ${timber.join(', ')} state none`,
            ...common,
          },
        ]),
    ...(budget === undefined
      ? [
          {
            name: 'saw-kerf',
            value: `${assumedKerf} m`,
            source: 'width of the cut of a hand-held circular saw',
            ...common,
          },
        ]
      : []),
  ];
}
