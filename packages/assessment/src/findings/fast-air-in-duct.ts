import type { JudgedContext } from '../assessment-context.js';
import type { Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';

/**
 * Highest air speed at a free opening that supplies a room of NC 15 to 20, m/s: 300 ft/min. Openings for return air may
 * have 360 ft/min, 1.83 m/s. Source: M. D. Egan, Architectural Acoustics, table "Recommended air velocities at registers
 * and grilles", read at second hand; the author from memory.
 */
export const quietSpeed = 1.52;
/** The same for air that leaves the room. */
export const quietReturnSpeed = 1.83;
/** The speed that the fix aims at, m/s: the lower end of the supply row (250 ft/min). */
export const aimedSpeed = 1.27;

const partWords = {
  duct: 'in the duct',
  chamber: 'in the lined box',
  maze: 'between the boards',
  grille: 'at the grille',
} as const;

/** Air in a duct is so fast that it is heard at the opening; its noise is not in the prediction. */
export function fastAirInDuct({ booths }: JudgedContext): Finding[] {
  return booths.flatMap(({ booth, result }) => {
    const slow = result.air?.judged === 'low';
    return result.ventilation.vents.flatMap(
      ({ name, direction, directionStated, flowLowM3PerS, flowHighM3PerS, sections }) => {
        const opening = booth.vents.find((candidate) => candidate.name === name);
        const flow = slow ? flowLowM3PerS : flowHighM3PerS;
        if (opening === undefined || flow === null) return [];
        // A vent whose direction is only assumed may be the one that supplies.
        const limit = direction === 'out' && directionStated ? quietReturnSpeed : quietSpeed;
        const fastest = sections
          .map(({ part, lowMPerS, highMPerS }) => ({ part, speed: (slow ? lowMPerS : highMPerS) ?? 0 }))
          .reduce((best, section) => (section.speed > best.speed ? section : best), {
            part: 'duct' as const,
            speed: 0,
          });
        if (fastest.speed <= limit) return [];
        const area = flow / aimedSpeed;
        const diameter = Math.sqrt((4 * area) / Math.PI);
        return [
          {
            id: 'fast-air-in-duct',
            severity: 'warning' as const,
            range: textRange(opening.nameRange),
            message: `${name}: the air moves at ${decimals(fastest.speed, 1)} m/s ${partWords[fastest.part]}, where quiet rooms keep below ${decimals(limit, 2)} m/s`,
            explanation: `Air that is fast where it enters the room hisses, and its noise rises steeply with its speed, about 50 to 60 lg v (from memory). Grilles and dampers make it worse. The noise of the grille is not in the predicted level inside.`,
            source:
              'M. D. Egan, Architectural Acoustics, table of recommended air velocities at registers and grilles, NC 15 to 20, read at second hand, the author from memory; speed = flow / clear area. docs/findings/fast-air-in-duct.md',
            fix: `For ${decimals(flow * 1000, 1)} L/s a clear area of ${decimals(area * 1e4, 0)} cm2${fastest.part === 'duct' ? `, a round duct of ${decimals(diameter * 1000, 0)} mm,` : ''} brings it to ${decimals(aimedSpeed, 2)} m/s.`,
            figures: {
              speedMPerS: fastest.speed,
              quietSpeedMPerS: limit,
              flowLPerS: flow * 1000,
              aimedDiameterM: diameter,
            },
            related: [],
          },
        ];
      },
    );
  });
}
