import type { JudgedContext } from '../assessment-context.js';
import { onePersonMass } from '../build/one-person-mass.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { caution } from './caution-for.js';

/** Parts too heavy for one person. */
export function lifting({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const heavy = result.build.massByPart.filter((part) => part.kg > onePersonMass && part.part !== 'linings');
    if (heavy.length === 0) return [];
    return [
      caution('lifting', booth.nameRange, {
        hazard: 'Parts that one person should not lift',
        number: joined(heavy.map((part) => `${part.part} ${decimals(part.kg, 0)} kg`)),
        why: `Above about ${onePersonMass} kg lifting alone injures backs, and a roof must be held overhead. Faces are weighed in one piece here; panels would be lighter.`,
        ask: 'Plan two or more people and props for the roof; ask the supplier of the sheets how to carry them.',
      }),
    ];
  });
}
