import type { Assembly, BoothSpec, Material } from '@boothwright/language';
import type { Renamed } from '../comparison-document.js';
import { signature } from './leaf.js';
import { usesOf } from './uses-of.js';

/** Which material and which build-up of the old text is which of the new one, whatever they are called. */
export interface SameThings {
  readonly materials: ReadonlyMap<Material, Material>;
  readonly assemblies: ReadonlyMap<Assembly, Assembly>;
  readonly renamed: readonly Renamed[];
}

/**
 * By name and content, then by content alone, which is a new name; then by name alone, which is a change. A build-up that is
 * left over is taken for the one that makes the same faces.
 */
export function sameThings(old: BoothSpec, now: BoothSpec): SameThings {
  const materials = matched(
    [...old.materials.values()],
    [...now.materials.values()],
    (material) => signature(material),
    (material) => signature(material),
    [],
  );
  const token = new Map<object, string>();
  [...materials].forEach(([before, after], index) => {
    token.set(before, `material ${index}`);
    token.set(after, `material ${index}`);
  });
  const known = (thing: object) => token.get(thing);
  const content = (assembly: Assembly) => signature(assembly.layers, known);
  const assemblies = matched([...old.assemblies.values()], [...now.assemblies.values()], content, content, [
    (assembly) => usesOf(assembly, old).join('; '),
    (assembly) => usesOf(assembly, now).join('; '),
  ]);
  return { materials, assemblies, renamed: [...renames('material', materials), ...renames('assembly', assemblies)] };
}

type Named = { readonly name: string };

function matched<T extends Named>(
  old: readonly T[],
  now: readonly T[],
  oldContent: (thing: T) => string,
  newContent: (thing: T) => string,
  uses: readonly [(thing: T) => string, (thing: T) => string] | readonly [],
): ReadonlyMap<T, T> {
  const pairs = new Map<T, T>();
  const free = new Set(now);
  const pass = (oldKey: (thing: T) => string, newKey: (thing: T) => string) => {
    const byKey = new Map<string, T[]>();
    for (const thing of free) {
      const key = newKey(thing);
      byKey.set(key, [...(byKey.get(key) ?? []), thing]);
    }
    for (const thing of old) {
      if (pairs.has(thing)) continue;
      const key = oldKey(thing);
      const found = key === '' ? undefined : byKey.get(key)?.shift();
      if (found === undefined) continue;
      pairs.set(thing, found);
      free.delete(found);
    }
  };
  pass(
    (thing) => `${thing.name} ${oldContent(thing)}`,
    (thing) => `${thing.name} ${newContent(thing)}`,
  );
  pass(oldContent, newContent);
  pass(
    ({ name }) => name,
    ({ name }) => name,
  );
  if (uses.length === 2) pass(uses[0], uses[1]);
  return pairs;
}

function renames(kind: Renamed['kind'], pairs: ReadonlyMap<Named, Named>): Renamed[] {
  return [...pairs].flatMap(([old, now]) => (old.name === now.name ? [] : [{ kind, old: old.name, new: now.name }]));
}
