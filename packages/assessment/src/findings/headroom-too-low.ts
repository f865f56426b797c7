import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Air between the top of the head and what hangs from the roof, m. Evidence: common practice. */
export const headClearance = 0.1;
/** Height of a seated person above the floor over the height standing, on a chair. Evidence: from memory, not checked. */
export const seatedShare = 0.76;

/** The performer does not fit under the lined roof. */
export function headroomTooLow({ spec: { session }, booths }: JudgedContext): Found[] {
  if (session?.stature === undefined) return [];
  const { stature, posture } = session;
  const sits = posture.value === 'sits';
  const needed = stature.value * (sits ? seatedShare : 1) + headClearance;
  return booths.flatMap(({ booth, result }) => {
    const height = result.geometry.usableM[2];
    const missing = needed - height;
    if (missing <= 1e-9) return [];
    const whole = (metres: number) => decimals(metres * 1000, 0);
    return [
      {
        id: 'headroom-too-low',
        severity: 'warning' as const,
        range: textRange(booth.inside.height.range),
        message: `${booth.name}: ${whole(height)} mm stay clear under the lining, and somebody of ${whole(stature.value)} mm who ${sits ? 'sits' : 'stands'} needs ${whole(needed)} mm`,
        explanation: `A head close to an absorber hears and records it, and ${whole(headClearance)} mm above the head are practice.${sits ? ` Seated, the top of the head is taken at ${decimals(seatedShare * 100, 0)} % of the stature (from memory).` : ''}`,
        source: 'Inside height less the lining of roof and floor. docs/findings/headroom-too-low.md',
        fix: `Raise the inside by ${Math.ceil(missing * 1000 - 1e-6)} mm, line the roof thinner above the head${sits ? '' : ', or sit'}.`,
        figures: { clearHeightM: height, neededM: needed, missingM: missing },
        related: [{ range: textRange(stature.range), message: 'the stature' }],
      },
    ];
  });
}
