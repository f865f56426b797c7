import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Warn from here, ppm. */
export const staleFromPpm = 1500;

/** The fan runs and the air still passes 1500 ppm within the session. */
export function staleAir({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const on = result.air?.fanOn;
    if (on === null || on === undefined || on.endPpm < staleFromPpm) return [];
    return [
      caution('stale-air', booth.nameRange, {
        hazard: 'The fan does not keep up with the people inside',
        number: `${decimals(on.endPpm, 0)} ppm CO2 at the end of the session with the fan at ${decimals(on.flowM3PerS * 1000, 1)} L/s`,
        why: 'Tests of decision making fell markedly at 1000 ppm and strongly at 2500 ppm (Satish and others, Environmental Health Perspectives 120, 2012).',
        ask: 'Take breaks with the door open, measure CO2, and ask a ventilation engineer about the flow.',
      }),
    ];
  });
}
