import type { BoothSpec, Material } from '@boothwright/language';
import type { DefaultUsed } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { openingPieces } from './owned-parts.js';
import { type BuiltPanel, panelsOf } from './panels.js';
import { assumedKerf, assumedSheet, assumedStockLength } from './stock-rows.js';

/** What stands in where the text cuts its faces into panels and does not say how faces meet or in what sizes boards are sold. */
export function buildAssumptions({ booths, budget }: BoothSpec): DefaultUsed[] {
  const booth = booths.find(({ panels }) => panels !== undefined);
  if (booth?.panels === undefined) return [];
  const built: readonly Pick<BuiltPanel, 'pieces'>[] = panelsOf(booth).built;
  const pieces = [...built, ...openingPieces(booth)].flatMap((owner) => owner.pieces);
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
