import type { JudgedContext } from '../assessment-context.js';
import { genericDesignLoads } from '../build/generic-design-loads.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** The booth presses harder than a common design load, or than the limit that the text states. */
export function floorLoad({ spec, booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const load = result.build.floorLoadPa / 1000;
    const limit = spec.site?.floor?.limit?.value;
    const stated = limit === undefined ? undefined : limit / 1000;
    if (load <= Math.min(genericDesignLoads.bedroom, stated ?? Number.POSITIVE_INFINITY)) return [];
    const beside = stated === undefined ? '' : `; stated limit ${decimals(stated, 2)} kPa`;
    return [
      caution('floor-load', spec.site?.floor?.limit?.range ?? booth.nameRange, {
        hazard: 'The booth may load the floor beyond what it was designed for',
        number: `${decimals(load, 2)} kPa over ${decimals(result.build.footprintM2, 2)} m2 with people inside${beside}; often-quoted design loads: bedroom ${genericDesignLoads.bedroom}, homes ${genericDesignLoads.homes}, other rooms ${genericDesignLoads.otherRooms} kPa`,
        why: 'Walls are tall compared with the footprint, and feet or runners concentrate the load further. This is not a check of a floor: what it carries depends on its joists, their span and their state.',
        ask: 'Show mass and footprint to a structural engineer, and ask the owner, before buying the first sheet.',
      }),
    ];
  });
}
