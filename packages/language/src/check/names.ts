import type { Material } from '../model/booth-spec.js';
import type { SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type CheckContext, complain, isCatalogue, meantHint, type Program, refer } from './context.js';
import { readMaterial } from './read-material.js';

/** One per reading; a context with its complaints muted shares it. */
const caches = new WeakMap<Program, Map<string, Material | undefined>>();

function cacheOf(ctx: CheckContext): Map<string, Material | undefined> {
  let cache = caches.get(ctx.program);
  if (!cache) {
    cache = new Map();
    caches.set(ctx.program, cache);
  }
  return cache;
}

/** Catalogue materials refer to nothing, so each is read once for all checks of the same parsed catalogue. */
const catalogueMaterials = new WeakMap<Statement, { material: Material | undefined; values: CheckContext['values'] }>();

/** The material of a name, read on first use; undefined and reported when there is none. */
export function materialNamed(ctx: CheckContext, name: string, range: SourceRange): Material | undefined {
  const declaration = ctx.program.materials.get(name);
  if (!declaration) {
    if (!ctx.broken.has(name)) reportUnknown(ctx, name, range, 'material');
    return undefined;
  }
  refer(ctx, 'material', name, range);
  return declaredMaterial(ctx, name);
}

export function declaredMaterial(ctx: CheckContext, name: string): Material | undefined {
  const cache = cacheOf(ctx);
  if (cache.has(name)) return cache.get(name);
  const { statement } = ctx.program.materials.get(name)!;
  let material: Material | undefined;
  if (isCatalogue(statement.file)) {
    let known = catalogueMaterials.get(statement);
    if (!known) {
      const own: CheckContext = { ...ctx, values: [] };
      known = { material: readMaterial(own, statement), values: own.values };
      catalogueMaterials.set(statement, known);
    }
    material = known.material;
    ctx.values.push(...known.values);
  } else material = readMaterial(ctx, statement);
  cache.set(name, material);
  return material;
}

/** Complains about a name that is not there, or that is of the other sort. */
export function reportUnknown(
  ctx: CheckContext,
  name: string,
  range: SourceRange,
  kind: 'material' | 'assembly',
): void {
  const { materials, assemblies, lets } = ctx.program;
  const own = kind === 'material' ? materials : assemblies;
  const other = kind === 'material' ? assemblies : materials;
  if (other.has(name)) {
    const found = kind === 'material' ? 'an assembly' : 'a material';
    const hint =
      kind === 'material'
        ? 'layers are materials; list its layers here'
        : `declare \`assembly …\` with \`${name}\` as a layer`;
    complain(
      ctx,
      'wrong-sort-of-name',
      range,
      `\`${name}\` is ${found}, and ${kind === 'material' ? 'a material' : 'an assembly'} belongs here`,
      { hint },
    );
    return;
  }
  const near = meantHint(ctx, name, [...own.keys(), ...(kind === 'material' ? ['air', 'frame'] : [])]);
  const unused =
    kind === 'material' && ![...materials.values()].some((declaration) => isCatalogue(declaration.statement.file));
  const hint =
    near ??
    (lets.has(name)
      ? `\`${name}\` is a value, not ${kind === 'material' ? 'a material' : 'an assembly'}`
      : unused
        ? 'add `use catalog` for the materials that ship with the language'
        : `declare it: \`${kind} ${name} { … }\``);
  complain(ctx, 'unknown-name', range, `no ${kind} is called \`${name}\``, { hint });
}
