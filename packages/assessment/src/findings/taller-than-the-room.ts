import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Room above the roof for hands and tools that put it on, m. Evidence: common practice. */
export const handClearance = 0.1;

/** The booth is higher outside than the room that it is to stand in. */
export function tallerThanTheRoom({ spec, booths }: JudgedContext): Found[] {
  const room = spec.site?.room;
  if (room === undefined) return [];
  return booths.flatMap(({ booth, result }) => {
    const height = result.geometry.outsideM[2];
    const missing = height - room.height.value;
    // Sums of thicknesses carry rounding of the last digits.
    if (missing <= 1e-9) return [];
    const whole = (metres: number) => decimals(metres * 1000, 0);
    // Rounded up, so that taking off the stated millimetres is enough.
    const short = (metres: number) => String(Math.ceil(metres * 1000 - 1e-6));
    return [
      {
        id: 'taller-than-the-room',
        severity: 'warning' as const,
        range: textRange((booth.outside ?? booth.inside).height.range),
        message: `${booth.name} is ${whole(height)} mm high outside and the room ${whole(room.height.value)} mm: ${short(missing)} mm are missing`,
        explanation: `${booth.outside === undefined ? 'The outside height is the inside height with roof and floor' : 'The outside height is the stated one'}. Ducts and boxes on the roof come on top, and a roof that is put on from above needs room for hands and tools, about ${whole(handClearance)} mm (common practice).`,
        source: 'Outside height less the height of the room. docs/findings/taller-than-the-room.md',
        fix: `Make the booth ${short(missing)} mm lower to fit at all, and about ${short(missing + handClearance)} mm lower to put the roof on from above; a roof screwed on from inside needs less.`,
        figures: { outsideHeightM: height, roomHeightM: room.height.value, missingM: missing },
        related: [{ range: textRange(room.height.range), message: 'the height of the room' }],
      },
    ];
  });
}
