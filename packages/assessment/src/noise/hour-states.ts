import type { Hours, NoiseSource, Session } from '@boothwright/language';

export const hoursOfDay = 24;
const hourSeconds = 3600;

export interface HourStates {
  /** 24 entries, each an index into `states`. */
  readonly stateOfHour: readonly number[];
  /** Every mix that occurs, as the places of its sources in the list. */
  readonly states: readonly (readonly number[])[];
}

/** Which sources are there in which hour of the day. A source that is there for part of an hour counts for all of it. */
export function hourStatesOf(sources: readonly NoiseSource[]): HourStates {
  const keys: string[] = [];
  const states: number[][] = [];
  const stateOfHour = Array.from({ length: hoursOfDay }, (_, hour) => {
    const present = sources.flatMap((source, index) => (isThere(source.hours, hour) ? [index] : []));
    const key = present.join(' ');
    const known = keys.indexOf(key);
    if (known >= 0) return known;
    keys.push(key);
    states.push(present);
    return keys.length - 1;
  });
  return { stateOfHour, states };
}

/** Without hours a source is there at any hour. */
export function isThere(hours: Hours, hour: number): boolean {
  if (hours === undefined) return true;
  const from = hour * hourSeconds;
  const to = from + hourSeconds;
  return hours.value.some((span) =>
    span.to > span.from ? span.from < to && span.to > from : span.from < to || span.to > from,
  );
}

/** The hours of the day that a session touches; all of them when it does not say when it starts. */
export function hoursOfSession(session: Session | undefined): number[] {
  if (session?.starts === undefined) return Array.from({ length: hoursOfDay }, (_, hour) => hour);
  const first = Math.floor(session.starts.value / hourSeconds);
  const last = Math.max(first, Math.ceil((session.starts.value + session.length.value) / hourSeconds) - 1);
  return [...new Set(Array.from({ length: last - first + 1 }, (_, index) => (first + index) % hoursOfDay))];
}

/** The mixes of sources that decide what is judged: those of the session, or of the whole day. */
export function statesOfSession({ stateOfHour }: HourStates, session: Session | undefined): number[] {
  return [...new Set(hoursOfSession(session).map((hour) => stateOfHour[hour] as number))];
}
