import type { BoothResult, EarlyReflectionResult } from '@boothwright/assessment';
import { formatFrequency } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

const mostReflections = 3;

/** For a performer: what colours the voice at the microphone, what to do, and whether another place is better. */
export function reflectionsSection({ reflections }: BoothResult, suffix: string, style: TextStyle): string | undefined {
  if (!reflections) return undefined;
  const { early, limitDb, response, best, loudspeakers, leavesOut, mouthStated } = reflections;
  const line = (text: string) => wrapText(printable(text), style.width, '  ', '    ');
  const strong = early.filter((each) => each.strong);
  const listed = style.detail === 'full' ? strong : strong.slice(0, mostReflections);
  const more = strong.length - listed.length;
  const strongest = early[0];
  return section(
    `What colours the voice at the mic${suffix}`,
    joinLines(
      ...listed.map((each) => line(reflectionText(each))),
      more > 0 && line(`and ${more} more above ${formatNumber(limitDb)} dB`),
      strong.length === 0 &&
        line(
          strongest === undefined
            ? 'no early reflection reaches the mic'
            : `no early reflection is strong: ${strongest.name}, ${formatNumber(strongest.levelDb)} dB, is the strongest`,
        ),
      response !== null &&
        line(
          `ups and downs from 60 to 300 Hz: ${formatNumber(response.spreadDb, 1)} dB${best === null ? '' : `; ${best.text}`}`,
        ),
      ...loudspeakers.map(({ text }) => line(text)),
      !mouthStated && line('the mouth is assumed at the distance of the mic; `mouth at` says where it is'),
      ...(style.detail === 'full' ? leavesOut : []).map((text) => line(`not in it: ${text}`)),
    ),
    style,
  );
}

function reflectionText({ name, levelDb, firstNullHz, peakDb, dipDb, todo }: EarlyReflectionResult): string {
  const ripple = dipDb === null ? 'cancelling it' : `+${formatNumber(peakDb, 1)}/${formatNumber(dipDb, 1)} dB`;
  return `! ${name}: ${formatNumber(levelDb)} dB, first hole at ${formatFrequency(firstNullHz)}, ${ripple}: ${todo}`;
}
