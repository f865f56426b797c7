import type { Renamed } from './comparison-document.js';

/** Puts the new names into what the old side tells, so that a name alone is no difference. */
export interface Renaming {
  readonly words: (text: string) => string;
  readonly assembly: (name: string) => string;
  readonly booth: (name: string | null) => string | null;
}

export function renamingOf(renamed: readonly Renamed[], booths: ReadonlyMap<string, string>): Renaming {
  const all = new Map<string, string>([...booths].filter(([old, now]) => old !== now));
  for (const { old, new: now } of renamed) all.set(old, now);
  const assemblies = new Map(renamed.filter(({ kind }) => kind === 'assembly').map((one) => [one.old, one.new]));
  // Names are words of letters, figures and hyphens; all at once, so that two that swap their names do.
  const words = (text: string) =>
    all.size === 0 ? text : text.replace(/[\p{L}\p{N}_-]+/gu, (word) => all.get(word) ?? word);
  return {
    words,
    assembly: (name) => assemblies.get(name) ?? name,
    booth: (name) => (name === null ? null : (booths.get(name) ?? name)),
  };
}
