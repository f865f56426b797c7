import { flowForCo2 } from '@boothwright/acoustics';
import { freshAir } from '../air/fresh-air.js';
import type { JudgedContext } from '../assessment-context.js';
import type { Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';

/** Nothing moves air through the booth while people breathe in it. */
export function noFreshAir({ booths }: JudgedContext): Finding[] {
  return booths.flatMap(({ booth, result }) => {
    const { air } = result;
    if (air === null || air.fanOn !== null || air.generationM3PerS <= 0) return [];
    const { minutesTo, endPpm } = air.fanOff;
    const flow = flowForCo2({ limit: 1000, supply: air.supplyPpm, generation: air.generationM3PerS });
    const minutes = (level: '1000' | '1500' | '2500') => {
      const value = minutesTo[level];
      return value === null
        ? `${level} ppm not within a day`
        : `${level} ppm after ${decimals(value, value < 10 ? 1 : 0)} min`;
    };
    const figures: Record<string, number> = { endPpm, sessionMinutes: air.sessionMinutes, volumeM3: air.volumeM3 };
    for (const level of ['1000', '1500', '2500'] as const) {
      const value = minutesTo[level];
      if (value !== null) figures[`minutesTo${level}`] = value;
    }
    if (flow !== null) figures.flowFor1000PpmLPerS = flow * 1000;
    const blocked = freshAir(booth).way === 'no-way-out';
    return [
      {
        id: 'no-fresh-air',
        severity: 'warning' as const,
        range: textRange(booth.nameRange),
        message: `${booth.name} ${blocked ? 'has a fan but no second opening for its air' : booth.vents.length === 0 ? 'has no vent' : 'has vents but no fan'}: ${decimals(endPpm, 0)} ppm CO2 at the end of ${decimals(air.sessionMinutes, 0)} min`,
        explanation: `In ${decimals(air.volumeM3, 1)} m3 the air goes stale fast: ${minutes('1000')}, ${minutes('1500')}, ${minutes('2500')}. A box that keeps sound in keeps air in.${blocked ? ' A fan that blows into or out of a closed box moves next to nothing, so the figures are those of the closed box.' : ''}`,
        source:
          'Mass balance of a well-mixed space, C(t) = C0 + G t / V; CO2 per person as stated in the session. docs/findings/no-fresh-air.md',
        fix:
          flow === null
            ? `The supply air already stands at ${decimals(air.supplyPpm, 0)} ppm: air the room first, then give the booth two vents and a fan.`
            : blocked
              ? `Give the air a second lined vent; ${decimals(flow * 1000, 1)} L/s hold 1000 ppm in the long run (supply air at ${decimals(air.supplyPpm, 0)} ppm). Until then: door open between takes.`
              : `Two lined vents and a fan with ${decimals(flow * 1000, 1)} L/s hold 1000 ppm in the long run (supply air at ${decimals(air.supplyPpm, 0)} ppm). Until then: door open between takes.`,
        figures,
        related: booth.vents.map((vent) => ({
          range: textRange(vent.nameRange),
          message: blocked ? 'the only opening for air' : 'a vent without a fan',
        })),
      },
    ];
  });
}
