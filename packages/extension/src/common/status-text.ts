import type { Headline } from './protocol.js';

/** Longer texts push everything else out of the status bar. */
const longest = 90;

/** What the status bar says of a booth: `$(mic) cabin: 3 of 5 met · 21 dBA inside`. Numbers of an earlier text are marked. */
export function statusText({ booth, text, state }: Headline): string {
  const icon = { fresh: '$(mic)', pending: '$(loading~spin)', stale: '$(history)' }[state];
  const said = `${booth}: ${state === 'stale' ? 'was ' : ''}${text}`;
  return `${icon} ${said.length > longest ? `${said.slice(0, longest - 1)}…` : said}`;
}

/** What stands beside it, one line each. */
export function statusDetails({ missed, state }: Headline): readonly string[] {
  const age = {
    fresh: [],
    pending: ['Numbers from before the last change; the new ones are being worked out.'],
    stale: ['Numbers from before the text was broken; the problems say where.'],
  }[state];
  return [...age, ...(missed.length === 0 ? ['Nothing is missed.'] : missed)];
}
