import type { Requirement } from '@boothwright/language';
import { temperatureRiseShare } from '../air/heat-result.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed, unlessMissed } from './verdict.js';

/**
 * How much warmer than the room the booth is at the end of the session, with the fans as the session says. Rests with the
 * door open are not counted, which is the cautious reading.
 */
export function judgeTemperatureRise(
  requirement: Extract<Requirement, { kind: 'temperature-rise' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value;
  const base = { requirement, booth: booth.name, limit, unit: 'K' };
  const { air, ventilation } = result;
  if (air === null) {
    return notAssessed({ ...base, explanation: 'There is no `session` block, so neither people nor time are known.' });
  }
  if (air.heat === null) return notAssessed({ ...base, explanation: air.heatNote ?? 'The heat is not known.' });
  const flow = air.judged === 'low' ? ventilation.low : ventilation.high;
  if (air.judged !== 'off' && flow !== null && flow.flowM3PerS === null) {
    return notAssessed({ ...base, explanation: `The flow of the fan is not known: ${flow.notes.join('; ')}.` });
  }
  // In takes without the fan the air stands still most of the time.
  const off = air.judged === 'off' || air.fanOn === null || air.takes?.fanInTake === 'off';
  const setting = off ? 'off' : air.judged;
  const found = air.heat.bySetting.find((each) => each.setting === setting);
  if (found === undefined) return notAssessed({ ...base, explanation: 'The flow of the fan is not known.' });
  const spread = temperatureRiseShare * found.endRiseK;
  const value = {
    value: found.endRiseK,
    low: found.endRiseK - spread,
    high: found.endRiseK + spread,
    basis: 'three tenths of the rise either way, for people, walls and furniture; docs/models/heat-in-the-booth.md',
  };
  const steady = found.steadyRiseK === null ? '' : ` In the long run it is ${decimals(found.steadyRiseK, 1)} K.`;
  const verdict = judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: off ? 'no-fan' : 'fan',
    explanation: `With ${decimals(air.heat.gainsW, 0)} W of dry heat inside, ${decimals(air.heat.conductanceWPerK, 0)} W/K through the walls and ${off ? 'no fan' : `the fan at ${decimals((air.fanOn?.flowM3PerS ?? 0) * 1000, 1)} L/s`} it is ${rangedWords(value, 'K')} warmer than the room after ${decimals(air.sessionMinutes, 0)} min, where at most ${decimals(limit, 1)} K is asked: ${marginWords(limit - value.value, 'K')}.${steady}`,
  });
  return ventilation.way === 'no-way-out' && air.judged !== 'off'
    ? unlessMissed(verdict, 'The fan has no way for its air, so the verdict is open.')
    : verdict;
}
