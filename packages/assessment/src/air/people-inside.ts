import type { Effort, Session } from '@boothwright/language';
import { co2RiseShare as betweenPeople } from '../uncertainty/model-uncertainty.js';

/**
 * What the body does at an effort of the voice, met, as it is taken, and as it may be at least and at most.
 * Evidence: our own, from memory of tables of activities: sitting and talking 1.5, standing and talking 1.8, singing on one's feet 2.0, acting
 * about 3 met; what lies about the ordinary is in the spread between people. The voice itself costs little: S.-J. Moon and B. Lindblom (15th International Congress of Phonetic Sciences, 2003,
 * abstract) found that oxygen use rises with vocal effort in everybody, and that it stays small. What costs is the body that goes with it.
 */
export const activityOfEffort: Readonly<
  Record<Effort, { readonly met: number; readonly least: number; readonly most: number }>
> = {
  casual: { met: 1.4, least: 1.4, most: 1.4 },
  normal: { met: 1.4, least: 1.4, most: 1.4 },
  raised: { met: 1.6, least: 1.4, most: 2 },
  loud: { met: 1.8, least: 1.4, most: 2.5 },
  shout: { met: 2, least: 1.4, most: 3 },
};

/**
 * Activity for which the defaults of breath and warmth stand, met. 20 L/h is what Table 4 of A. Persily and L. de Jonge (Indoor
 * Air 27, 2017; read in a transcription) gives a man of 21 to 30 years at 1.4 met: 0.0056 L/s.
 */
export const ordinaryActivity = 1.4;

/** Share of the heat of more effort that leaves dry; the rest is sweat and breath. Source: as of `peopleInside`. */
const dryShareOfMore = 0.5;

/** What one person inside gives off. */
export interface PeopleInside {
  /** met; null where the text states the breath itself */
  readonly activity: number | null;
  /** m3/s of carbon dioxide, and of somebody who sits in the room */
  readonly breath: number;
  readonly breathInRoom: number;
  /** The breath at least and at most, as shares of it. */
  readonly range: { readonly low: number; readonly high: number };
  /** W dry, and W bound in moisture */
  readonly dryHeat: number;
  readonly moistHeat: number;
}

/**
 * Breath, warmth and moisture of one person at the effort of the session.
 *
 * Equation: what is not stated goes with the activity M: G = G_0 M/M_0; of the heat of more activity, (P_d + P_m)(M/M_0 - 1), half
 * leaves dry and half as moisture. What the text states stands as it is. Units: m3/s, W, met.
 * Source: A. Persily and L. de Jonge, Indoor Air 27, 2017 (breath in proportion to the activity); the half from the comfort equations of
 * P. O. Fanger, in which sweat takes 0.42 and breath about 0.08 of each watt more (from memory).
 * Valid: everybody inside at that effort all the time, which is the cautious reading; the met of an effort are our own.
 */
export function peopleInside(session: Session): PeopleInside {
  const { co2Rate, bodyHeat, bodyMoisture } = session;
  const { met, least, most } = activityOfEffort[session.effort.value];
  const more = met / ordinaryActivity - 1;
  const open = co2Rate.origin.kind === 'default';
  const extra = more * (bodyHeat.value + bodyMoisture.value);
  return {
    activity: open ? met : null,
    breath: open ? co2Rate.value * (1 + more) : co2Rate.value,
    breathInRoom: co2Rate.value,
    range: open
      ? { low: 1 - rootOfSquares(1 - least / met), high: 1 + rootOfSquares(most / met - 1) }
      : { low: 1 - betweenPeople, high: 1 + betweenPeople },
    dryHeat: bodyHeat.value + (bodyHeat.origin.kind === 'default' ? dryShareOfMore * extra : 0),
    moistHeat: bodyMoisture.value + (bodyMoisture.origin.kind === 'default' ? (1 - dryShareOfMore) * extra : 0),
  };
}

/** The spread between people and that of the activity, independent of each other. */
function rootOfSquares(share: number): number {
  return Math.hypot(betweenPeople, share);
}
