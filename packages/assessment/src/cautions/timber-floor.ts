import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** A booth on joists. */
export function timberFloor({ spec, booths }: JudgedContext): Caution[] {
  const floor = spec.site?.floor;
  if (floor === undefined || floor.kind.value === 'concrete') return [];
  return booths.map(({ result }) =>
    caution('timber-floor', floor.kind.range, {
      hazard: floor.kind.value === 'timber' ? 'A heavy booth on a timber floor' : 'The kind of floor is not stated',
      number: `${decimals(result.build.loadedMassKg, 0)} kg with people inside`,
      why: 'Joists bend, and old ones may be notched, rotten or short. Walls of a booth that stand between joists load the boards alone. Low notes of the floor itself come in as sound, too.',
      ask: 'Ask a structural engineer about the place and the direction of the joists. Do not cut joists, trusses or chimney breasts.',
    }),
  );
}
