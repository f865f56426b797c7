import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import type { Found } from './found.js';

/** A reflection so strong at the microphone that it colours the voice: one finding for each thing that makes one. */
export function reflectionAtTheMicrophone({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ result: { reflections } }) => {
    if (reflections === null) return [];
    const { early, limitDb } = reflections;
    // Of several sides of one thing the strongest speaks, it stands first.
    const strong = early.filter(
      (each, index) =>
        each.strong && early.findIndex(({ name, kind }) => name === each.name && kind === each.kind) === index,
    );
    return strong.map((each) => {
      const dip = each.dipDb === null ? 'to nothing' : `${decimals(-each.dipDb, 1)} dB down`;
      const { covered } = each;
      return {
        id: 'reflection-at-the-microphone',
        severity: 'warning' as const,
        range: each.range,
        message: `The ${each.name} returns the voice to the mic ${decimals(-each.levelDb, 0)} dB below the direct sound and ${decimals(each.delayMs, 1)} ms late: a hole at ${hertz(each.firstNullHz)}`,
        explanation: `Its way is ${decimals(each.pathDifferenceM, 2)} m longer than the ${decimals(reflections.directM, 2)} m from mouth to mic. Where that is half a wave it takes the voice ${dip}, where it is a whole one it adds ${decimals(each.peakDb, 1)} dB, and so on upwards: a hollow sound that no equaliser takes out.`,
        source: `Mirror images and the comb of two sounds; more than ${decimals(limitDb, 0)} dB is the project's own limit, after common practice. docs/findings/reflection-at-the-microphone.md`,
        fix: `${each.todo.charAt(0).toUpperCase()}${each.todo.slice(1)}.${
          covered?.dipDb == null
            ? ''
            : ` With 80 % absorbed the ripple is +${decimals(covered.peakDb, 1)}/${decimals(covered.dipDb, 1)} dB.`
        }`,
        figures: {
          levelDb: each.levelDb,
          delayMs: each.delayMs,
          firstNullHz: each.firstNullHz,
          pathDifferenceM: each.pathDifferenceM,
          peakDb: each.peakDb,
          ...(each.dipDb === null ? {} : { dipDb: each.dipDb }),
          limitDb,
        },
        related: [],
      };
    });
  });
}
