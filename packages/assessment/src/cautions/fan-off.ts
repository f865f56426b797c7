import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { caution } from './caution-for.js';
import { minutesWords } from './minutes-words.js';

/** Fresh air stops when the fan stops. */
export function fanOff({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const { air } = result;
    if (air === null || air.fanOn === null || air.generationM3PerS <= 0) return [];
    const vent = booth.vents.find((candidate) => candidate.fan !== undefined);
    return [
      caution('fan-off', vent?.nameRange ?? booth.nameRange, {
        hazard: 'Fresh air stops when the fan stops',
        number: `with the fan off: ${minutesWords(air.fanOff)}`,
        why: 'A fan that is switched off for a quiet take, or fails, leaves a closed box. Nobody inside notices CO2 rising.',
        ask: 'Put a CO2 meter in view and plan takes by it; ask the fan supplier what happens on power failure.',
      }),
    ];
  });
}
