import type { JudgedContext } from '../assessment-context.js';
import { nominalHz } from '../bands/grid.js';
import { governingBand } from '../noise/governing.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Up to here sound through the structure usually outweighs what comes through the air, Hz. Evidence: common practice. */
export const structureBorneUpTo = 100;

/**
 * A room tone that is missed, or may be, and that low sound decides, while the text names something that shakes the building: mass in the walls of
 * the booth does not stop what comes through the floor.
 */
export function structureBorneLowSound({ spec, booths, requirements }: JudgedContext): Found[] {
  const impacts = (spec.site?.sources ?? []).filter((source) => source.kind === 'impact');
  if (impacts.length === 0) return [];
  return booths.flatMap(({ booth, result }) => {
    const inDoubt = requirements.find(
      ({ kind, verdict, withinRange, booth: name }) =>
        kind === 'room-tone' && (verdict === 'missed' || withinRange) && name === booth.name,
    );
    const band = governingBand(result.noise.total.byBand, 'Z');
    if (inDoubt === undefined || band === null) return [];
    const hz = nominalHz[band] as number;
    if (hz > structureBorneUpTo) return [];
    const names = joined(impacts.map((source) => source.title ?? source.name));
    return [
      {
        id: 'structure-borne-low-sound',
        severity: 'information' as const,
        range: textRange((impacts[0] as (typeof impacts)[number]).nameRange),
        message: `${booth.name}: the noise inside is strongest at ${hertz(hz)}, and ${names} may reach it through the structure, where no wall of the booth stops it`,
        explanation: `Up to about ${structureBorneUpTo} Hz a floor or a pipe often carries more than the air does. The predicted ${hertz(hz)} is the airborne part alone; what comes on top is not predicted. Mass in walls and roof lowers the airborne part only.`,
        source: 'Common practice; the bound is ours. docs/findings/structure-borne-low-sound.md',
        fix: `Before buying mass for ${hertz(hz)}, record it at the place of the booth with the microphone on the floor and then hanging free: if the floor is louder, cure it at the source (pump, boiler or machine on soft mounts, pipe clips with rubber) and stand the booth on mounts that are soft at ${hertz(hz)}.`,
        figures: { strongestHz: hz },
        related: impacts.slice(1).map((source) => ({ range: textRange(source.nameRange), message: 'this one too' })),
      },
    ];
  });
}
