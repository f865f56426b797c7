import type { Passage, Site } from '@boothwright/language';
import type { TextRange } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import type { Judge } from './best-pose.js';
import { cornerPlay, halfTurnPlay } from './corner-turn.js';
import { rectangleFit } from './rectangle-fit.js';

/** Something that every panel must go through on its way into the room. */
export interface Way {
  readonly name: string;
  readonly kind: 'doorway' | 'lift' | 'passage';
  readonly range: TextRange;
  /** Physical inputs in one line, for memory and for sentences. */
  readonly key: string;
  readonly judge: Judge;
  /** m; a height that is not said is not judged */
  readonly headroom: number | undefined;
}

/** Lift, passages and doorway, in the order in which a panel meets them. */
export function waysOf(site: Site): Way[] {
  return [
    ...(site.lift === undefined ? [] : [liftWay(site.lift)]),
    ...site.passages.map(passageWay),
    ...(site.doorway === undefined ? [] : [doorWay(site.doorway)]),
  ];
}

/**
 * A lift car W x D x H: the shadow of the panel must fit in the floor of the car, in any direction, and its height in that
 * of the car. The opening of the car's door is not known and not judged.
 */
function liftWay(lift: NonNullable<Site['lift']>): Way {
  const width = lift.width.value;
  const depth = lift.depth.value;
  const height = lift.height.value;
  return {
    name: 'lift',
    kind: 'lift',
    range: textRange(lift.width.range),
    key: `lift ${width} ${depth} ${height}`,
    headroom: height,
    judge: ({ long, broad, tall }) => {
      const plan = rectangleFit(long, broad, width, depth);
      return { play: Math.min(height - tall, plan.play), diagonal: plan.angled };
    },
  };
}

/** An opening W x H in a thin wall, gone through along the longer side of the shadow. */
function doorWay(doorway: NonNullable<Site['doorway']>): Way {
  const width = doorway.width.value;
  const height = doorway.height.value;
  return {
    name: 'doorway',
    kind: 'doorway',
    range: textRange(doorway.width.range),
    key: `doorway ${width} ${height}`,
    headroom: height,
    judge: ({ long, broad, tall }) => ({ play: Math.min(height - tall, width - Math.min(long, broad)) }),
  };
}

/** A passage of one width, with a quarter or half turn into one of another. Slopes and steps are not in it. */
function passageWay(passage: Passage): Way {
  const width = passage.width.value;
  const onto = passage.onto?.value ?? width;
  const headroom = passage.headroom?.value;
  const turn = passage.turn.value;
  return {
    name: passage.name,
    kind: 'passage',
    range: textRange(passage.nameRange),
    key: `passage ${turn} ${width} ${onto} ${headroom ?? ''}`,
    headroom,
    judge: ({ long, broad, tall }) => {
      const above = headroom === undefined ? Number.POSITIVE_INFINITY : headroom - tall;
      // What does not go under need not be turned.
      if (above < -maxShort) return { play: above };
      const plan =
        turn === 'quarter'
          ? cornerPlay(long, broad, width, onto)
          : turn === 'half'
            ? halfTurnPlay(long, broad, width, onto)
            : Math.min(width, onto) - Math.min(long, broad);
      return { play: Math.min(above, plan) };
    },
  };
}

/** m; a pose this much too high is no near miss whose plan would be of interest. */
const maxShort = 0.3;
