import { limits } from '../limits.js';
import type { Problem } from '../model/problem.js';
import type { Statement } from '../syntax/tree.js';
import { nameOf } from './block-reader.js';
import { type Declaration, headerOf, isCatalogue, type Program, rangeIn } from './context.js';

/** Names of one reading by sort. What the user declares comes before the catalogue's name; twins are reported. */
export function buildProgram(statements: readonly Statement[], problems: Problem[]): Program {
  const maps = {
    let: new Map<string, Declaration>(),
    material: new Map<string, Declaration>(),
    assembly: new Map<string, Declaration>(),
  };
  const taken = new Map<string, Declaration>();
  const single = new Map<string, Statement>();
  for (const statement of statements) {
    const fact = statement.fact;
    if (!fact) continue;
    if (!fact.declares) {
      if (!fact.repeats) reportSecond(statement, single, problems);
      continue;
    }
    const named = nameOf(statement);
    if (!named || fact.declares === 'variant') continue;
    const declaration: Declaration = { kind: fact.declares, name: named.name, statement, nameSpan: named.nameRange };
    const earlier = taken.get(named.name);
    if (earlier) {
      if (!isCatalogue(statement.file)) reportTwin(declaration, earlier, problems);
      continue;
    }
    taken.set(named.name, declaration);
    if (fact.declares in maps) maps[fact.declares as keyof typeof maps].set(named.name, declaration);
  }
  return { statements, lets: maps.let, materials: maps.material, assemblies: maps.assembly };
}

function reportTwin(declaration: Declaration, earlier: Declaration, problems: Problem[]): void {
  if (problems.length > limits.problems) return;
  const sort = earlier.kind === 'let' ? 'value' : earlier.kind;
  problems.push({
    id: 'name-twice',
    severity: 'error',
    message: `${/^[aeio]/.test(sort) ? 'an' : 'a'} ${sort} called \`${declaration.name}\` is already there`,
    range: rangeIn(declaration.statement.file, declaration.nameSpan),
    hint: 'give one of the two another name',
    related: [{ range: rangeIn(earlier.statement.file, earlier.nameSpan), message: 'the first stands here' }],
  });
}

function reportSecond(statement: Statement, single: Map<string, Statement>, problems: Problem[]): void {
  const keyword = statement.fact!.keyword;
  const first = single.get(keyword);
  if (problems.length > limits.problems) return;
  if (!first) {
    single.set(keyword, statement);
    return;
  }
  problems.push({
    id: 'block-twice',
    severity: 'error',
    message: `there is a \`${keyword}\` already`,
    range: headerOf(statement),
    hint: 'a spec has one; bring the two together',
    related: [{ range: headerOf(first), message: 'the first stands here' }],
  });
}
