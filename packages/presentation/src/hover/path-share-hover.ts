import type { BoothResult } from '@boothwright/assessment';
import { bandName, formatFrequency } from '../numbers/format-frequency.js';
import { bandLevel, shareText } from '../numbers/level-words.js';
import { octaveCentres, octaveLoss } from '../numbers/octaves.js';
import { type PathShare, pathShares } from '../numbers/path-shares.js';
import { pathWords } from '../numbers/path-words.js';
import { escapeMarkdown, paragraphs, table } from './markdown.js';

type Path = BoothResult['paths'][number];

/**
 * What some paths together bring of the source that is loudest inside, and what each of them keeps out. Undefined when no
 * path is meant or no source is heard.
 */
export function pathShareHover(
  meant: (path: Path) => boolean,
  boothName: string,
  booth: BoothResult,
  nominalHz: readonly number[],
): string | undefined {
  const loudness = ({ inside }: BoothResult['noise']['bySource'][number]) => inside.dBA?.value ?? -Infinity;
  const [source] = booth.noise.bySource.toSorted((a, b) => loudness(b) - loudness(a));
  if (source === undefined) return undefined;
  const own = pathShares(booth, source, nominalHz).filter(({ index }) => meant(booth.paths[index]!));
  if (own.length === 0) return undefined;
  const sum = (pick: (share: PathShare) => number | null | undefined) =>
    own.every((share) => pick(share) == null) ? null : own.reduce((all, share) => all + (pick(share) ?? 0), 0);
  const octaves = octaveCentres.map((_, octave) => sum(({ byOctave }) => byOctave[octave]));
  const most = octaves.reduce<number>(
    (best, share, octave) => ((share ?? 0) > (octaves[best] ?? 0) ? octave : best),
    0,
  );
  return paragraphs(
    `**${shareText(sum(({ overall }) => overall))} of what comes in** of ${escapeMarkdown(source.name)} in ${escapeMarkdown(boothName)}, ` +
      `${shareText(octaves[most])} at ${formatFrequency(octaveCentres[most] ?? 0)}`,
    table(
      ['share', ...octaveCentres.map(bandName), 'A-weighted'],
      own.map((share) => [
        escapeMarkdown(pathWords(share)),
        ...share.byOctave.map(shareText),
        shareText(share.overall),
      ]),
    ),
    table(
      ['keeps out, dB', ...octaveCentres.map(bandName)],
      own.map((share) => [
        escapeMarkdown(pathWords(share)),
        ...octaveLoss(booth.paths[share.index]?.transmissionLossDb ?? []).map(bandLevel),
      ]),
    ),
    own.some(({ kind }) => kind === 'door-seal') && 'What a gap keeps out is referred to its own small area',
  );
}
