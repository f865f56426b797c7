import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Free width or depth that a standing or seated person needs at least, m. Evidence: common practice. */
export const narrowestPlace = 0.6;

/** Between the linings nobody has room, whatever the height. */
export function tooNarrowToStand({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) => {
    const [width, depth] = result.geometry.usableM;
    const sides = [
      { name: 'width', free: width, inside: booth.inside.width },
      { name: 'depth', free: depth, inside: booth.inside.depth },
    ].filter(({ free }) => free < narrowestPlace - 1e-9);
    const [worst] = sides.toSorted((a, b) => a.free - b.free);
    if (worst === undefined) return [];
    const whole = (metres: number) => decimals(metres * 1000, 0);
    const missing = narrowestPlace - worst.free;
    const told = sides.map(({ name, free }) => `${whole(free)} mm of ${name}`).join(' and ');
    return [
      {
        id: 'too-narrow-to-stand',
        severity: 'warning' as const,
        range: textRange(worst.inside.range),
        message: `${booth.name}: ${told} stay free between the linings, and nobody stands or sits in less than ${whole(narrowestPlace)} mm`,
        explanation: `Shoulders and elbows take about ${whole(narrowestPlace)} mm (common practice), and a voice so close to an absorber on both sides is heard with it.`,
        source: 'Inside width and depth less the linings. docs/findings/too-narrow-to-stand.md',
        fix: `Check the thickness of the linings and the size inside, then widen the inside by ${Math.ceil(missing * 1000 - 1e-6)} mm or line it thinner.`,
        figures: { freeM: worst.free, neededM: narrowestPlace, missingM: missing },
        related: [],
      },
    ];
  });
}
