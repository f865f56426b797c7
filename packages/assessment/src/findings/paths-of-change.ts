import type { Assembly, Booth } from '@boothwright/language';
import type { BoothPath } from '../booth/booth-path.js';

/**
 * Which ways in a change of build-ups alone can make quieter: those through faces, doors and windows whose layers differ.
 * Null for a change of anything else, which may reach every way in.
 */
export function pathsOfChange(before: Booth, after: Booth): ((path: BoothPath) => boolean) | null {
  if (!isSame(before, after, ['faces', 'doors', 'windows'])) return null;
  if (before.doors.length !== after.doors.length || before.windows.length !== after.windows.length) return null;
  if (!before.doors.every((door, index) => isSame(door, after.doors[index]!, ['leaf']))) return null;
  if (!before.windows.every((window, index) => isSame(window, after.windows[index]!, ['pane']))) return null;
  const differ = (one: Assembly | undefined, other: Assembly | undefined) => one?.layers !== other?.layers;
  const ids = new Set([
    ...Object.entries(before.faces).flatMap(([face, built]) =>
      differ(built?.assembly, after.faces[face as keyof Booth['faces']]?.assembly) ? [`face ${face}`] : [],
    ),
    ...before.doors.flatMap(({ name, leaf }, index) =>
      differ(leaf, after.doors[index]!.leaf) ? [`door ${name}`] : [],
    ),
    ...before.windows.flatMap(({ name, pane }, index) =>
      differ(pane, after.windows[index]!.pane) ? [`window ${name}`] : [],
    ),
  ]);
  return ({ result: { kind, name } }) => ids.has(`${kind} ${name}`);
}

/** Whether all facts but those named are the very same. */
function isSame<T extends object>(one: T, other: T, but: readonly (keyof T)[]): boolean {
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]) as Set<keyof T>;
  return [...keys].every((key) => but.includes(key) || one[key] === other[key]);
}
