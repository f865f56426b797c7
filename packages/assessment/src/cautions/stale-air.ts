import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Warn from here, ppm. */
export const staleFromPpm = 1500;

/** There is a fan and the air still passes 1500 ppm within the session, as it is run. */
export function staleAir({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const { air } = result;
    // Without air from any fan `no-fan` speaks.
    if (air === null || air.fanOn === null) return [];
    const off = air.judged === 'off' || air.takes?.fanInTake === 'off';
    const reached =
      air.takes === null
        ? (air.judged === 'off' ? air.fanOff : air.fanOn).endPpm
        : Math.max(air.takes.firstPeakPpm, air.takes.lastPeakPpm);
    if (reached < staleFromPpm) return [];
    const when = air.takes === null ? 'at the end of the session' : 'at the end of the last take';
    return [
      caution('stale-air', booth.nameRange, {
        hazard: off ? 'The air goes stale while the fan is off' : 'The fan does not keep up with the people inside',
        number: `${decimals(reached, 0)} ppm CO2 ${when} with the fan ${off ? 'off' : `at ${decimals(air.fanOn.flowM3PerS * 1000, 1)} L/s`}`,
        why: 'Tests of decision making fell markedly at 1000 ppm and strongly at 2500 ppm (Satish and others, Environmental Health Perspectives 120, 2012).',
        ask: 'Take breaks with the door open, measure CO2, and ask a ventilation engineer about the flow.',
      }),
    ];
  });
}
