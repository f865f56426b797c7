import type { Topic } from './comparison-document.js';

/** A figure of one side. */
export interface Figure {
  readonly topic: Topic;
  readonly what: string;
  readonly value: number | null;
  readonly unit: string;
  /** Which way is better; absent where neither is. */
  readonly better?: 'more' | 'less' | undefined;
}

export function figure(
  topic: Topic,
  what: string,
  value: number | null,
  unit: string,
  better?: Figure['better'],
): Figure {
  return { topic, what, value, unit, better };
}

export function turnOf(old: number | null, now: number | null, better: Figure['better']): 'better' | 'worse' | null {
  if (better === undefined || old === null || now === null || old === now) return null;
  return now > old === (better === 'more') ? 'better' : 'worse';
}
