import type { Assembly, Booth, BoothSpec, Material, Requirement, Site } from '../model/booth-spec.js';
import type { Statement } from '../syntax/tree.js';
import { declaredAssembly } from './assembly-names.js';
import { checkRoomAir } from './check-room-air.js';
import type { CheckContext } from './context.js';
import { checkStanding } from './geometry/check-standing.js';
import { declaredMaterial } from './names.js';
import { readBooth } from './read-booth.js';
import { readBudget } from './read-budget.js';
import { readRequirement } from './read-requirement.js';
import { readSession } from './read-session.js';
import { readSite } from './read-site.js';
import { letValue } from './read-value.js';

/** Reads one program, base or variant, into a spec; what cannot be understood is left out and reported. */
export function readSpec(ctx: CheckContext, file: string): Omit<BoothSpec, 'variants' | 'unread'> {
  const { program } = ctx;
  for (const name of program.lets.keys()) letValue(ctx, name);
  const materials = new Map<string, Material>();
  for (const name of program.materials.keys()) {
    const material = declaredMaterial(ctx, name);
    if (material) materials.set(name, material);
  }
  const assemblies = new Map<string, Assembly>();
  for (const name of program.assemblies.keys()) {
    const assembly = declaredAssembly(ctx, name);
    if (assembly) assemblies.set(name, assembly);
  }
  const first = <T>(keyword: string, read: (ctx: CheckContext, statement: Statement) => T): T | undefined => {
    const statement = program.statements.find((candidate) => candidate.fact?.keyword === keyword);
    return statement && read(ctx, statement);
  };
  const site = first('site', readSite);
  const session = first('session', readSession);
  checkRoomAir(ctx, site, session);
  return {
    file,
    materials,
    assemblies,
    site,
    booths: readBooths(ctx, site),
    session,
    budget: first('budget', readBudget),
    requirements: readRequirements(ctx, site),
  };
}

function readBooths(ctx: CheckContext, site: Site | undefined): Booth[] {
  const seen = new Set<string>();
  return ctx.program.statements.flatMap((statement) => {
    if (statement.fact?.keyword !== 'booth') return [];
    const booth = readBooth(ctx, statement);
    if (!booth || seen.has(booth.name)) return [];
    seen.add(booth.name);
    checkStanding(ctx, booth, site);
    return [booth];
  });
}

function readRequirements(ctx: CheckContext, site: Site | undefined): Requirement[] {
  return ctx.program.statements.flatMap((statement) => {
    if (!statement.fact?.keyword.startsWith('require ')) return [];
    const requirement = readRequirement(ctx, statement, site);
    return requirement ? [requirement] : [];
  });
}
