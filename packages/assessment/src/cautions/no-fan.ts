import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';
import { minutesWords } from './minutes-words.js';

/** People inside and nothing that moves air. */
export function noFan({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const { air } = result;
    if (air === null || air.fanOn !== null || air.generationM3PerS <= 0) return [];
    return [
      caution('no-fan', booth.nameRange, {
        hazard: 'The air in a closed booth without a fan goes stale',
        number: `${minutesWords(air.fanOff)}; ${decimals(air.fanOff.endPpm, 0)} ppm at the end of the session`,
        why: 'CO2 rises as long as somebody breathes. Tests of decision making fell markedly at 1000 ppm and strongly at 2500 ppm (Satish and others, Environmental Health Perspectives 120, 2012); 5000 ppm is a common workplace limit for eight hours (from memory).',
        ask: 'Put a CO2 meter inside, open the door between takes, and ask a ventilation engineer about a fan and two vents. Never draw air from a garage, a boiler room or a cupboard with solvents.',
      }),
    ];
  });
}
