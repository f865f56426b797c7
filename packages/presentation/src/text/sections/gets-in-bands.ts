import type { BoothResult } from '@boothwright/assessment';
import { bandName } from '../../numbers/format-frequency.js';
import { bandLevel, rangedText, shareText, totalsText } from '../../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../../numbers/octaves.js';
import { pathShares } from '../../numbers/path-shares.js';
import { pathWords } from '../../numbers/path-words.js';
import type { targetCurve } from '../../numbers/target-curve.js';
import { printable } from '../printable.js';
import { joinLines } from '../section.js';
import { paint, type TextStyle } from '../text-style.js';
import { type Column, textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

const mostPaths = 5;
type SourceResult = BoothResult['noise']['bySource'][number];

const octaveColumns = (first: string): readonly Column[] => [
  { head: first },
  ...octaveCentres.map((hz): Column => ({ head: bandName(hz), align: 'right' })),
  { head: 'A-wtd', align: 'right' },
];

/** Per source: outside, inside and target by octave, then the paths that bring most; then all sources and the fan together. */
export function getsInBands(
  booth: BoothResult,
  target: ReturnType<typeof targetCurve>,
  nominalHz: readonly number[],
  style: TextStyle,
): string {
  const { bySource, fan, total } = booth.noise;
  const blocks = [
    ...bySource.map((source) => sourceBlock(source, booth, target, nominalHz, style)),
    totalBlock(booth, target, style),
  ].filter(Boolean);
  const shown = [
    ...bySource.flatMap((source) => [...source.inside.byBand, ...source.outside.byBand]),
    ...total.byBand,
    ...(fan?.byBand ?? []),
  ];
  if (shown.includes(null)) blocks.push('  – not given or not assessed in that band');
  return blocks.join('\n\n');
}

function sourceBlock(
  source: SourceResult,
  booth: BoothResult,
  target: ReturnType<typeof targetCurve>,
  nominalHz: readonly number[],
  style: TextStyle,
): string {
  const aWeighted = (totals: SourceResult['inside']) => bandLevel(totals.dBA?.value);
  const levels = textTable(octaveColumns(printable(source.name)), [
    ['outside', ...octaveLevels(source.outside.byBand).map(bandLevel), aWeighted(source.outside)],
    ['inside', ...octaveLevels(source.inside.byBand).map(bandLevel), aWeighted(source.inside)],
    ...(target ? [[target.label, ...target.octaves.map(bandLevel), '']] : []),
  ]);
  const shares = pathShares(booth, source, nominalHz).slice(0, mostPaths);
  const paths = textTable(
    octaveColumns('comes by'),
    shares.map((share) => [
      printable(pathWords(share)),
      ...share.byOctave.map((value) => shareText(value).replace(' ', '')),
      shareText(share.overall).replace(' ', ''),
    ]),
  );
  const difference = source.differenceDbA ? `; ${rangedText(source.differenceDbA, 'dB')} kept out, A-weighted` : '';
  return joinLines(
    levels,
    wrapText(`inside ${totalsText(source.inside)}${difference}`, style.width, '  ', '    '),
    shares.length > 0 && paint(paths, 'dim', style),
  );
}

function totalBlock(booth: BoothResult, target: ReturnType<typeof targetCurve>, style: TextStyle): string {
  const { fan, total } = booth.noise;
  return joinLines(
    textTable(octaveColumns('together'), [
      ...(fan ? [['fan alone', ...octaveLevels(fan.byBand).map(bandLevel), bandLevel(fan.dBA?.value)]] : []),
      ['all inside', ...octaveLevels(total.byBand).map(bandLevel), bandLevel(total.dBA?.value)],
      ...(target ? [[target.label, ...target.octaves.map(bandLevel), '']] : []),
    ]),
    wrapText(`all inside ${totalsText(total)}`, style.width, '  ', '    '),
  );
}
