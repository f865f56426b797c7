import type { BoothResult } from '@boothwright/assessment';
import { chartShares } from '../charts/chart-shares.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { bandName } from '../numbers/format-frequency.js';
import { formatFigures } from '../numbers/format-number.js';
import { bandLevel, shareText } from '../numbers/level-words.js';
import { octaveCentres, octaveLoss } from '../numbers/octaves.js';
import { pathShares } from '../numbers/path-shares.js';
import { isPathOf, pathWords } from '../numbers/path-words.js';
import type { HoverContext } from './hover-context.js';
import { escapeMarkdown, paragraphs, table } from './markdown.js';

/**
 * What one opening lets through, by band, of each source. `name` is that of the opening; of a door its leaf and its
 * seals are shown. Undefined when the booth has no such path.
 */
export function openingHover(
  name: string,
  boothName: string,
  booth: BoothResult,
  context: HoverContext,
): string | undefined {
  const paths = booth.paths.filter((path) => isPathOf(name, path));
  if (paths.length === 0) return undefined;
  const bySource = booth.noise.bySource.map((source) => ({
    source: source.name,
    shares: pathShares(booth, source, context.nominalHz).filter(({ index }) => paths.includes(booth.paths[index]!)),
  }));
  const loudest = bySource[0];
  return paragraphs(
    `**${escapeMarkdown(name)}** in ${escapeMarkdown(boothName)}: share of what comes through`,
    ...bySource.map(({ source, shares }) =>
      table(
        [`of ${escapeMarkdown(source)}`, ...octaveCentres.map(bandName), 'A-weighted'],
        shares.map((share) => [
          escapeMarkdown(pathWords(share)),
          ...share.byOctave.map(shareText),
          shareText(share.overall),
        ]),
      ),
    ),
    loudest && picture(name, loudest.source, booth, context),
    table(
      ['transmission loss, dB', ...octaveCentres.map(bandName)],
      paths.map((path) => [
        `${escapeMarkdown(pathWords(path))} (${areaText(path.areaM2)})`,
        ...octaveLoss(path.transmissionLossDb).map(bandLevel),
      ]),
    ),
  );
}

function picture(name: string, sourceName: string, booth: BoothResult, context: HoverContext): string | undefined {
  const source = booth.noise.bySource.find((entry) => entry.name === sourceName);
  if (!source) return undefined;
  const shares = pathShares(booth, source, context.nominalHz);
  const own = shares.filter((share) => isPathOf(name, share));
  const rest = shares.filter((share) => !own.includes(share)).slice(0, 3);
  const drawn = [...own, ...rest];
  const others = octaveCentres.map((_, octave) => {
    const known = shares.map(({ byOctave }) => byOctave[octave] ?? null);
    if (known.every((share) => share === null)) return null;
    const shown = drawn.reduce((sum, { byOctave }) => sum + (byOctave[octave] ?? 0), 0);
    return Math.max(0, 1 - shown);
  });
  const description = `Share of ${sourceName} that comes by ${name}: ${own
    .map((share) => `${pathWords(share)} ${shareText(share.overall)} A-weighted`)
    .join(', ')}`;
  const svg = chartShares({
    title: `By which path ${sourceName} comes`,
    description,
    columns: octaveCentres.map(bandName),
    parts: [
      ...drawn.map((share) => ({ label: pathWords(share), shares: share.byOctave })),
      { label: 'the rest', shares: others },
    ],
  });
  return svgToMarkdownImage(svg, description, hoverSize);
}

function areaText(squareMetres: number): string {
  return squareMetres < 0.1 ? `${formatFigures(squareMetres * 1e4)} cm²` : `${formatFigures(squareMetres)} m²`;
}
