import { catalogue } from '../catalog/catalogue.js';
import { limits } from '../limits.js';
import type { Material } from '../model/booth-spec.js';
import type { SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { didYouMeanAdvice } from '../text/advice.js';
import { TRADE_NAMES } from '../vocabulary/trade-names.js';
import { nameOf } from './block-reader.js';
import { type CheckContext, complain, isCatalogue, meantHint, type Program, refer } from './context.js';
import { readMaterial } from './read-material.js';
import { rememberer } from './remembered.js';

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

/** One of the spec's own is read again only when it changed, or rests on a named value. */
const readOwn = rememberer(readMaterial, (references) => (references.size === 0 ? () => true : undefined));

/** The material of a name, read on first use; undefined and reported when there is none. */
export function materialNamed(
  ctx: CheckContext,
  name: string,
  range: SourceRange,
  use: 'layer' | 'frame' = 'layer',
): Material | undefined {
  const declaration = ctx.program.materials.get(name);
  if (!declaration) {
    if (!ctx.broken.has(name)) reportUnknown(ctx, name, range, 'material', use);
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
  } else material = readOwn(ctx, statement);
  cache.set(name, material);
  return material;
}

/** Complains about a name that is not there, or that is of the other sort. */
export function reportUnknown(
  ctx: CheckContext,
  name: string,
  range: SourceRange,
  kind: 'material' | 'assembly',
  use: 'layer' | 'frame' = 'layer',
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
  const trade = kind === 'material' ? tradeName(name, use) : undefined;
  const unused =
    kind === 'material' && ![...materials.values()].some((declaration) => isCatalogue(declaration.statement.file));
  if (unused && reportWithoutCatalogue(ctx, name, range, trade)) return;
  const near =
    trade !== undefined && own.has(trade)
      ? didYouMeanAdvice(trade)
      : meantHint(ctx, name, [...own.keys(), ...(kind === 'material' ? ['air', 'frame'] : [])]);
  const hint =
    near ??
    (lets.has(name)
      ? `\`${name}\` is a value, not ${kind === 'material' ? 'a material' : 'an assembly'}`
      : `declare it: \`${kind} ${name} { … }\``);
  complain(ctx, 'unknown-name', range, `no ${kind} is called \`${name}\``, { hint });
}

/** A wood is boards in a layer and studs in a frame. */
function tradeName(name: string, use: 'layer' | 'frame'): string | undefined {
  const trade = Object.hasOwn(TRADE_NAMES, name) ? TRADE_NAMES[name] : undefined;
  return use === 'frame' ? trade?.replace(/^(softwood|oak)-board$/, '$1').replace('steel-sheet', 'steel-stud') : trade;
}

let catalogueNames: ReadonlySet<string> | undefined;

/**
 * Without `use catalog` every layer of a spec is unknown: that is one mistake, told at the first place with the others
 * beside it. False when the catalogue would not help.
 */
function reportWithoutCatalogue(
  ctx: CheckContext,
  name: string,
  range: SourceRange,
  trade: string | undefined,
): boolean {
  catalogueNames ??= new Set(catalogue().tree.statements.flatMap((statement) => nameOf(statement)?.name ?? []));
  if (!catalogueNames.has(name) && trade === undefined) return false;
  const inCatalogue = trade === undefined ? '' : `, where \`${name}\` is called \`${trade}\``;
  const first = ctx.problems.findIndex(({ id }) => id === 'catalogue-missing');
  const earlier = ctx.problems[first];
  if (!earlier) {
    complain(ctx, 'catalogue-missing', range, `no material is called \`${name}\``, {
      hint: `add \`use catalog\` for the materials that ship with the language${inCatalogue}`,
    });
    return true;
  }
  const related = earlier.related ?? [];
  if (related.length < limits.related)
    ctx.problems[first] = {
      ...earlier,
      related: [...related, { range, message: `\`${trade ?? name}\` is there too` }],
    };
  return true;
}
