import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { note } from './note-for.js';

const squareMetresPerSquareFoot = 0.3048 ** 2;

/** A closed box under a ceiling hides from sprinklers and smoke detectors. */
export function sprinklers({ spec, booths }: JudgedContext): Caution[] {
  const ceiling = spec.site?.room?.height.value;
  return booths.flatMap(({ booth, result }) => {
    if (booth.faces.roof === undefined) return [];
    const { footprintM2, outsideM } = result.geometry;
    const area = `${decimals(footprintM2, 1)} m2 (${decimals(footprintM2 / squareMetresPerSquareFoot, 0)} ft2) of floor`;
    const gap = ceiling === undefined ? '' : `, ${decimals((ceiling - outsideM[2]) * 1000, 0)} mm below the ceiling`;
    return [
      note('sprinklers-and-detectors', booth.nameRange, {
        hazard: 'A closed box hides from sprinklers and smoke detectors',
        number: `${area}${gap}`,
        why: 'What a detector or a sprinkler of the room sees ends at the roof of the booth, and a booth close below one can blind it. Where sprinklers are asked for, codes differ: one edition of a US standard (NFPA 13 of 2024, at second hand) exempts some free-standing enclosures up to 24 ft2.',
        ask: 'Keep clear of heads and detectors that are there, and ask your local fire officer whether the booth needs its own.',
      }),
    ];
  });
}
