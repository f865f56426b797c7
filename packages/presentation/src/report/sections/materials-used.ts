import type { BoothSpec, Material } from '@boothwright/language';

/** Materials that build-ups, booths and the budget name, in the order in which they are met. */
export function materialsUsed(spec: BoothSpec): readonly Material[] {
  const found = new Map<string, Material>();
  const seen = new Set<object>();
  const visit = (value: unknown) => {
    if (value === null || typeof value !== 'object' || seen.has(value)) return;
    seen.add(value);
    if (isMaterial(value)) {
      found.set(value.name, value);
      return;
    }
    const inner = value instanceof Map ? value.values() : Object.values(value);
    for (const each of inner) visit(each);
  };
  visit(spec.assemblies);
  visit(spec.booths);
  visit(spec.budget);
  return [...found.values()];
}

function isMaterial(value: object): value is Material {
  return 'fromCatalogue' in value && 'name' in value && 'kind' in value;
}

/** What the materials of the text itself give as their source. */
export function ownSources(spec: BoothSpec): readonly { readonly name: string; readonly source: string }[] {
  return [...spec.materials.values()]
    .filter(({ fromCatalogue, source }) => !fromCatalogue && source !== undefined)
    .map(({ name, source }) => ({ name, source: source?.value ?? '' }));
}
