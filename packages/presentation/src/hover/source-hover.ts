import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import { chartLevels, type LevelSeries } from '../charts/chart-levels.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { bandName } from '../numbers/format-frequency.js';
import { bandLevel, rangedText, shareText, totalsText } from '../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../numbers/octaves.js';
import { pathShares } from '../numbers/path-shares.js';
import { pathWords } from '../numbers/path-words.js';
import { targetCurve } from '../numbers/target-curve.js';
import type { HoverContext } from './hover-context.js';
import { escapeMarkdown, paragraphs, table } from './markdown.js';

export interface SourceHoverContext extends HoverContext {
  readonly requirements?: readonly RequirementResult[];
}

/** One noise source outside and inside a booth, and by which paths it comes. Undefined when the booth does not hear it. */
export function sourceHover(
  sourceName: string,
  boothName: string,
  booth: BoothResult,
  context: SourceHoverContext,
): string | undefined {
  const source = booth.noise.bySource.find(({ name }) => name === sourceName);
  if (!source) {
    const missing = booth.noise.notPredicted.find(({ name }) => name === sourceName);
    return missing && paragraphs(`**${escapeMarkdown(sourceName)}** not predicted`, escapeMarkdown(missing.why));
  }
  const target = targetCurve(context.requirements ?? [], boothName);
  const outside = octaveLevels(source.outside.byBand);
  const inside = octaveLevels(source.inside.byBand);
  const series: LevelSeries[] = [
    { label: 'outside', role: 'before', levelsDb: outside },
    { label: 'inside', role: 'behind', levelsDb: inside },
    ...(target ? [{ label: target.label, role: 'target', levelsDb: target.octaves } as const] : []),
  ];
  const description = `${sourceName}: outside ${rangedText(source.outside.dBA, 'dBA')}, inside ${boothName} ${rangedText(source.inside.dBA, 'dBA')}`;
  const svg = chartLevels({
    title: `${sourceName} outside and inside ${boothName}`,
    description,
    nominalHz: octaveCentres,
    series,
  });
  const shares = pathShares(booth, source, context.nominalHz).slice(0, 4);
  return paragraphs(
    `**${escapeMarkdown(sourceName)}** in ${escapeMarkdown(boothName)}: **${rangedText(source.inside.dBA, 'dBA')}**, outside ${rangedText(source.outside.dBA, 'dBA')}`,
    svgToMarkdownImage(svg, description, hoverSize),
    `Outside ${totalsText(source.outside)}`,
    `Inside ${totalsText(source.inside)}`,
    source.differenceDbA && `Difference ${rangedText(source.differenceDbA, 'dB')} A-weighted`,
    table(
      ['octaves, dB', ...octaveCentres.map(bandName)],
      [
        ['outside', ...outside.map(bandLevel)],
        ['inside', ...inside.map(bandLevel)],
        ...(target ? [[target.label, ...target.octaves.map(bandLevel)]] : []),
      ],
    ),
    shares.length > 0 &&
      table(
        ['comes by', ...octaveCentres.map(bandName), 'A-weighted'],
        shares.map((share) => [
          escapeMarkdown(pathWords(share)),
          ...share.byOctave.map(shareText),
          shareText(share.overall),
        ]),
      ),
    notAssessedNote([...inside]),
  );
}

/** Says why a band is empty, where one is. */
export function notAssessedNote(levels: readonly (number | null)[]): string | undefined {
  return levels.includes(null) ? '– means not given or not assessed in that band' : undefined;
}
