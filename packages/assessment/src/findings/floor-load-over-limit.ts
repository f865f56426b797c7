import type { JudgedContext } from '../assessment-context.js';
import { gravity } from '../build/build-result.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';
import { missedRequirements } from './missed-requirements.js';

/** The booth presses harder on the floor than the text asks for: how much would have to go, or on what area it would fit. */
export function floorLoadOverLimit(context: JudgedContext): Found[] {
  return missedRequirements(context, 'floor-load').map(({ requirement, assessed: { booth, result } }) => {
    const { loadedMassKg, footprintM2, floorLoadPa, massByPart } = result.build;
    const limitPa = requirement.limit * 1000;
    const tooMuch = loadedMassKg - (limitPa * footprintM2) / gravity;
    const footprint = (loadedMassKg * gravity) / limitPa;
    const heaviest = massByPart.reduce((best, part) => (part.kg > best.kg ? part : best), { part: '', kg: 0 });
    return {
      id: 'floor-load-over-limit',
      severity: 'warning' as const,
      range: requirement.range,
      message: `${booth.name} loads the floor with ${decimals(floorLoadPa / 1000, 2)} kPa, ${decimals((floorLoadPa - limitPa) / 1000, 2)} kPa more than asked`,
      explanation: `${decimals(loadedMassKg, 0)} kg with people and contents stand on ${decimals(footprintM2, 2)} m2. The heaviest part is ${heaviest.part} with ${decimals(heaviest.kg, 0)} kg. This is a mean over the footprint; under feet, runners and walls the floor bears more.`,
      source: 'Mass times gravity over the outside footprint. docs/findings/floor-load-over-limit.md',
      fix: `${decimals(tooMuch, 0)} kg would have to go, or the same mass would have to be spread over ${decimals(footprint, 2)} m2 by a deck that is stiff enough to spread it. Neither shows that the floor carries it: a structural engineer has to look at joists, span and state before anything is built.`,
      figures: {
        floorLoadKPa: floorLoadPa / 1000,
        limitKPa: requirement.limit,
        excessKg: tooMuch,
        footprintM2,
        neededFootprintM2: footprint,
      },
      related: [{ range: textRange(booth.nameRange), message: 'this booth' }],
      meets: true,
    };
  });
}
