import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** CO2 at the end of takes that is still taken as fresh when the text asks for nothing, ppm. */
export const freshPpm = 1500;

/** Takes with the door shut outrun the rests between them. */
export function takeTooLong({ spec: { session }, booths, requirements }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) => {
    const takes = result.air?.takes;
    if (takes === null || takes === undefined || session?.cycle === undefined) return [];
    const asked = requirements.find(({ kind, booth: name }) => kind === 'co2' && name === booth.name)?.limit;
    const limit = Math.min(asked ?? freshPpm, freshPpm);
    // Takes are searched for two levels; the one that keeps what is asked.
    const searched = limit < freshPpm ? '1000' : '1500';
    if (takes.lastPeakPpm <= limit) return [];
    const longest = takes.longestTakeMinutes[searched];
    return [
      {
        id: 'take-too-long',
        severity: 'warning' as const,
        range: textRange(session.cycle.take.range),
        message: `${booth.name}: takes of ${decimals(takes.takeMinutes, 0)} min with the fan ${takes.fanInTake} end at ${decimals(takes.lastPeakPpm, 0)} ppm in the last of ${takes.takes}, where ${decimals(limit, 0)} ppm ${asked === undefined ? 'are fresh' : 'are asked'}`,
        explanation: `The first ends at ${decimals(takes.firstPeakPpm, 0)} ppm. ${takes.repeatingPeakPpm === null ? 'It never settles.' : `Gone on for ever they would settle at ${decimals(takes.repeatingPeakPpm, 0)} ppm.`} ${takes.note}`,
        source: 'Balance of carbon dioxide over takes and rests. docs/findings/take-too-long.md',
        fix:
          longest > 0
            ? `With rests of ${decimals(takes.restMinutes, 0)} min, takes of up to ${longest} min stay at ${searched} ppm; or leave the fan on.`
            : `No take stays at ${searched} ppm with rests of ${decimals(takes.restMinutes, 0)} min: longer rests, or the fan on.`,
        figures: { lastPeakPpm: takes.lastPeakPpm, firstPeakPpm: takes.firstPeakPpm, longestTakeMinutes: longest },
        related: [],
      },
    ];
  });
}
