import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** The prediction itself. */
export function uncertainty({ booths }: JudgedContext): Caution[] {
  return booths.map(({ booth, result }) => {
    const level = result.noise.total.dBA;
    return caution('prediction-is-not-a-measurement', booth.nameRange, {
      hazard: 'Numbers on a screen are not a booth',
      number:
        level === null
          ? null
          : `noise inside ${decimals(level.value, 0)} dBA, expected between ${decimals(level.low, 0)} and ${decimals(level.high, 0)} dBA`,
      why: 'Every figure carries a range that rests on practice, not on a measurement of your booth; workmanship can cost 10 dB or more, and sound through the structure is left out.',
      ask: 'Measure after the build, before the lining hides the joints; for money that hurts, ask an acoustician first.',
    });
  });
}
