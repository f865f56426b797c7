import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { note } from './note-for.js';

/** Glue, sealant and fresh foam in a few cubic metres of air. */
export function offGassing({ booths }: JudgedContext): Caution[] {
  return booths.map(({ booth, result }) =>
    note('off-gassing', booth.nameRange, {
      hazard: 'Glue, sealant and fresh foam fill a small box with vapour',
      number: `${decimals(result.geometry.volumeM3, 1)} m3 of air`,
      why: 'Solvents that go unnoticed in a room are strong in a booth, and some burn.',
      ask: 'Read the data sheets, work with the door open and the fan running, air the booth for days before the first use, and ask the supplier if the smell stays.',
    }),
  );
}
