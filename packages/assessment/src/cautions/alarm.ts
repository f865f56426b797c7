import type { JudgedContext } from '../assessment-context.js';
import { bandIndexOf } from '../bands/grid.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Level of a home smoke alarm beside the booth where the site states none, dBA. Evidence: from memory of the usual 85 dBA at 3 m. */
export const alarmLevel = 85;
/** Where most home alarms sound, Hz. Evidence: from memory. */
export const alarmHz = 3150;
/** Level at the pillow or ear that alarm rules often ask for, dBA. Evidence: secondary pages on NFPA 72. */
export const audibleLevel = 75;

/** A booth that keeps noise out keeps the alarm out. */
export function alarm({ spec, booths }: JudgedContext): Caution[] {
  const stated = spec.site?.alarm;
  const outside = stated?.value.decibels ?? alarmLevel;
  const level = `${decimals(outside, 0)} dBA`;
  return booths.flatMap(({ booth, isolation }) => {
    const difference = isolation.difference[bandIndexOf(alarmHz)] as number;
    const inside = outside - difference;
    if (inside >= audibleLevel) return [];
    return [
      caution('alarm-not-heard', booth.nameRange, {
        hazard: 'The smoke alarm of the home may not be heard inside',
        number: `${decimals(inside, 0)} dBA inside, before headphones, of an alarm with ${level} ${stated === undefined ? 'right beside' : 'at'} the booth`,
        why: `The predicted difference at ${alarmHz} Hz is ${decimals(difference, 0)} dB. ${audibleLevel} dBA, or 15 dB above the noise, is an often-quoted rule for sleeping areas. Assumed: an alarm tone near 3 kHz,${stated === undefined ? ` ${level} at the booth,` : ''} door closed; farther away it is quieter.`,
        ask: 'Fit a linked alarm or a visual beacon inside, try it with headphones on, and ask your local fire officer.',
      }),
    ];
  });
}
