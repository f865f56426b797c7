import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { note } from './note-for.js';

/** Headphones are turned up against a fan, and with a quiet room there is nothing to warn the ear. */
export function headphones({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    if (booth.microphone === undefined) return [];
    const inside = result.noise.total.dBA;
    return [
      note('headphones', booth.microphone.range, {
        hazard: 'Headphones in a quiet box are easily too loud',
        number: inside === null ? null : `noise inside ${decimals(inside.value, 0)} dBA`,
        why: 'Nothing outside masks them, hours go by, and a hissing fan makes one turn them up. They also mask an alarm.',
        ask: 'Set the level by the quietest passage and take breaks; ask an audiologist if your ears ring.',
      }),
    ];
  });
}
