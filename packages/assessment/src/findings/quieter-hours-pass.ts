import type { JudgedContext } from '../assessment-context.js';
import { joined } from '../text/joined.js';
import type { Found } from './found.js';

/** The cheapest decibels: hours in which a missed room tone is met. */
export function quieterHoursPass({ booths, requirements }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) =>
    (result.noise.hours?.requirements ?? []).flatMap(({ text, range, hoursMet, met }) => {
      const missed = requirements.some(
        (entry) =>
          entry.booth === booth.name &&
          entry.range.from === range.from &&
          entry.range.file === range.file &&
          entry.verdict === 'missed',
      );
      if (!missed || hoursMet === 0) return [];
      return [
        {
          id: 'quieter-hours-pass',
          severity: 'information' as const,
          range,
          message: `${booth.name}: \`${text}\` is met at ${joined(met)}`,
          explanation:
            'The verdict is that of the loudest hour of the session, or of the day when it does not say when it starts. Other hours are quieter, and working then costs nothing.',
          source:
            'The same prediction for every mix of sources that the day brings. docs/findings/quieter-hours-pass.md',
          fix: `Work at ${joined(met)}, or ask for less at the other hours.`,
          figures: { hoursMet },
          related: [],
        },
      ];
    }),
  );
}
