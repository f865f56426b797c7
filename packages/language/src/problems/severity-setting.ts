import type { Severity } from '../model/problem.js';
import { didYouMean } from '../text/did-you-mean.js';
import { problemTable } from './problem-table.js';

/** How a problem can be told. */
export const severityLevels = ['error', 'warning', 'hint', 'off'] as const satisfies readonly (Severity | 'off')[];

export type SeverityLevel = (typeof severityLevels)[number];

export function isSeverityLevel(level: unknown): level is SeverityLevel {
  return (severityLevels as readonly unknown[]).includes(level);
}

/**
 * What is wrong with the wish to tell the problems of `id` at `level`, no full stop at its end; undefined when it can
 * be followed. `others` are identifiers that the caller can tell otherwise beside those of the text.
 */
export function severityComplaint(id: string, level: unknown, others: ReadonlySet<string> = new Set()) {
  const entry = Object.hasOwn(problemTable, id) ? problemTable[id] : undefined;
  if (entry === undefined && !others.has(id)) {
    const near = didYouMean(id, [...settable(), ...others]);
    return `found no problem \`${id}\`${near === undefined ? '' : `; did you mean \`${near}\`?`}`;
  }
  if (!isSeverityLevel(level)) return `\`${id}\` is told as one of ${severityLevels.join(', ')}; found ${shown(level)}`;
  if (entry?.severity === 'error' && level !== 'error') {
    return `\`${id}\` is always an error: what could not be read does not become known by a setting`;
  }
  return undefined;
}

function settable(): readonly string[] {
  return Object.keys(problemTable).filter((id) => problemTable[id]?.severity !== 'error');
}

function shown(level: unknown): string {
  if (typeof level === 'string') return level === '' ? 'nothing' : `\`${level.slice(0, 40)}\``;
  return level === null ? 'null' : `a value that is no word (${typeof level})`;
}
