import { limits } from '../limits.js';
import type { Assembly, Material } from '../model/booth-spec.js';
import type { SourceRange } from '../model/sourced.js';
import { type CheckContext, complain, ofReferenceKey, type Program, refer } from './context.js';
import { declaredMaterial, reportUnknown } from './names.js';
import { DEFAULT_LUMBER, readAssembly } from './read-assembly.js';
import { rememberer } from './remembered.js';

/** One per reading; a context with its complaints muted shares it. */
const caches = new WeakMap<Program, Map<string, Assembly | undefined>>();
/** Those that are being read, the outermost first. */
const open = new WeakMap<Program, string[]>();

/** The assembly of a name, read on first use; undefined and reported when there is none. */
export function assemblyNamed(ctx: CheckContext, name: string, range: SourceRange): Assembly | undefined {
  if (!ctx.program.assemblies.has(name)) {
    if (!ctx.broken.has(name)) reportUnknown(ctx, name, range, 'assembly');
    return undefined;
  }
  refer(ctx, 'assembly', name, range);
  return declaredAssembly(ctx, name);
}

export function declaredAssembly(ctx: CheckContext, name: string): Assembly | undefined {
  let cache = caches.get(ctx.program);
  if (!cache) {
    cache = new Map();
    caches.set(ctx.program, cache);
  }
  if (!cache.has(name)) {
    const busy = open.get(ctx.program) ?? [];
    open.set(ctx.program, busy);
    busy.push(name);
    cache.set(name, readOwn(ctx, ctx.program.assemblies.get(name)!.statement));
    busy.pop();
  }
  return cache.get(name);
}

/** One that is made of materials alone is read again only when it or one of them changed. */
const readOwn = rememberer(
  (ctx, statement) => readAssembly(ctx, statement, assemblyWithin),
  (references, ctx) => {
    const names = [DEFAULT_LUMBER];
    for (const key of references.keys()) {
      const { kind, name } = ofReferenceKey(key);
      if (kind !== 'material') return undefined;
      names.push(name);
    }
    const materials = names.map((name) => materialOf(ctx, name));
    return (other) => names.every((name, i) => materialOf(other, name) === materials[i]);
  },
);

/** What a layer's name means; an assembly of the name would stand for its own layers. */
function materialOf(ctx: CheckContext, name: string): Material | 'assembly' | undefined {
  if (ctx.program.assemblies.has(name)) return 'assembly';
  return ctx.program.materials.has(name) ? declaredMaterial(ctx, name) : undefined;
}

/** The assembly whose layers stand in another one; undefined and reported when it is made of itself. */
function assemblyWithin(ctx: CheckContext, name: string, range: SourceRange): Assembly | undefined {
  const busy = open.get(ctx.program) ?? [];
  if (busy.includes(name)) {
    refer(ctx, 'assembly', name, range);
    const cycle = [...busy.slice(busy.indexOf(name)), name];
    complain(ctx, 'assembly-cycle', range, `\`${name}\` is made of itself: ${cycle.join(' -> ')}`, {
      hint: 'list the layers of one of them instead',
    });
    return undefined;
  }
  if (busy.length > limits.assemblyDepth) {
    complain(
      ctx,
      'assemblies-too-deep',
      range,
      `assemblies can be made of each other at most ${limits.assemblyDepth} deep`,
      {
        hint: 'list the layers here',
      },
    );
    return undefined;
  }
  return assemblyNamed(ctx, name, range);
}
