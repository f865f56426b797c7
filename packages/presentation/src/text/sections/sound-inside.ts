import type { BoothResult } from '@boothwright/assessment';
import { bandName, formatFrequency } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { atOctaveCentres, octaveCentres } from '../../numbers/octaves.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

const mostModes = 10;

/** Decay where a formula can answer, single modes where none can. */
export function soundInsideSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const { eyringS, sabineS, validFromHz } = booth.reverberation;
  const time = (seconds: number | null) => (seconds === null ? '–' : formatNumber(seconds, 2));
  const row = (label: string, values: readonly (number | null)[]) => [label, ...atOctaveCentres(values).map(time)];
  const known = [...atOctaveCentres(eyringS), ...atOctaveCentres(sabineS)].some((seconds) => seconds !== null);
  const dry = octaveCentres.some((hz, octave) => hz > validFromHz && atOctaveCentres(eyringS)[octave] === null);
  const modes = booth.modesHz.filter(({ hz }) => hz < validFromHz);
  const listed = modes.slice(0, mostModes).map(({ hz, order }) => `${formatNumber(hz)} (${order.join('-')})`);
  const more = modes.length > mostModes ? ` and ${modes.length - mostModes} more` : '';
  return section(
    `Sound inside${suffix}, reverberation time in s`,
    joinLines(
      known &&
        textTable(
          [
            { head: 'third octave at' },
            ...octaveCentres.map((hz) => ({ head: bandName(hz), align: 'right' as const })),
          ],
          [row('Eyring', eyringS), row('Sabine', sabineS)],
        ),
      wrapText(
        `Below ${formatFrequency(validFromHz)} the booth has single modes instead of a reverberation time` +
          (listed.length > 0 ? `: ${listed.join(', ')}${more} Hz (order along width-depth-height)` : ''),
        style.width,
        '  ',
        '    ',
      ),
      dry &&
        wrapText(
          'Bands above that without a time absorb more than half of the sound that meets a surface, or the booth has an open face: the sound is no longer spread evenly, and no formula holds; it is dry there',
          style.width,
          '  ',
          '    ',
        ),
    ),
    style,
  );
}
