import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Heat and power inside a lined box. */
export function electricity({ spec, booths }: JudgedContext): Caution[] {
  const lamps = spec.session?.heat;
  return booths.flatMap(({ booth }) => {
    const warm = booth.equipment.filter((thing) => (thing.heat?.value ?? 0) > 0);
    const fan = booth.vents.find((vent) => vent.fan !== undefined);
    const watts = warm.reduce((sum, thing) => sum + (thing.heat?.value ?? 0), lamps?.value ?? 0);
    if (watts <= 0 && fan === undefined) return [];
    return [
      caution('electricity-and-heat', warm[0]?.nameRange ?? lamps?.range ?? fan?.nameRange ?? booth.nameRange, {
        hazard: 'Lamps, leads and power supplies in a lined, insulated box',
        number: `${decimals(watts, 0)} W of lamps and equipment inside, beside the people`,
        why: 'Heat builds up behind fibre and fabric. The predicted warmth is that of the air, not of a lamp against cloth. Flexible leads through walls or hidden in them are against some codes (US NEC 400.12), and chained strips overheat.',
        ask: 'Have fixed wiring done by a licensed electrician, use residual-current protection, and keep lamps away from fibre and fabric.',
      }),
    ];
  });
}
