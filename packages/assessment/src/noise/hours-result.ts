import type { BoothSpec, Requirement, Session } from '@boothwright/language';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { isAskedOf } from '../requirements/asked-of.js';
import { judgeRoomTone } from '../requirements/room-tone.js';
import { unlessUnread } from '../requirements/unless-unread.js';
import type { HoursResult } from '../result/noise-result.js';
import type { Verdict } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import { clockOfMinutes, hourSpans } from './hour-spans.js';
import { hoursOfDay, hoursOfSession } from './hour-states.js';

type RoomToneRequirement = Extract<Requirement, { kind: 'room-tone' }>;

/** The booth with the hours of the day judged. */
export function withHours(assessed: AssessedBooth, spec: BoothSpec): AssessedBooth {
  const hours = hoursResult(assessed, spec);
  if (hours === null) return assessed;
  const { result } = assessed;
  return { ...assessed, result: { ...result, noise: { ...result.noise, hours } } };
}

/** Which hours meet which room-tone requirement; null when no source has hours. */
export function hoursResult(assessed: AssessedBooth, spec: BoothSpec): HoursResult | null {
  const { states, hours } = assessed;
  if (states.length === 0) return null;
  const requirements = spec.requirements.filter(
    (requirement): requirement is RoomToneRequirement =>
      requirement.kind === 'room-tone' && isAskedOf(requirement, assessed.booth.name),
  );
  const judgedStates = states.map((state) =>
    requirements.map((requirement) => unlessUnread(judgeRoomTone(requirement, state), requirement, spec).verdict),
  );
  const verdictAt = (hour: number, requirement: number) =>
    judgedStates[hours.stateOfHour[hour] as number]?.[requirement] as Verdict;
  const sources = spec.site?.sources ?? [];
  return {
    stateOfHour: hours.stateOfHour,
    states: states.map(({ result }, index) => ({
      sources: result.noise.bySource.map(({ name }) => name),
      notPredicted: (hours.states[index] ?? []).flatMap((place) =>
        sources[place]?.kind === 'impact' ? [sources[place].name] : [],
      ),
      dBA: result.noise.total.dBA,
      nc: result.noise.total.nc?.text ?? null,
      verdicts: judgedStates[index] as Verdict[],
    })),
    requirements: requirements.map((requirement, index) => {
      const at = (verdict: Verdict) =>
        Array.from({ length: hoursOfDay }, (_, hour) => verdictAt(hour, index) === verdict);
      const met = at('met');
      return {
        text: requirement.text,
        range: textRange(requirement.range),
        hoursMet: met.filter(Boolean).length,
        met: met.some(Boolean) ? hourSpans(met) : [],
        words: hoursWords(limitWords(requirement), met, at('not-assessed')),
      };
    }),
    session: spec.session === undefined ? null : sessionWithin(spec.session, requirements, verdictAt),
  };
}

function hoursWords(limit: string, met: readonly boolean[], open: readonly boolean[]): string {
  if (open.every(Boolean)) return `whether any hour meets ${limit} is not known`;
  const unknown = open.some(Boolean) ? `; not known for ${joined(hourSpans(open))}` : '';
  if (!met.some(Boolean)) return `no hour meets ${limit}${unknown}`;
  return `${joined(hourSpans(met))} meets ${limit}${unknown}`;
}

/** `NC 15`, `27 dBA`, `-60 dBFS`. */
function limitWords({ limit }: RoomToneRequirement): string {
  const { decibels, weighting } = limit.value;
  if (weighting === 'NC') return `NC ${decimals(decibels, 0)}`;
  const unit = { A: 'dBA', C: 'dBC', Z: 'dB', none: 'dB', FS: 'dBFS' }[weighting];
  return `${decimals(decibels, 0)} ${unit}`;
}

function sessionWithin(
  session: Session,
  requirements: readonly RoomToneRequirement[],
  verdictAt: (hour: number, requirement: number) => Verdict,
): HoursResult['session'] {
  const { starts, length } = session;
  if (starts === undefined) return null;
  const startsMinutes = starts.value / 60;
  const endsMinutes = startsMinutes + length.value / 60;
  const touched = hoursOfSession(session);
  const verdicts = requirements.map((_, index): Verdict => {
    const each = touched.map((hour) => verdictAt(hour, index));
    if (each.includes('missed')) return 'missed';
    return each.includes('not-assessed') ? 'not-assessed' : 'met';
  });
  const part = (verdict: Verdict, word: string) => {
    const limits = requirements.filter((_, index) => verdicts[index] === verdict).map(limitWords);
    return limits.length === 0 ? [] : [`${word} ${joined(limits)}`];
  };
  const words = [...part('met', 'meets'), ...part('missed', 'misses'), ...part('not-assessed', 'leaves open')];
  const span = `the session, ${clockOfMinutes(startsMinutes)} to ${clockOfMinutes(endsMinutes)},`;
  return {
    startsMinutes,
    endsMinutes,
    verdicts,
    words: words.length === 0 ? `${span} has no room-tone requirement to meet` : `${span} ${joined(words)}`,
  };
}
