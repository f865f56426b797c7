import {
  type Air,
  asTransmissionLoss,
  type BandSampling,
  type TransmissionLoss as LossByBand,
  type PanelSize,
  wallTransmissionLosses,
} from '@boothwright/acoustics';
import type { AssemblyLayer } from '@boothwright/language';
import { nominalHz, perBand } from '../bands/grid.js';
import type { Memo } from '../memo/memo.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { halfWidthAt, practicalCeilingDb, transmissionLossHalfWidth } from '../uncertainty/model-uncertainty.js';
import { propagatedHalfWidth } from '../uncertainty/propagated.js';
import { type Construction, constructionOf } from './construction.js';
import { referencePanel } from './reference-panel.js';
import { toleranceVariants } from './tolerance-variants.js';

export interface TransmissionLoss {
  readonly total: LossByBand;
  readonly airborne: LossByBand;
  readonly connections: LossByBand | null;
  /** dB per band: the model's half-width widened by the stated tolerances and by what lies above the practical ceiling. */
  readonly halfWidth: readonly number[];
  /** dB per band: the model's half-width widened by the stated tolerances alone. */
  readonly modelHalfWidth: readonly number[];
  /** dB per band: ends of the range. Above the practical ceiling the value itself is the upper end. */
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/**
 * Transmission loss of a build-up of this size in third-octave bands, with its range. Memoised on physical inputs.
 * `together` lists the sizes, this one among them, in which the same build-up is needed: they are worked out in one go.
 */
export function transmissionLossOf(
  assembly: readonly AssemblyLayer[],
  size: PanelSize,
  air: Air,
  memo: Memo,
  together: readonly PanelSize[] = [size],
): TransmissionLoss {
  const construction = constructionOf(assembly);
  const at = together.findIndex(({ width, height }) => width === size.width && height === size.height);
  const sizes = at < 0 ? [size] : together;
  const sampling = size === referencePanel ? undefined : partSampling;
  const curve = curvesOf(construction, sizes, air, memo, sampling)[Math.max(0, at)] as Curve;
  const spread = toleranceSpread(assembly, air, memo);
  const table = transmissionLossHalfWidth[construction.kind];
  const modelHalfWidth = spread.map((width, band) =>
    combinedHalfWidth(width, halfWidthAt(table, nominalHz[band] as number)),
  );
  const { total } = curve;
  const halfWidth = modelHalfWidth.map((width, band) =>
    combinedHalfWidth(width, Math.max(0, (total[band] as number) - practicalCeilingDb)),
  );
  return {
    ...curve,
    halfWidth,
    modelHalfWidth,
    // No wall lets through more than arrives.
    low: total.map((loss, band) => Math.min(loss, Math.max(0, loss - (halfWidth[band] as number)))),
    high: total.map((loss, band) =>
      Math.max(loss, Math.min(loss, practicalCeilingDb) + (modelHalfWidth[band] as number)),
    ),
  };
}

type Curve = Pick<TransmissionLoss, 'total' | 'airborne' | 'connections'>;

/**
 * Frequencies per band for the effect of tolerances. A range needs no tenth of a decibel, and a text with a tolerance on
 * every figure needs some dozens of curves.
 */
const toleranceSampling: BandSampling = { samplesPerBand: 2 };

/**
 * For the parts of a booth, whose range is some 5 dB: within half a decibel of the last digit, mostly within a tenth, also
 * where an empty gap resonates. Build-ups at the reference size, from which ratings are read, are followed more closely.
 */
const partSampling: BandSampling = { bandTolerance: 0.03 };

/** Half-width that the stated tolerances cause, dB by band, at the reference size: it hardly depends on the size. */
function toleranceSpread(assembly: readonly AssemblyLayer[], air: Air, memo: Memo): number[] {
  const curve = (layers: readonly AssemblyLayer[]) =>
    (curvesOf(constructionOf(layers), [referencePanel], air, memo, toleranceSampling)[0] as Curve).total;
  const alternatives = toleranceVariants(assembly).map(({ up, down }) => ({ up: curve(up), down: curve(down) }));
  return propagatedHalfWidth(alternatives, nominalHz.length);
}

/** One curve for each size; the sizes are part of the key, so that a curve never depends on what was asked before. */
function curvesOf(
  construction: Construction,
  sizes: readonly PanelSize[],
  air: Air,
  memo: Memo,
  sampling: BandSampling = {},
): readonly Curve[] {
  const { layers, connections, separateFrames } = construction;
  if (layers.length === 0) {
    const open = asTransmissionLoss(perBand(() => 0));
    return sizes.map(() => ({ total: open, airborne: open, connections: null }));
  }
  return memo.of(`tl ${JSON.stringify([layers, connections, separateFrames, sizes, air, sampling])}`, () =>
    wallTransmissionLosses({ layers, connections, separateFrames }, { air, ...sampling }, sizes),
  );
}
