import { type NoAir, whyNoAir } from '../air/why-no-air.js';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { boothUnread } from '../unread/booth-unread.js';
import { caution } from './caution-for.js';
import { minutesWords } from './minutes-words.js';

const without = 'The air in a closed booth without a fan goes stale';
const hazards: Readonly<Record<NoAir, string>> = {
  'no-vent': without,
  'no-fan': without,
  'no-way-out': 'The air goes stale: the fan has no second opening for its air',
  'all-one-way': 'The air goes stale: the fans all blow the same way and nothing lets their air pass',
  'held-back': 'The air goes stale: the fan does not get air through its path',
};

/** People inside and nothing that moves air. */
export function noFan({ spec, booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const { air } = result;
    if (air === null || air.fanOn !== null || air.generationM3PerS <= 0) return [];
    if (boothUnread(spec, booth.name).length > 0) {
      return [
        caution('no-fan', booth.nameRange, {
          hazard: 'No fresh air could be read: the text has errors',
          why: 'No fan with a way for its air was found in what could be read. Mend the errors first; until then nothing can be said about the air inside.',
          ask: 'Put a CO2 meter inside and open the door between takes.',
        }),
      ];
    }
    return [
      caution('no-fan', booth.nameRange, {
        hazard: hazards[whyNoAir(booth, result.ventilation)],
        number: `${minutesWords(air.fanOff)}; ${decimals(air.fanOff.endPpm, 0)} ppm at the end of the session`,
        why: 'CO2 rises as long as somebody breathes. Tests of decision making fell markedly at 1000 ppm and strongly at 2500 ppm (Satish and others, Environmental Health Perspectives 120, 2012); 5000 ppm is a common workplace limit for eight hours (from memory).',
        ask: 'Put a CO2 meter inside, open the door between takes, and ask a ventilation engineer about a fan and two vents. Never draw air from a garage, a boiler room or a cupboard with solvents.',
      }),
    ];
  });
}
