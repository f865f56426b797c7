import { soundTransmissionClass } from '@boothwright/acoustics';
import type { AssemblyResult, DefaultUsed } from '@boothwright/assessment';
import { chartTransmissionLoss } from '../charts/chart-transmission-loss.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { bandName, formatFrequency } from '../numbers/format-frequency.js';
import { formatNumber } from '../numbers/format-number.js';
import { octaveCentres, octaveLoss, thirdsUnderOctaves } from '../numbers/octaves.js';
import { ratingRange } from '../numbers/rating-range.js';
import { ratingRangeText, ratingText } from '../numbers/rating-text.js';
import { shownRatings } from '../numbers/shown.js';
import { panelSizeText, pricePerAreaText, surfaceMassText, thicknessText } from '../numbers/trade-units.js';
import { defaultLines, defaultsWithin } from './defaults-within.js';
import type { HoverContext } from './hover-context.js';
import { bullets, escapeMarkdown, link, paragraphs, table } from './markdown.js';

export interface AssemblyHoverContext extends HoverContext {
  readonly defaults?: readonly DefaultUsed[];
}

/** Ratings with their range, picture, band table, resonances, models and defaults of one assembly. */
export function assemblyHover(name: string, result: AssemblyResult, context: AssemblyHoverContext): string {
  const defaults = defaultsWithin(context.defaults ?? [], result.range);
  return paragraphs(
    `**${escapeMarkdown(name)}**${result.title ? ` ${escapeMarkdown(result.title)}` : ''} (layers from outside to inside)`,
    headline(result),
    picture(name, result, context.nominalHz),
    bandTable(result),
    resonances(result),
    `For a panel of ${panelSizeText(result.panel)}, without its openings and without what goes round it.`,
    layers(result, context),
    defaults.length > 0 && `Assumed:\n${defaultLines(defaults)}`,
  );
}

function headline(result: AssemblyResult): string {
  const { stc, stcGovernedBy, rw, c, ctr } = result.ratings;
  const range = ratingRange(result);
  const governed = stcGovernedBy === 'single-band' ? ', set by a single band' : '';
  const price = result.pricePerM2;
  return [
    `**STC ${stc}** (${range.stc[0]} to ${range.stc[1]}${governed})`,
    ...shownRatings()
      .filter((name) => name !== 'STC' && name !== 'Rw')
      .map((name) => `**${ratingText(name, result)}** (${ratingRangeText(name, result)})`),
    `**Rw ${rw}** (${range.rw[0]} to ${range.rw[1]}; C ${formatNumber(c)}, Ctr ${formatNumber(ctr)})`,
    surfaceMassText(result.surfaceMassKgPerM2),
    thicknessText(result.thicknessM),
    ...(price ? [pricePerAreaText(price.amount, price.currency)] : []),
  ].join(' · ');
}

function picture(name: string, result: AssemblyResult, nominalHz: readonly number[]): string {
  const rating = soundTransmissionClass([...result.transmissionLossDb]);
  // The contour covers 125 Hz to 4 kHz; the bands below and above have none.
  const first = nominalHz.indexOf(125);
  const valuesDb = nominalHz.map((_, band) => rating.contour[band - first] ?? null);
  const description = `${name}: STC ${result.ratings.stc}, Rw ${result.ratings.rw}, ${surfaceMassText(result.surfaceMassKgPerM2)}`;
  const svg = chartTransmissionLoss({
    title: `Transmission loss of ${name}`,
    description,
    nominalHz,
    lossDb: result.transmissionLossDb,
    rangeDb: result.transmissionLossRangeDb,
    contour: { label: `STC ${result.ratings.stc}`, valuesDb },
  });
  return svgToMarkdownImage(svg, `Transmission loss. ${description}`, hoverSize);
}

function bandTable(result: AssemblyResult): string {
  const whole = (values: readonly number[]) => values.map((value) => formatNumber(value));
  const [lower = [], middle = [], upper = []] = thirdsUnderOctaves(result.transmissionLossDb);
  return table(
    ['dB', ...octaveCentres.map(bandName)],
    [
      ['**octave**', ...whole(octaveLoss(result.transmissionLossDb)).map((value) => `**${value}**`)],
      ['from', ...whole(octaveLoss(result.transmissionLossLowDb))],
      ['to', ...whole(octaveLoss(result.transmissionLossHighDb))],
      ['lower third', ...whole(lower)],
      ['middle third', ...whole(middle)],
      ['upper third', ...whole(upper)],
    ],
  );
}

function resonances(result: AssemblyResult): string | undefined {
  const parts = [
    result.resonancesHz.length > 0 &&
      `Resonance${result.resonancesHz.length > 1 ? 's' : ''} of the leaves on the air between them: ${result.resonancesHz.map(formatFrequency).join(', ')}.`,
    result.criticalFrequenciesHz.length > 0 &&
      `Coincidence: ${result.criticalFrequenciesHz.map(({ layer, hz }) => `${escapeMarkdown(layer)} ${formatFrequency(hz)}`).join(', ')}.`,
  ].filter(Boolean);
  return parts.length > 0 ? parts.join(' ') : undefined;
}

function layers(result: AssemblyResult, context: HoverContext): string {
  return bullets(
    result.layers.map(
      (layer) =>
        `${escapeMarkdown(layer.text)} · ${surfaceMassText(layer.surfaceMassKgPerM2)} · ${link(escapeMarkdown(layer.model), context.modelPage?.(layer.model))}`,
    ),
  );
}
