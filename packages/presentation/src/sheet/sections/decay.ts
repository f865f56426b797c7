import { chartDecay } from '../../charts/chart-decay.js';
import { palette } from '../../charts/palette.js';
import { decayLimits } from '../../numbers/decay-limits.js';
import { bandName, formatFrequency } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { figureHtml, figures, html, type KeyEntry } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

const methods = {
  modes: 'single modes',
  statistical: 'even field',
  both: 'both',
  dry: 'dry field',
  none: 'not known',
} as const;
const time = (seconds: number | null) => (seconds === null ? '–' : formatNumber(seconds, 2));

/** How long sound rings by band, and in which bands which model speaks. */
export function decaySection({ results, name, booth, size }: SheetInput): SheetSection {
  const { roomSound, schroederHz } = booth;
  const marks = newMarks();
  const common = { id: 'decay', title: 'Decay', marks: marks.ranges } as const;
  if (roomSound === null) {
    const why =
      'A face has no build-up: sound that leaves through it does not come back, so there is no decay to tell.';
    return { ...common, summary: 'not assessed', html: `<p class="note">${html(why)}</p>` };
  }
  const { decay, mid, range } = roomSound;
  const limits = decayLimits(name, results.requirements);
  const svg = chartDecay({
    title: `Decay by 60 dB in ${name} by third octave`,
    description: decay.map(({ hz, seconds }) => `${bandName(hz)} Hz ${time(seconds)} s`).join(', '),
    decay,
    limits,
    size,
  });
  const key: KeyEntry[] = [
    { label: 'predicted, with its range', colour: palette.blue, mark: marks.of(range) },
    ...limits.map((limit) => ({
      label: `asked at ${formatFrequency(limit.hz)}`,
      figure: `${time(limit.seconds)} s`,
      colour: palette.orange,
      mark: marks.of(limit.range),
    })),
  ];
  return {
    ...common,
    summary:
      mid === null ? 'middle bands not known' : `${time(mid.seconds)} s (${time(mid.lowS)} to ${time(mid.highS)})`,
    html:
      figureHtml(svg, key, {
        caption: `Decay by 60 dB in ${name} by third octave`,
        columns: [...figures('Hz', 's', 'from', 'to'), { head: 'found by' }, { head: 'note' }],
        rows: decay.map(({ hz, seconds, lowS, highS, method, note }) => [
          bandName(hz),
          time(seconds),
          time(lowS),
          time(highS),
          methods[method],
          note,
        ]),
      }) +
      `<p class="note">${html(`Single modes below, an even field above the Schroeder frequency, ${formatFrequency(schroederHz)}; people and what stands inside shift both.`)}</p>`,
  };
}
