import { chartShares } from '../../charts/chart-shares.js';
import { palette, seriesColours } from '../../charts/palette.js';
import { bandName } from '../../numbers/format-frequency.js';
import { shareText } from '../../numbers/level-words.js';
import { octaveCentres } from '../../numbers/octaves.js';
import { type PathShare, pathShares } from '../../numbers/path-shares.js';
import { pathWords } from '../../numbers/path-words.js';
import { figureHtml, figures } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

/** Parts of a bar that stay apart in one picture. */
const mostParts = 5;

/** Through what the loudest sound from outside comes in, by octave, the widest way first. */
export function waysSection({ results, name, booth, size }: SheetInput): SheetSection | undefined {
  const loudest = booth.noise.bySource
    .filter(({ inTotal }) => inTotal)
    .toSorted((a, b) => (b.inside.dBA?.value ?? -Infinity) - (a.inside.dBA?.value ?? -Infinity))[0];
  if (loudest === undefined) return undefined;
  const marks = newMarks();
  const shares = pathShares(booth, loudest, results.grid.nominalHz);
  const drawn = new Set(shares.toSorted((a, b) => most(b) - most(a)).slice(0, mostParts));
  const shown = shares.filter((share) => drawn.has(share));
  const rest = shares.filter((share) => !drawn.has(share));
  const markOf = ({ index }: PathShare) => {
    const path = booth.paths[index];
    return path && marks.of(path.range);
  };
  const svg = chartShares({
    title: `How ${loudest.name} comes into ${name}`,
    description: shown.map((share) => `${pathWords(share)} ${shareText(share.overall)}`).join(', '),
    columns: octaveCentres.map(bandName),
    parts: [
      ...shown.map((share) => ({ label: pathWords(share), shares: share.byOctave, mark: markOf(share) })),
      ...(rest.length > 0 ? [{ label: 'the rest', shares: sumsOf(rest), rest: true } as const] : []),
    ],
    size,
  });
  const [first] = shown;
  const overallOfRest = rest.some(({ overall }) => overall === null)
    ? null
    : rest.reduce((sum, { overall }) => sum + (overall ?? 0), 0);
  return {
    id: 'ways',
    title: `How ${loudest.name} comes in`,
    summary: first === undefined ? '' : `${pathWords(first)} ${shareText(first.overall)}`,
    html: figureHtml(
      svg,
      [
        ...shown.map((share, index) => ({
          label: pathWords(share),
          figure: shareText(share.overall),
          colour: seriesColours[index] ?? palette.grey,
          area: true as const,
          mark: markOf(share),
        })),
        ...(rest.length > 0
          ? [{ label: 'the rest', figure: shareText(overallOfRest), colour: palette.grey, area: true as const }]
          : []),
      ],
      {
        caption: `Share of the energy of ${loudest.name} inside by path and octave, all paths`,
        columns: [{ head: 'path' }, ...figures(...octaveCentres.map(bandName), 'A-weighted')],
        rows: shares.map((share) => [pathWords(share), ...share.byOctave.map(shareText), shareText(share.overall)]),
      },
    ),
    marks: marks.ranges,
  };
}

/** What a path brings in the octave in which it brings most. */
function most({ byOctave }: PathShare): number {
  return Math.max(...byOctave.map((share) => share ?? 0));
}

function sumsOf(shares: readonly PathShare[]): (number | null)[] {
  return octaveCentres.map((_, octave) => {
    const values = shares.map(({ byOctave }) => byOctave[octave] ?? null);
    return values.includes(null) ? null : values.reduce<number>((sum, value) => sum + (value ?? 0), 0);
  });
}
