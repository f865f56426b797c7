import { BrokenLine, expecting, fail, isWord, next, type ParserState, peek, report } from './parser-state.js';
import type { ClockNode, Slot, Span } from './tree.js';

const EXPECTED = 'a time of day such as `06:00`';

/** Reads a time of day from `0:00` to `24:00`; complains and throws `BrokenLine` when there is none. */
export function parseClock(state: ParserState): ClockNode {
  if (state.probe) expecting(state, { kind: 'clock' });
  const token = peek(state);
  if (token.kind !== 'clock') return rejectOther(state);
  next(state);
  const [hours, minutes] = token.text.split(':') as [string, string];
  const half = peek(state);
  if (half.text === ':' && peek(state, 1).kind === 'number') return rejectSeconds(state, token);
  if (half.kind === 'word' && /^[ap]m$/i.test(half.text)) return rejectHalfDay(state, token, hours, minutes);
  const seconds = Number(hours) * 3600 + Number(minutes) * 60;
  const isTime = hours.length <= 2 && minutes.length === 2 && Number(minutes) < 60 && seconds <= 86_400;
  if (isTime) return { text: token.text, seconds, from: token.from, to: token.to };
  const why =
    minutes.length === 2 && Number(minutes) > 59
      ? 'an hour has minutes from 00 to 59'
      : minutes.length !== 2
        ? 'the minutes have two digits'
        : 'a day goes from 0:00 to 24:00';
  report(state, 'no-such-time', token, `\`${token.text}\` is no time of day: ${why}`, nearTime(hours, minutes));
  throw new BrokenLine();
}

/** `7:05` for `7:5`, which may also stand for `7:50`; `0:30` for `24:30`. */
function nearTime(hours: string, minutes: string): string {
  const hour = Number(hours);
  const isDigit = minutes.length === 1 && hours.length <= 2 && hour < 24;
  if (isDigit && Number(minutes) < 6) return `write \`${hours}:0${minutes}\` or \`${hours}:${minutes}0\``;
  if (isDigit) return `write \`${hours}:0${minutes}\``;
  if (hour === 24 && /^[0-5]\d$/.test(minutes)) return `write \`0:${minutes}\` for that much past midnight`;
  return 'write it like `6:00` or `22:30`';
}

function rejectSeconds(state: ParserState, first: Span): never {
  const to = peek(state, 1).to;
  const [found, wanted] = [state.text.slice(first.from, to), state.text.slice(first.from, first.to)];
  report(
    state,
    'time-of-day',
    { from: first.from, to },
    `expected ${EXPECTED}, found \`${found}\``,
    `write \`${wanted}\``,
  );
  throw new BrokenLine();
}

/** Times of day that have a name, and stretches that people call by one. */
const NAMED_TIMES: Readonly<Record<string, string>> = {
  noon: 'write `12:00`',
  midday: 'write `12:00`',
  midnight: 'write `0:00`, or `24:00` for the end of a day',
  night: 'say from when to when, like `22:00 to 6:00`',
  nights: 'say from when to when, like `22:00 to 6:00`',
  day: 'say from when to when, like `6:00 to 22:00`',
  daytime: 'say from when to when, like `6:00 to 22:00`',
  evening: 'say from when to when, like `18:00 to 22:00`',
  morning: 'say from when to when, like `6:00 to 9:00`',
  always: 'leave `hours` out when the noise is there at any hour',
};

/** What people write for a time of day: `6 h`, `6.30`, `6 pm`, `6`. */
function rejectOther(state: ParserState): never {
  const number = peek(state);
  const word = peek(state, 1);
  const whole = number.kind === 'number' ? /^(\d{1,2})(?:\.([0-5]\d))?$/.exec(number.text) : null;
  const named =
    number.kind === 'word' && Object.hasOwn(NAMED_TIMES, number.text) ? NAMED_TIMES[number.text] : undefined;
  if (!whole) fail(state, 'time-of-day', EXPECTED, named);
  if (word.kind === 'word' && /^[ap]m$/i.test(word.text))
    return rejectHalfDay(state, number, whole[1]!, whole[2] ?? '00');
  const isHour = word.kind === 'word' && /^(h|hour|hours|hr|hrs|Uhr)$/.test(word.text);
  const to = isHour ? word.to : number.to;
  const isInDay = Number(whole[1]) < 24;
  report(
    state,
    'time-of-day',
    { from: number.from, to },
    `expected ${EXPECTED}, found \`${state.text.slice(number.from, to)}\``,
    isInDay ? `write \`${whole[1]}:${whole[2] ?? '00'}\`` : 'a day goes from 0:00 to 24:00',
  );
  throw new BrokenLine();
}

/** The day is counted to 24. */
function rejectHalfDay(state: ParserState, first: Span, hours: string, minutes: string): never {
  const word = peek(state).kind === 'word' ? peek(state) : peek(state, 1);
  const hour = Number(hours);
  const isHour = hour >= 1 && hour <= 12 && /^[0-5]\d$/.test(minutes);
  const inDay = (hour % 12) + (/^p/i.test(word.text) ? 12 : 0);
  report(
    state,
    'time-of-day',
    { from: first.from, to: word.to },
    `expected ${EXPECTED}, found \`${state.text.slice(first.from, word.to)}\``,
    isHour ? `write \`${inDay}:${minutes}\`` : 'a day goes from 0:00 to 24:00',
  );
  throw new BrokenLine();
}

/** Reads `06:00 to 22:00, 23:00 to 02:00`; a stretch that ends before it begins goes over midnight. */
export function parseHours(state: ParserState, slot: string, slots: Map<string, Slot>): void {
  const spans: (Span & { begins: ClockNode; ends: ClockNode })[] = [];
  do {
    if (spans.length > 0) next(state);
    const begins = parseClock(state);
    if (state.probe) expecting(state, { kind: 'word', word: 'to' });
    const between = peek(state);
    const end = peek(state, 1);
    if (!isWord(between, 'to')) {
      const isSpan =
        (between.kind === 'symbol' || between.kind === 'other' || between.kind === 'word') && end.kind === 'clock';
      fail(
        state,
        'hours-incomplete',
        '`to` and the time at which it ends',
        `write it like \`${begins.text} to ${isSpan ? end.text : '22:00'}\``,
      );
    }
    next(state);
    const ends = parseClock(state);
    spans.push({ begins, ends, from: begins.from, to: ends.to });
    slots.set(slot, { kind: 'hours', spans, from: spans[0]!.from, to: ends.to });
  } while (peek(state).kind === 'symbol' && peek(state).text === ',');
}
