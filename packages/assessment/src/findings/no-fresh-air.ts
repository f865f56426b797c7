import { flowForCo2 } from '@boothwright/acoustics';
import { type NoAir, whyNoAir } from '../air/why-no-air.js';
import type { JudgedContext } from '../assessment-context.js';
import type { Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';

/** What a booth without fresh air has, by the reason. */
const has: Readonly<Record<NoAir, string>> = {
  'no-vent': 'has no vent',
  'no-fan': 'has vents but no fan',
  'no-way-out': 'has a fan but no second opening for its air',
  'all-one-way': 'has fans that all blow the same way, and nothing that lets their air pass',
  'held-back': 'has a fan that its air path holds back altogether',
};

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
    const why = whyNoAir(booth, result.ventilation);
    const blocked = why === 'no-way-out' || why === 'all-one-way';
    return [
      {
        id: 'no-fresh-air',
        severity: 'warning' as const,
        range: textRange(booth.nameRange),
        message: `${booth.name} ${has[why]}: ${decimals(endPpm, 0)} ppm CO2 at the end of ${decimals(air.sessionMinutes, 0)} min`,
        explanation: `In ${decimals(air.volumeM3, 1)} m3 the air goes stale fast: ${minutes('1000')}, ${minutes('1500')}, ${minutes('2500')}. A box that keeps sound in keeps air in.${blocked ? ' A fan that blows into or out of a closed box moves next to nothing, so the figures are those of the closed box.' : ''}`,
        source:
          'Mass balance of a well-mixed space, C(t) = C0 + G t / V; CO2 per person as stated in the session. docs/findings/no-fresh-air.md',
        fix:
          flow === null
            ? `The supply air already stands at ${decimals(air.supplyPpm, 0)} ppm: air the room first, then give the booth two vents and a fan.`
            : why === 'held-back'
              ? `Widen the path or take a fan with more pressure, its curve must start above what the path takes; ${decimals(flow * 1000, 1)} L/s hold 1000 ppm in the long run (supply air at ${decimals(air.supplyPpm, 0)} ppm). Until then: door open between takes.`
              : blocked
                ? `${why === 'all-one-way' ? 'Turn one of the fans round' : 'Give the air a second lined vent'}; ${decimals(flow * 1000, 1)} L/s hold 1000 ppm in the long run (supply air at ${decimals(air.supplyPpm, 0)} ppm). Until then: door open between takes.`
                : `Two lined vents and a fan with ${decimals(flow * 1000, 1)} L/s hold 1000 ppm in the long run (supply air at ${decimals(air.supplyPpm, 0)} ppm). Until then: door open between takes.`,
        figures,
        related: booth.vents.map((vent) => ({
          range: textRange(vent.nameRange),
          message:
            vent.fan !== undefined
              ? why === 'no-way-out'
                ? 'the only opening for air'
                : 'its fan'
              : 'a vent without a fan',
        })),
      },
    ];
  });
}
