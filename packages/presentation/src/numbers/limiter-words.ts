import type { BoothResult } from '@boothwright/assessment';
import { pathWords } from './path-words.js';

/** What limits a requirement in words; a path of the booth by its name, anything else as it is called. */
export function limiterWords(limitedBy: string | null, booth: BoothResult | undefined): string {
  if (limitedBy === null) return '';
  const path = booth?.paths.find(({ id }) => id === limitedBy);
  return path ? pathWords(path) : limitedBy.replaceAll('-', ' ');
}
