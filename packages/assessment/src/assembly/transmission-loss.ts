import { type Air, type PanelSize, wallTransmissionLoss } from '@boothwright/acoustics';
import type { AssemblyLayer } from '@boothwright/language';
import { nominalHz, perBand } from '../bands/grid.js';
import type { Memo } from '../memo/memo.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { halfWidthAt, practicalCeilingDb, transmissionLossHalfWidth } from '../uncertainty/model-uncertainty.js';
import { propagatedHalfWidth } from '../uncertainty/propagated.js';
import { type Construction, constructionOf } from './construction.js';
import { toleranceVariants } from './tolerance-variants.js';

export interface TransmissionLoss {
  readonly total: readonly number[];
  readonly airborne: readonly number[];
  readonly connections: readonly number[] | null;
  /** dB per band: the model's half-width widened by the stated tolerances. */
  readonly halfWidth: readonly number[];
}

/** Transmission loss of a build-up of this size in third-octave bands, with its range. Memoised on physical inputs. */
export function transmissionLossOf(
  assembly: readonly AssemblyLayer[],
  size: PanelSize,
  air: Air,
  memo: Memo,
): TransmissionLoss {
  const construction = constructionOf(assembly);
  const curve = curveOf(construction, size, air, memo);
  const spread = propagatedHalfWidth(
    toleranceVariants(assembly).map(({ up, down }) => ({
      up: curveOf(constructionOf(up), size, air, memo).total,
      down: curveOf(constructionOf(down), size, air, memo).total,
    })),
    nominalHz.length,
  );
  const table = transmissionLossHalfWidth[construction.kind];
  return {
    ...curve,
    halfWidth: spread.map((width, band) =>
      combinedHalfWidth(
        width,
        halfWidthAt(table, nominalHz[band] as number),
        Math.max(0, (curve.total[band] as number) - practicalCeilingDb),
      ),
    ),
  };
}

type Curve = Omit<TransmissionLoss, 'halfWidth'>;

function curveOf(construction: Construction, size: PanelSize, air: Air, memo: Memo): Curve {
  const { layers, connections } = construction;
  if (layers.length === 0) {
    const open = perBand(() => 0);
    return { total: open, airborne: open, connections: null };
  }
  return memo.of(`tl ${JSON.stringify([layers, connections, size, air])}`, () =>
    wallTransmissionLoss({ layers, connections }, { air, field: { kind: 'finite', size } }),
  );
}
