import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';

/** A span of time in which nothing is switched and nobody comes or goes. */
export type ScheduleSpan<Setting> = {
  /** s */
  readonly seconds: number;
  /** What holds in it: people, steps of a fan, the state outside. */
  readonly setting: Setting;
};

/**
 * States at some times of a schedule whose settings are constant span by span.
 *
 * Rule: each span starts where the last one ended; `advance` gives the state a number of seconds into a setting, as
 * `zoneConcentrations`, `zoneTemperatures` and `zoneVapour` do. At a change the span that ends there is read.
 * Units: times s from the start of the schedule. Source: our own, exact as long as `advance` is.
 * Errors: ArgumentError for a span or a time that can't be, or a time after the end of the schedule.
 *
 * @example
 * ```ts
 * import { followSchedule, zoneConcentrations } from '@boothwright/acoustics/ventilation';
 *
 * const zones = { volumes: [4], between: [[0]], fromOutside: [0.005] };
 * const advance = (state: number[], people: number, seconds: number) =>
 *   zoneConcentrations(zones, { outside: 450, generation: [people * 5e-6] }, state, seconds);
 * const spans = [{ seconds: 600, setting: 1 }, { seconds: 600, setting: 0 }];
 * const [atTheBreak, atTheEnd] = followSchedule([450], spans, advance, [600, 1200]);
 * atTheBreak?.[0]; // 978
 * atTheEnd?.[0]; // 699
 * ```
 */
export function followSchedule<State, Setting>(
  start: State,
  spans: readonly ScheduleSpan<Setting>[],
  advance: (state: State, setting: Setting, seconds: number) => State,
  times: readonly number[],
): State[] {
  const starts: number[] = [];
  const states: State[] = [];
  let [elapsed, state] = [0, start];
  spans.forEach(({ seconds, setting }, index) => {
    requireNumber(`length of span ${index + 1} of ${spans.length}`, seconds, { above: 0, unit: 'seconds' });
    starts.push(elapsed);
    states.push(state);
    state = advance(state, setting, seconds);
    elapsed += seconds;
  });
  return times.map((time, index) => {
    const words = `time ${index + 1} of ${times.length}`;
    requireNumber(words, time, { atLeast: 0, unit: 'seconds' });
    if (time > elapsed) throw new ArgumentError(words, time, `at most ${elapsed}, the end of the schedule`);
    if (time === 0) return start;
    const span = starts.findLastIndex((from) => from < time);
    return advance(states[span]!, spans[span]!.setting, time - starts[span]!);
  });
}
