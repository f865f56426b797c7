import { soundTransmissionClass } from '@boothwright/acoustics';
import type { AssemblyResult, ResultDocument } from '@boothwright/assessment';
import { chartTransmissionLoss } from '../../charts/chart-transmission-loss.js';
import { bandName, formatFrequency } from '../../numbers/format-frequency.js';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { ratingRange } from '../../numbers/rating-range.js';
import { type Block, blocks, figureColumn, heading, list, table } from '../blocks.js';
import { type Figures, reportChart, withTable } from '../figures.js';

/** What each build-up keeps out by itself, with its range. */
export function assemblyBlocks({ assemblies, grid }: ResultDocument, figures: Figures): Block[] {
  const all = Object.entries(assemblies);
  if (all.length === 0) return [];
  return blocks(
    heading('Build-ups'),
    table(
      'Each build-up by itself, layers from outside to inside',
      [
        { head: 'name' },
        { head: 'layers' },
        figureColumn('kg/m²'),
        figureColumn('mm'),
        figureColumn('STC'),
        figureColumn('Rw (C; Ctr)'),
      ],
      all.map(([name, each]) => {
        const { ratings } = each;
        const range = ratingRange(each);
        return [
          each.title ? `${name}, ${each.title}` : name,
          each.layers.map((layer) => layer.text).join('; '),
          formatFigures(each.surfaceMassKgPerM2),
          formatFigures(each.thicknessM * 1000),
          `${ratings.stc} (${range.stc[0]} to ${range.stc[1]})`,
          `${ratings.rw} (${formatNumber(ratings.c)}; ${formatNumber(ratings.ctr)})`,
        ];
      }),
    ),
    list(all.map(([name, each]) => resonanceText(name, each))),
    ...all.flatMap(([name, each]) => lossFigure(name, each, grid.nominalHz, figures)),
  );
}

function resonanceText(name: string, { resonancesHz, criticalFrequenciesHz }: AssemblyResult): string | undefined {
  const parts = [
    resonancesHz.length > 0 &&
      `resonance on the air between the leaves at ${resonancesHz.map(formatFrequency).join(', ')}`,
    criticalFrequenciesHz.length > 0 &&
      `coincidence of ${criticalFrequenciesHz.map(({ layer, hz }) => `${layer} at ${formatFrequency(hz)}`).join(', ')}`,
  ].filter(Boolean);
  return parts.length === 0 ? undefined : `${name}: ${parts.join('; ')}`;
}

function lossFigure(name: string, result: AssemblyResult, nominalHz: readonly number[], figures: Figures): Block[] {
  const rating = soundTransmissionClass([...result.transmissionLossDb]);
  // The contour covers 125 Hz to 4 kHz; the bands below and above have none.
  const first = nominalHz.indexOf(125);
  const contour = nominalHz.map((_, band) => rating.contour[band - first] ?? null);
  const caption = `Transmission loss of ${name} by third octave, with its range and the contour of STC ${result.ratings.stc}`;
  return withTable(
    figures,
    chartTransmissionLoss({
      title: caption,
      description: `STC ${result.ratings.stc}, Rw ${result.ratings.rw}, ${formatFigures(result.surfaceMassKgPerM2)} kg/m²`,
      nominalHz,
      lossDb: result.transmissionLossDb,
      rangeDb: result.transmissionLossRangeDb,
      contour: { label: `STC ${result.ratings.stc}`, valuesDb: contour },
      size: reportChart,
    }),
    caption,
    table(
      `Transmission loss of ${name}, dB`,
      [
        figureColumn('Hz'),
        figureColumn('loss'),
        figureColumn('from'),
        figureColumn('to'),
        figureColumn(`STC ${result.ratings.stc}`),
      ],
      nominalHz.map((hz, band) => [
        bandName(hz),
        formatNumber(result.transmissionLossDb[band] ?? Number.NaN, 1),
        formatNumber(result.transmissionLossLowDb[band] ?? Number.NaN, 1),
        formatNumber(result.transmissionLossHighDb[band] ?? Number.NaN, 1),
        contour[band] === null || contour[band] === undefined ? '' : formatNumber(contour[band]),
      ]),
    ),
  );
}
