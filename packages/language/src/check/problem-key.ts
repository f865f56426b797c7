import type { Problem } from '../model/problem.js';

/** Two problems with the same key are the same complaint about the same place. */
export function problemKey({ id, range, message }: Problem): string {
  return `${id}\n${range.file}\n${range.from}\n${range.to}\n${message}`;
}
