import type { JudgedContext } from '../assessment-context.js';
import { onePersonMass } from '../build/one-person-mass.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { caution } from './caution-for.js';

/** Parts too heavy for one person. */
export function lifting({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const { panels, massByPart } = result.build;
    const cut = panels.length > 0;
    // Faces that are cut into panels are carried panel by panel; doors, windows and what stands inside stay what they are.
    const faces: ReadonlySet<string> = new Set(cut ? panels.map(({ face }) => face) : []);
    const parts = massByPart.filter(({ part }) => part !== 'linings' && !faces.has(part));
    const pieces = panels.map(({ number, massKg }) => ({ part: `panel ${number}`, kg: massKg }));
    const heavy = [...pieces, ...parts].filter(({ kg }) => kg > onePersonMass);
    if (heavy.length === 0) return [];
    return [
      caution('lifting', booth.nameRange, {
        hazard: 'Parts that one person should not lift',
        number: joined(heavy.map((part) => `${part.part} ${decimals(part.kg, 0)} kg`)),
        why: `Above about ${onePersonMass} kg lifting alone injures backs, and a roof must be held overhead.${cut ? ' Lining, latches and hinges come on top.' : ' Faces are weighed in one piece here; panels would be lighter.'}`,
        ask: 'Plan two or more people and props for the roof; ask the supplier of the sheets how to carry them.',
      }),
    ];
  });
}
