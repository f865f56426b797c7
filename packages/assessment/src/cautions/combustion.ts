import type { Appliance } from '@boothwright/language';
import { fanFlow } from '../air/air-result.js';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/**
 * A flame near the booth. A fan that draws air out of the room of an open flue can pull the exhaust gas back in; the text
 * does not say which way a fan blows, so any fan counts.
 */
export function combustion({ spec, booths }: JudgedContext): Caution[] {
  const flow = Math.max(0, ...booths.map(({ booth }) => fanFlow(booth)));
  return (spec.site?.appliances ?? []).map((appliance) => {
    const stop = appliance.flue.value !== 'room-sealed' && flow > 0;
    return caution('combustion-appliance', appliance.nameRange, {
      severity: stop ? 'stop' : 'caution',
      hazard: stop
        ? `Carbon monoxide: a fan can pull exhaust gas of ${appliance.name} back into the room`
        : `Carbon monoxide from ${appliance.name}`,
      number: flow > 0 ? `fan of ${decimals(flow * 1000, 1)} L/s, ${flueWords(appliance)}` : flueWords(appliance),
      why: 'An open flue draws its air from the room. A fan that lowers the pressure there, even by a few pascals, can turn the draught round; carbon monoxide has no smell. Well-established practice, no figure of our own.',
      ask: stop
        ? 'Do not run the fan before a licensed heating engineer has looked at it; fit a carbon monoxide alarm in the room and one that is heard inside the booth.'
        : 'Ask a licensed heating engineer before changing any vent near it, and fit a carbon monoxide alarm.',
    });
  });
}

function flueWords(appliance: Appliance): string {
  return appliance.flue.value === 'unknown' ? 'kind of flue not stated' : `${appliance.flue.value} appliance`;
}
