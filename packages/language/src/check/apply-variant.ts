import { limits } from '../limits.js';
import type { Slot, Statement } from '../syntax/tree.js';
import { renamedProblem } from '../text/renamed-problem.js';
import { formerWord } from '../vocabulary/former-words.js';
import type { BlockName, Fact } from '../vocabulary/shape.js';
import { blockOf } from '../vocabulary/vocabulary.js';
import { nameOf, slotOf } from './block-reader.js';
import { type CheckContext, complain, headerOf, meantHint, refer } from './context.js';
import { here, type Override, parseValue, type Word } from './override.js';
import { slotParts } from './slot-parts.js';
import { withUnwritten } from './unwritten-parts.js';
import { changeLayer, layerNames, layersCalled } from './variant-layers.js';

/** The statements of the base with those of a variant put in their place. */
export function applyVariant(ctx: CheckContext, base: readonly Statement[], variant: Statement): readonly Statement[] {
  let statements = base;
  const changes = variant.block?.statements ?? [];
  for (const statement of changes.slice(0, limits.changes)) {
    if (!statement.fact) continue;
    if (statement.fact.keyword === '') statements = applyOverride(ctx, statements, statement);
    else statements = replaceDeclaration(ctx, statements, statement);
  }
  const beyond = changes[limits.changes];
  if (beyond)
    complain(
      ctx,
      'too-many-changes',
      headerOf(beyond),
      `only the first ${limits.changes} of ${changes.length} changes of this variant are made`,
      {
        hint: 'make it a spec of its own',
      },
    );
  return statements;
}

function replaceDeclaration(
  ctx: CheckContext,
  statements: readonly Statement[],
  statement: Statement,
): readonly Statement[] {
  const fact = statement.fact!;
  const named = nameOf(statement);
  if (fact.declares && !named) return statements;
  const at = statements.findIndex(
    (other) => other.fact?.keyword === fact.keyword && (!fact.declares || nameOf(other)?.name === named!.name),
  );
  if (at === -1) return [...statements, statement];
  if (fact.declares && named) refer(ctx, fact.declares, named.name, named.nameRange);
  return statements.with(at, statement);
}

function applyOverride(
  ctx: CheckContext,
  statements: readonly Statement[],
  statement: Statement,
): readonly Statement[] {
  const path = slotOf(statement, 'path', 'words')?.words;
  const tokens = slotOf(statement, 'value', 'tokens')?.tokens;
  if (!path || !tokens || !statement.complete) return statements;
  const override: Override = { ctx, statement, path, tokens };
  const at = findRoot(override, statements);
  if (at === undefined) return statements;
  const root = statements[at]!;
  const changed =
    root.fact!.keyword === 'let' ? changeLet(override, root) : change(override, root, 1, nameOf(root)?.name);
  return changed ? statements.with(at, changed) : statements;
}

const UNNAMED = ['site', 'session', 'budget'];

/** Index of the statement that the first word of the path names. */
function findRoot(override: Override, statements: readonly Statement[]): number | undefined {
  const { ctx, path } = override;
  const first = path[0]!;
  const roots = statements.flatMap((statement, i) => {
    const keyword = statement.fact?.keyword ?? '';
    const name = UNNAMED.includes(keyword)
      ? keyword
      : statement.fact?.declares && statement.fact.declares !== 'variant'
        ? nameOf(statement)?.name
        : undefined;
    return name === undefined ? [] : [{ name, i, statement }];
  });
  const found = roots.find(({ name }) => name === first.word);
  if (!found) {
    if (ctx.broken.has(first.word)) return undefined;
    if (UNNAMED.includes(first.word)) {
      complain(ctx, 'path', here(override, first), `the base has no \`${first.word}\` to change`, {
        hint: `write the whole \`${first.word} { … }\` in the variant`,
      });
      return undefined;
    }
    complain(ctx, 'unknown-name', here(override, first), `nothing is called \`${first.word}\``, {
      hint:
        meantHint(
          ctx,
          first.word,
          roots.map(({ name }) => name),
        ) ?? 'an override names a `let`, a booth, a material, or `site`, `session`, `budget`',
    });
    return undefined;
  }
  const kind = found.statement.fact!.declares;
  if (kind) refer(ctx, kind, first.word, here(override, first));
  if (kind !== 'let' && path.length === 1) {
    complain(
      ctx,
      'path',
      here(override, first),
      kind === 'assembly'
        ? `\`${first.word}\` is an assembly; say which of its layers changes`
        : `\`${first.word}\` is a ${kind ?? first.word} block; say which of its facts changes`,
      {
        hint: `write \`${first.word}.${layerNames(found.statement)[0] ?? factNames(found.statement)[0] ?? 'fact'} = …\``,
      },
    );
    return undefined;
  }
  if (kind === 'let' && path.length > 1) {
    complain(ctx, 'path', here(override, path[1]!), `\`${first.word}\` is a value and has no \`${path[1]!.word}\``);
    return undefined;
  }
  return found.i;
}

function factNames(statement: Statement): readonly string[] {
  if (!statement.block) return [];
  const facts = blockOf(statement.block.name).facts.filter(
    (fact) => fact.keyword !== '' && !fact.declares && fact.keyword !== 'lining' && fact.keyword !== 'source',
  );
  return facts.map((fact) => fact.keyword.replace(' ', '.'));
}

function namedChildren(statement: Statement): readonly { readonly name: string; readonly child: Statement }[] {
  return (statement.block?.statements ?? []).flatMap((child) => {
    const name = child.fact?.declares && nameOf(child)?.name;
    return name ? [{ name, child }] : [];
  });
}

/** The statement with what the path from `depth` on names changed in it; undefined when that has been complained about. */
function change(
  override: Override,
  statement: Statement,
  depth: number,
  container: string | undefined,
): Statement | undefined {
  const { ctx, path } = override;
  const word = ofToday(override, statement, path[depth]!);
  const child = namedChildren(statement).find(({ name }) => name === word.word)?.child;
  if (child) {
    const inBooth = statement.fact?.keyword === 'booth';
    refer(ctx, child.fact!.declares!, word.word, here(override, word), inBooth ? container : undefined);
    const deeper = path[depth + 1];
    const inner = child.fact!.block;
    const next =
      deeper && inner && !slotParts(child.fact!.parts).has(deeper.word)
        ? change(override, child.block ? child : withEmptyBlock(child, inner.name), depth + 1, container)
        : changeNamed(override, child, depth + 1);
    return next && replaceChild(statement, child, next);
  }
  const layers = layersCalled(statement, word.word);
  if (layers.length > 1) return reportSeveral(override, word, layers.length);
  if (layers[0]) {
    const kind = ctx.program.assemblies.has(word.word) ? 'assembly' : 'material';
    refer(ctx, kind, word.word, here(override, word));
    const next = changeLayer(override, layers[0], depth + 1);
    return next && replaceChild(statement, layers[0], next);
  }
  const facts = statement.block ? blockOf(statement.block.name).facts : [];
  const two = path[depth + 1]
    ? facts.find((fact) => fact.keyword === `${word.word} ${path[depth + 1]!.word}`)
    : undefined;
  const fact =
    two ??
    facts.find(
      (candidate) =>
        candidate.keyword === word.word &&
        !candidate.declares &&
        // A lining is all block: what changes is one of its layers, or how much it covers.
        (candidate.keyword !== 'lining' || path.length > depth + 1),
    );
  if (!fact) return reportPath(override, statement, word, facts);
  const used = depth + (two ? 2 : 1);
  const same = statement.block!.statements.filter((candidate) => candidate.fact === fact);
  if (fact.repeats && same.length > 1) return reportSeveral(override, word, same.length);
  // What is all block, such as `panels`, can be begun here.
  const existing = same[0] ?? (fact.block && fact.parts.length === 0 ? begun(override, fact, word) : undefined);
  if (existing && fact.block && used < path.length && !slotParts(fact.parts).has(path[used]!.word)) {
    const opened = existing.block ? existing : withEmptyBlock(existing, fact.block.name);
    const next = change(override, opened, used, container);
    return next && (same[0] ? replaceChild(statement, existing, next) : addChild(statement, next));
  }
  const next = changeFact(override, fact, existing, used);
  return next && (same[0] ? replaceChild(statement, same[0], next) : addChild(statement, next));
}

/** A fact by its former name is the same fact, and told so. */
function ofToday(override: Override, { block }: Statement, word: Word): Word {
  const former = block && formerWord(block.name, word.word);
  if (!former) return word;
  const written = former.now.replace(' ', '.');
  override.ctx.problems.push(renamedProblem(former, here(override, word), written));
  return { ...word, word: former.now };
}

function reportSeveral(override: Override, word: Word, count: number): undefined {
  complain(
    override.ctx,
    'path',
    here(override, word),
    `\`${word.word}\` stands ${count} times here, and nothing tells one from the other`,
    { hint: `write the whole ${override.path[0]!.word} in the variant, or use a \`let\` in it` },
  );
}

/** An empty block of a fact that the base does not give. */
function begun({ statement }: Override, fact: Fact, word: Word): Statement {
  return {
    ...statement,
    fact,
    keyword: { word: fact.keyword, from: word.from, to: word.to },
    slots: new Map(),
    clause: undefined,
    block: { name: fact.block!.name, statements: [], closed: true, from: word.to, to: word.to },
    complete: true,
  };
}

function reportPath(override: Override, statement: Statement, word: Word, facts: readonly Fact[]): undefined {
  const { ctx } = override;
  const halves = facts
    .filter((fact) => fact.keyword.startsWith(`${word.word} `))
    .map((fact) => fact.keyword.replace(' ', '.'));
  const owner = nameOf(statement)?.name ?? statement.fact!.keyword;
  if (halves.length > 0)
    complain(
      ctx,
      'path',
      here(override, word),
      `\`${word.word}\` of \`${owner}\` is not one fact but ${halves.length}`,
      { hint: `write ${halves.map((half) => `\`${half}\``).join(' or ')}` },
    );
  else {
    const known = [
      ...layerNames(statement),
      ...factNames(statement),
      ...namedChildren(statement).map(({ name }) => name),
    ];
    const lining =
      word.word === 'lining' ? 'name what changes in it, like `lining.cover`, or write the whole booth' : undefined;
    complain(ctx, 'unknown-name', here(override, word), `\`${owner}\` has no \`${word.word}\``, {
      hint:
        lining ??
        meantHint(ctx, word.word, known) ??
        `it has ${known
          .slice(0, 12)
          .map((name) => `\`${name}\``)
          .join(', ')}`,
    });
  }
  return undefined;
}

/** A line whose block was left out, such as `mic at …`, can still be given facts. */
function withEmptyBlock(statement: Statement, name: BlockName): Statement {
  return {
    ...statement,
    block: { name, statements: [], closed: true, from: statement.headerTo, to: statement.headerTo },
  };
}

function replaceChild(statement: Statement, child: Statement, next: Statement): Statement {
  const block = statement.block!;
  return {
    ...statement,
    block: { ...block, statements: block.statements.map((other) => (other === child ? next : other)) },
  };
}

function addChild(statement: Statement, next: Statement): Statement {
  const block = statement.block!;
  return { ...statement, block: { ...block, statements: [...block.statements, next] } };
}

/** A named line such as a noise or an item: all of it behind its name, or one part. */
function changeNamed(override: Override, child: Statement, used: number): Statement | undefined {
  const { ctx, path } = override;
  const fact = child.fact!;
  if (fact.block?.required && used === path.length) {
    const word = path[used - 1]!;
    complain(
      ctx,
      'path',
      here(override, word),
      `\`${word.word}\` is a ${fact.declares}; say which of its facts changes`,
      { hint: `write \`${path.map((w) => w.word).join('.')}.${factNames(child)[0] ?? 'fact'} = …\`` },
    );
    return undefined;
  }
  const rest: Fact = { ...fact, parts: fact.parts.filter((part) => part.kind !== 'new-name' && part.kind !== 'title') };
  const next = changeFact(override, rest, child, used);
  if (!next || used < path.length) return next;
  const kept = new Map(
    [...child.slots]
      .filter(([slot]) => slot === 'name' || slot === 'title')
      .map(([slot, value]) => [slot, { ...value, file: child.file } as Slot]),
  );
  return { ...next, fact, slots: new Map([...kept, ...next.slots]) };
}

/** The whole fact written anew, or one part of it put into what is there. */
function changeFact(
  override: Override,
  fact: Fact,
  existing: Statement | undefined,
  used: number,
): Statement | undefined {
  const { ctx, statement, path } = override;
  if (used === path.length) {
    const written = parseValue(override, fact.parts, fact.example);
    if (!written) return undefined;
    const slots = withUnwritten(fact, written, existing);
    return {
      ...statement,
      fact,
      keyword: { word: fact.keyword, from: path[0]!.from, to: path.at(-1)!.to },
      slots,
      clause: undefined,
      block: existing?.block,
      complete: true,
    };
  }
  const word = path[used]!;
  const parts = slotParts(fact.parts);
  const part = parts.get(word.word);
  const isInside =
    !existing &&
    fact.block &&
    blockOf(fact.block.name).facts.some(({ keyword }) => keyword.split(' ')[0] === word.word);
  if (!isInside && (!part || path.length > used + 1)) {
    const bad = part ? path[used + 1]! : word;
    complain(ctx, 'unknown-name', here(override, bad), `\`${path[used - 1]!.word}\` has no \`${bad.word}\``, {
      hint:
        meantHint(ctx, bad.word, parts.keys()) ??
        (parts.size > 1 ? `its parts are ${[...parts.keys()].map((name) => `\`${name}\``).join(', ')}` : undefined),
    });
    return undefined;
  }
  if (!existing) {
    complain(
      ctx,
      'path',
      here(override, word),
      `\`${fact.keyword}\` is not given in the base, so no part of it can change`,
      { hint: `change the whole of it, like \`${fact.example}\`` },
    );
    return undefined;
  }
  const slots = parseValue(override, [part!], fact.example);
  if (!slots) return undefined;
  const whole: Fact = { ...fact, parts: [part!] };
  const renamed = [...withUnwritten(whole, slots, existing)].map(([, slot]): [string, Slot] => [
    word.word,
    { ...slot, file: statement.file },
  ]);
  return { ...existing, slots: new Map([...existing.slots, ...renamed]) };
}

function changeLet(override: Override, root: Statement): Statement | undefined {
  const { statement } = override;
  const slots = parseValue(override, [{ kind: 'any-value', slot: 'value' }], statement.fact!.example);
  const value = slots?.get('value');
  if (!value) return undefined;
  return { ...root, slots: new Map([...root.slots, ['value', { ...value, file: statement.file }]]) };
}
