import { rectangleFit } from './rectangle-fit.js';

/** Degrees between the angles at which a turn is looked at. */
const step = 1;
const angles = Array.from({ length: 90 / step + 1 }, (_, index) => {
  const angle = (index * step * Math.PI) / 180;
  return { sin: Math.sin(angle), cos: Math.cos(angle) };
});

/**
 * Play of a rectangle L x t (plan of what is carried) round a right-angled corner from a passage of width a into one of
 * width b, m; negative by how much it is too large.
 *
 * Turning, with both outer corners of the rectangle on the outer walls at the angle th, it is as far from the inner
 * corner as it can be. It then lies wholly in one passage (L cos th + t sin th <= a or L sin th + t cos th <= b), or the
 * inner corner must be at least t away from its outer side: a sin th + b cos th - L sin th cos th >= t. The play is the
 * least over 0 <= th <= 90 degrees, in steps of one degree with a parabola through the least three. Without turning it
 * goes round where it fits in the a x b rectangle of the corner itself.
 *
 * Source: the ladder in a corner with a thickness; for a = b = 1 it is L = 2 (sqrt 2 - t). Statics of rigid shapes only: no
 * hands, no handrail, no slope. All lengths in m and positive.
 */
export function cornerPlay(long: number, thick: number, from: number, onto: number): number {
  const length = Math.max(long, thick);
  const thickness = Math.min(long, thick);
  return Math.max(rectangleFit(length, thickness, from, onto).play, turningPlay(length, thickness, from, onto));
}

function turningPlay(length: number, thickness: number, from: number, onto: number): number {
  const plays = angles.map(({ sin, cos }) => playAt(length, thickness, from, onto, sin, cos));
  let least = 0;
  for (let index = 1; index < plays.length; index += 1) {
    if ((plays[index] as number) < (plays[least] as number)) least = index;
  }
  const lowest = plays[least] as number;
  const before = plays[least - 1];
  const after = plays[least + 1];
  if (before === undefined || after === undefined) return lowest;
  const bend = before - 2 * lowest + after;
  // At a kink, where one bound takes over from another, a parabola would go too deep by a fraction of a millimetre.
  return bend <= 0 ? lowest : lowest - (before - after) ** 2 / (8 * bend);
}

function playAt(length: number, thickness: number, from: number, onto: number, sin: number, cos: number): number {
  return Math.max(
    from - length * cos - thickness * sin,
    onto - length * sin - thickness * cos,
    from * sin + onto * cos - length * sin * cos - thickness,
  );
}

/**
 * Play of the same rectangle round a half turn, from a flight of width a onto a landing as deep as the narrower flight is
 * wide, and into a flight of width b beside the first, m. It goes round two right-angled corners and lies along the landing,
 * a + b long, between them. That is enough to get round, not the least: a well between the flights or a deeper landing
 * gives more.
 */
export function halfTurnPlay(long: number, thick: number, from: number, onto: number): number {
  const landing = Math.min(from, onto);
  return Math.min(
    cornerPlay(long, thick, from, landing),
    cornerPlay(long, thick, landing, onto),
    from + onto - Math.max(long, thick),
  );
}
