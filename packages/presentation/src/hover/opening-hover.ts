import type { BoothResult } from '@boothwright/assessment';
import { chartShares } from '../charts/chart-shares.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { bandName, formatFrequency } from '../numbers/format-frequency.js';
import { bandLevel, shareText } from '../numbers/level-words.js';
import { octaveCentres, octaveLoss } from '../numbers/octaves.js';
import { type PathShare, pathShares } from '../numbers/path-shares.js';
import { isPathOf, pathWords } from '../numbers/path-words.js';
import { areaText } from '../numbers/trade-units.js';
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
  const loudness = ({ inside }: BoothResult['noise']['bySource'][number]) =>
    inside.dBA?.value ?? Number.NEGATIVE_INFINITY;
  const loudestFirst = booth.noise.bySource.toSorted((a, b) => loudness(b) - loudness(a));
  const bySource = loudestFirst.map((source) => ({
    source: source.name,
    shares: pathShares(booth, source, context.nominalHz).filter(({ index }) => paths.includes(booth.paths[index]!)),
  }));
  const [loudest] = bySource;
  return paragraphs(
    headline(name, boothName, loudest),
    loudest && picture(name, loudest.source, booth, context),
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
    table(
      ['transmission loss, dB', ...octaveCentres.map(bandName)],
      paths.map((path) => [
        `${escapeMarkdown(pathWords(path))} (${areaText(path.areaM2)})`,
        ...octaveLoss(path.transmissionLossDb).map(bandLevel),
      ]),
    ),
  );
}

/** The share of the loudest source, over all and in the octave where it is largest. */
function headline(
  name: string,
  boothName: string,
  loudest: { readonly source: string; readonly shares: readonly PathShare[] } | undefined,
): string {
  const title = `**${escapeMarkdown(name)}** in ${escapeMarkdown(boothName)}`;
  const known = loudest?.shares.filter(({ overall }) => overall !== null) ?? [];
  if (loudest === undefined || known.length === 0) return `${title}: share of what comes through`;
  const sum = (shares: readonly (number | null)[]) => shares.reduce<number>((all, share) => all + (share ?? 0), 0);
  const octaves = octaveCentres.map((_, octave) => sum(loudest.shares.map(({ byOctave }) => byOctave[octave] ?? null)));
  const most = octaves.indexOf(Math.max(...octaves));
  return (
    `${title}: **${shareText(sum(known.map(({ overall }) => overall)))} of what comes through** of ` +
    `${escapeMarkdown(loudest.source)}, ${shareText(octaves[most])} at ${formatFrequency(octaveCentres[most] ?? 0)}`
  );
}

function picture(name: string, sourceName: string, booth: BoothResult, context: HoverContext): string | undefined {
  const source = booth.noise.bySource.find((entry) => entry.name === sourceName);
  if (!source) return undefined;
  const shares = pathShares(booth, source, context.nominalHz);
  const own = shares.filter((share) => isPathOf(name, share));
  const rest = shares.filter((share) => !own.includes(share)).slice(0, 2);
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
      ...drawn.map((share) => ({
        label: own.includes(share) ? shortWords(share, own.length) : pathWords(share),
        shares: share.byOctave,
      })),
      { label: 'the rest', shares: others, rest: true },
    ],
  });
  return svgToMarkdownImage(svg, description, hoverSize);
}

/** Under a title that names the opening its parts need no more than a word. */
function shortWords(share: PathShare, parts: number): string {
  if (share.kind === 'door-seal') return share.id.split(':')[2] ?? 'seals';
  return share.kind === 'door' && parts > 1 ? 'leaf' : share.name;
}
