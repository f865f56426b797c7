import type { Assembly } from '../model/booth-spec.js';
import type { SourceRange } from '../model/sourced.js';
import { type CheckContext, type Program, refer } from './context.js';
import { reportUnknown } from './names.js';
import { readAssembly } from './read-assembly.js';

/** One per reading; a context with its complaints muted shares it. */
const caches = new WeakMap<Program, Map<string, Assembly | undefined>>();

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
  if (!cache.has(name)) cache.set(name, readAssembly(ctx, ctx.program.assemblies.get(name)!.statement));
  return cache.get(name);
}
