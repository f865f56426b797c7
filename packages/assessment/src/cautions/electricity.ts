import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Heat and power inside a lined box. */
export function electricity({ spec, booths }: JudgedContext): Caution[] {
  const heat = spec.session?.heat;
  const fan = booths.flatMap(({ booth }) => booth.vents).find((vent) => vent.fan !== undefined);
  if (spec.session === undefined || (heat?.value ?? 0) <= 0) {
    if (fan === undefined) return [];
  }
  return booths.map(({ booth }) =>
    caution('electricity-and-heat', heat?.range ?? fan?.nameRange ?? booth.nameRange, {
      hazard: 'Lamps, leads and power supplies in a lined, insulated box',
      number: `${decimals(heat?.value ?? 0, 0)} W of lamps and equipment inside, beside the people`,
      why: 'Heat builds up behind fibre and fabric. The temperature inside is not predicted. Flexible leads through walls or hidden in them are against some codes (US NEC 400.12), and chained strips overheat.',
      ask: 'Have fixed wiring done by a licensed electrician, use residual-current protection, and keep lamps away from fibre and fabric.',
    }),
  );
}
