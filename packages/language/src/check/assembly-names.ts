import { limits } from '../limits.js';
import type { Assembly } from '../model/booth-spec.js';
import type { SourceRange } from '../model/sourced.js';
import { type CheckContext, complain, type Program, refer } from './context.js';
import { reportUnknown } from './names.js';
import { readAssembly } from './read-assembly.js';

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
    cache.set(name, readAssembly(ctx, ctx.program.assemblies.get(name)!.statement, assemblyWithin));
    busy.pop();
  }
  return cache.get(name);
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
