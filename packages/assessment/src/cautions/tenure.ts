import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { note } from './note-for.js';

/** Whose house it is. */
export function tenure({ booths }: JudgedContext): Caution[] {
  return booths.map(({ booth, result }) =>
    note('owner-and-insurer', booth.nameRange, {
      hazard: 'Owner and insurer do not know of it',
      number: `${decimals(result.build.loadedMassKg, 0)} kg in use`,
      why: 'A heavy box, a hole in a wall or a lead into building air can break a lease or void a policy.',
      ask: 'Ask the owner before fixing anything or adding load, and tell the insurer.',
    }),
  );
}
