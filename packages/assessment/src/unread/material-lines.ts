import type { Booth, BoothSpec } from '@boothwright/language';

/** Facts of a booth that hold materials and on which not everything depends, by the word that begins their line. */
const lineOf: Readonly<Partial<Record<keyof Booth, string>>> = { linings: 'lining', vents: 'vent' };

/**
 * The lines of the booths that use a material, where these are linings and vents alone; null where it is in a wall, a door or
 * a window, or nowhere: a layer of a material that could not be read may have gone from any wall.
 */
export function materialLines({ booths, assemblies }: BoothSpec, name: string): ReadonlySet<string> | null {
  const lines = new Set<string>();
  if (holds([...assemblies.values()], name)) return null;
  for (const booth of booths) {
    for (const [fact, value] of Object.entries(booth)) {
      if (!holds(value, name)) continue;
      const line = lineOf[fact as keyof Booth];
      if (line === undefined) return null;
      lines.add(line);
    }
  }
  return lines.size === 0 ? null : lines;
}

/** Whether a material of this name is anywhere in a part of the spec. */
function holds(value: unknown, name: string): boolean {
  if (value === null || typeof value !== 'object') return false;
  if (Array.isArray(value)) return value.some((entry) => holds(entry, name));
  if (value instanceof Map) return holds([...value.values()], name);
  const { material } = value as { readonly material?: { readonly name?: unknown } };
  return material?.name === name || Object.values(value).some((entry) => holds(entry, name));
}
