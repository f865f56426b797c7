import { limits } from '../limits.js';
import { type Hint, writeAdvice } from '../text/advice.js';
import { renamedProblem } from '../text/renamed-problem.js';
import { formerWord } from '../vocabulary/former-words.js';
import type { Block, BlockName, Fact } from '../vocabulary/shape.js';
import { blockOf, overrideFact, vocabulary } from '../vocabulary/vocabulary.js';
import { EVIDENCE_WORDS } from '../vocabulary/words.js';
import {
  type Braceless,
  belongsOutside,
  closesTooEarly,
  forgottenBraces,
  isStray,
  type Open,
  startsLet,
  startsTopLevel,
} from './brace-guesses.js';
import { factsStartingWith } from './facts-starting-with.js';
import { fixedWords, parseParts } from './parse-parts.js';
import {
  BrokenLine,
  closedString,
  endsFact,
  expecting,
  fail,
  failUnclosed,
  isSymbol,
  isWord,
  meant,
  next,
  type ParserState,
  peek,
  previous,
  report,
  skipLine,
  wordsPassed,
} from './parser-state.js';
import type { BlockNode, Slot, SourceClause, Span, Statement } from './tree.js';

const wordsOf = new WeakMap<Fact, ReadonlySet<string>>();

function factWords(fact: Fact): ReadonlySet<string> {
  let words = wordsOf.get(fact);
  if (!words) {
    words = fixedWords(fact.parts);
    wordsOf.set(fact, words);
  }
  return words;
}

/** Everything outside blocks, to the end of the text. */
export function parseFileStatements(state: ParserState, end = Number.POSITIVE_INFINITY): Statement[] {
  const statements: Statement[] = [];
  for (;;) {
    if (peek(state).from >= end) return statements;
    // Who asks about one token is not concerned with what follows.
    if (state.probe && state.index > state.probe.index) return statements;
    if (state.probe && startsFact(state)) expecting(state, { kind: 'fact', facts: blockOf('file').facts });
    const token = peek(state);
    if (token.kind === 'newline') {
      if (state.index >= state.tokens.length - 1) return statements;
      next(state);
    } else if (isSymbol(token, ';')) next(state);
    else if (isSymbol(token, '}')) {
      report(state, 'brace-without-block', token, 'this `}` closes nothing', {
        hint: 'remove it, or open a block with `{` on the line of its name',
        instead: [''],
      });
      next(state);
    } else {
      if (tooManyStatements(state, token)) return statements;
      statements.push(parseStatement(state, ['file']));
    }
  }
}

/** True where a new fact may start: behind a line end, a `;` or a brace. */
function startsFact(state: ParserState): boolean {
  const before = previous(state);
  return !before || before.kind === 'newline' || [';', '{', '}'].includes(before.text);
}

function tooManyStatements(state: ParserState, at: Span): boolean {
  if (++state.statements <= limits.statements) return false;
  if (state.statements === limits.statements + 1)
    report(
      state,
      'too-many-lines',
      at,
      `a file may hold at most ${limits.statements} facts; the rest is not read`,
      'split it and bring the parts together with `use`',
    );
  return true;
}

function parseStatement(state: ParserState, open: Open): Statement {
  const around = open.at(-1)!;
  const start = peek(state);
  const slots = new Map<string, Slot>();
  let fact: Fact | undefined;
  let keyword = { word: start.text, from: start.from, to: start.to };
  let clause: SourceClause | undefined;
  let complete = true;
  let headerTo = start.to;
  let braceless: Braceless;
  try {
    const found = findFact(state, around, open);
    fact = found.fact;
    keyword = found.keyword;
    parseParts(state, fact.parts, { slots, words: factWords(fact), example: fact.example });
    if (fact.sourced) clause = parseClause(state);
    headerTo = Math.max(previous(state)?.to ?? start.to, start.to);
    braceless = finishHeader(state, fact, open);
  } catch (error) {
    if (!(error instanceof BrokenLine)) throw error;
    complete = false;
    if (peek(state) === start && !endsFact(start) && !isSymbol(start, '{')) next(state);
    skipLine(state);
    headerTo = Math.max(previous(state)?.to ?? start.to, start.to);
  }
  const header = { from: start.from, to: headerTo };
  const body =
    braceless && fact?.block
      ? parseBlock(state, fact.block.name, [...open, fact.block.name], header, braceless)
      : parseBody(state, fact, open, header, complete);
  const block = body === 'broken' ? undefined : body;
  return {
    kind: 'statement',
    file: state.file,
    fact,
    keyword,
    slots,
    clause,
    block,
    complete: complete && body !== 'broken',
    headerTo,
    from: start.from,
    to: block ? block.to : headerTo,
  };
}

interface Found {
  readonly fact: Fact;
  readonly keyword: Span & { readonly word: string };
}

function findFact(state: ParserState, block: BlockName, open: Open): Found {
  const first = peek(state);
  const definition = blockOf(block);
  const facts = first.kind === 'word' ? factsStartingWith(block, first.text) : [];
  const isOverride = block === 'variant' && (isSymbol(peek(state, 1), '.') || isSymbol(peek(state, 1), '='));
  if (facts.length > 0 && !isOverride) {
    if (facts[0]!.keyword === first.text) {
      next(state);
      return { fact: facts[0]!, keyword: { word: first.text, from: first.from, to: first.to } };
    }
    next(state);
    const seconds = facts.map((fact) => fact.keyword.split(' ')[1]!);
    if (state.probe) expecting(state, { kind: 'choice', options: seconds });
    const second = peek(state);
    const at = seconds.indexOf(second.text);
    const list = seconds.map((word) => `\`${word}\``).join(', ');
    if (second.kind !== 'word') fail(state, 'word-missing', `one of ${list}`);
    if (at === -1) {
      report(
        state,
        'unknown-word',
        second,
        `expected one of ${list} after \`${first.text}\`, found \`${second.text}\``,
        meant(second.text, seconds),
      );
      throw new BrokenLine();
    }
    next(state);
    return { fact: facts[at]!, keyword: { word: facts[at]!.keyword, from: first.from, to: second.to } };
  }
  const former = first.kind === 'word' && !isOverride ? formerWord(block, first.text) : undefined;
  const renamed = former && definition.facts.find((fact) => fact.keyword === former.now);
  if (former && renamed) {
    next(state);
    const range = { file: state.file, from: first.from, to: first.to };
    state.problems.push(renamedProblem(former, range));
    return { fact: renamed, keyword: { word: renamed.keyword, from: first.from, to: first.to } };
  }
  const free = definition.facts.find((fact) => fact.keyword === '');
  const isForeign = free === overrideFact && !isOverride && factsStartingWith('file', first.text).length > 0;
  if (
    free &&
    first.kind === 'word' &&
    !isForeign &&
    !(free === overrideFact && !isOverride && isSymbol(peek(state, 1), '{'))
  ) {
    return { fact: free, keyword: { word: '', from: first.from, to: first.from } };
  }
  return unknownStart(state, definition, open);
}

function unknownStart(state: ParserState, block: Block, open: Open): never {
  const first = peek(state);
  const words = [...new Set(block.facts.map((fact) => fact.keyword.split(' ')[0]!).filter((word) => word !== ''))];
  if (first.kind !== 'word') fail(state, 'unexpected', expectedIn(block, words));
  if (block.name === 'file' && isSymbol(peek(state, 1), '=')) {
    report(state, 'let-missing', first, `\`${first.text}\` is given a value without \`let\``, {
      hint: `write \`let ${first.text} = …\``,
      instead: [`let ${first.text}`],
    });
    throw new BrokenLine();
  }
  const where = block.name === 'file' ? 'outside every block' : `in a \`${block.name}\` block`;
  const message = `\`${first.text}\` means nothing at the start of a line ${where}`;
  report(state, 'unknown-keyword', first, message, whatWasMeant(first.text, block, open, words));
  throw new BrokenLine();
}

/** The second word of a two-word fact, a fact of another block, or one that is nearly spelt so. */
function whatWasMeant(word: string, block: Block, open: Open, words: readonly string[]): Hint {
  const whole = block.facts.find((fact) => fact.keyword.endsWith(` ${word}`));
  if (whole) return writeAdvice(whole.keyword);
  const outer = open.slice(0, -1).find((name) => factsStartingWith(name, word).length > 0);
  if (outer) return `it belongs outside this block${outer === 'file' ? '' : `, in \`${outer}\``}`;
  const near = meant(word, words);
  if (near) return near;
  const home = vocabulary.find((other) => other.name !== 'file' && factsStartingWith(other.name, word).length > 0);
  return home ? `it belongs in a \`${home.name}\` block` : `expected ${expectedIn(block, words)}`;
}

function expectedIn(block: Block, words: readonly string[]): string {
  const list = words.slice(0, 14).map((word) => `\`${word}\``);
  if (block.name === 'assembly' || block.name === 'lining')
    return `a layer such as \`gypsum-board 12.5 mm\`, ${list.join(' or ')}`;
  return list.length === 1 ? list[0]! : `one of ${list.join(', ')}`;
}

/** `from published "…"`. */
function parseClause(state: ParserState): SourceClause | undefined {
  if (state.probe) expecting(state, { kind: 'word', word: 'from' });
  const from = peek(state);
  if (!isWord(from, 'from')) return undefined;
  next(state);
  const kinds = Object.keys(EVIDENCE_WORDS);
  if (state.probe) expecting(state, { kind: 'choice', options: kinds });
  let evidence: string | undefined;
  const word = peek(state);
  if (word.kind === 'word') {
    if (!kinds.includes(word.text)) {
      report(
        state,
        'unknown-word',
        word,
        `expected one of ${kinds.map((k) => `\`${k}\``).join(', ')} or a text in quotes, found \`${word.text}\``,
        meant(word.text, kinds),
      );
      throw new BrokenLine();
    }
    evidence = next(state).text;
  }
  const text = peek(state);
  if (text.kind !== 'string') fail(state, 'text-missing', 'a text in quotes that says where the figure is from');
  if (!closedString(text)) failUnclosed(state, text);
  next(state);
  return { evidence, text: text.text.slice(1, -1), from: from.from, to: text.to };
}

function finishHeader(state: ParserState, fact: Fact, open: Open): Braceless {
  const token = peek(state);
  if (fact.block) {
    if (state.probe) expecting(state, { kind: 'word', word: '{' });
    if (isSymbol(token, '{')) return undefined;
    if (!endsFact(token)) failAtRest(state, '`{`', `write it like \`${fact.example}\``);
    if (!fact.block.required) return undefined;
    if (token.kind === 'newline' && isSymbol(peek(state, 1), '{')) {
      report(
        state,
        'brace-on-next-line',
        peek(state, 1),
        `the \`{\` of this block belongs on the line of \`${fact.keyword}\``,
        'move it up',
      );
      next(state);
      return undefined;
    }
    const braceless = forgottenBraces(state, fact.block.name, open);
    if (braceless) {
      const last = previous(state)!;
      const header = state.text.slice(lineStart(state), last.to);
      const closing = braceless === 'both' ? ', and a `}` behind its last line' : '';
      report(
        state,
        'brace-missing',
        last,
        'the `{` that opens this block is missing',
        `write \`${header} {\`${closing}`,
      );
      return braceless;
    }
    fail(state, 'block-missing', '`{`', `write it like \`${fact.example}\``);
  }
  if (!endsFact(token)) failAtRest(state, 'the end of the line or `;`');
  return undefined;
}

/** Where the first word of the current line starts. */
function lineStart(state: ParserState): number {
  let i = state.index;
  while (i > 0 && state.tokens[i - 1]!.kind !== 'newline') i--;
  return state.tokens[i]!.from;
}

function failAtRest(state: ParserState, expected: string, hint?: Hint): never {
  const token = peek(state);
  const before = previous(state);
  const passed = wordsPassed(state).length > 0 || wordsPassed(state, -1).length > 0;
  if (
    !passed &&
    token.kind === 'number' &&
    before &&
    (before.kind === 'word' || before.kind === 'number' || before.text === '%')
  )
    report(
      state,
      'two-values',
      token,
      `\`${token.text}\` starts a second value where ${expected} was expected`,
      'put an operator between the two, or a `;` when it is a fact of its own',
    );
  else fail(state, 'unexpected', expected, hint);
  throw new BrokenLine();
}

function parseBody(
  state: ParserState,
  fact: Fact | undefined,
  open: Open,
  header: Span,
  complete: boolean,
): BlockNode | undefined | 'broken' {
  if (!isSymbol(peek(state), '{')) return undefined;
  if (!fact?.block) {
    const brace = peek(state);
    if (complete) report(state, 'unexpected', brace, 'no block belongs here');
    skipBalanced(state);
    return 'broken';
  }
  if (open.length > limits.blockDepth) {
    report(state, 'too-deep', header, `blocks may be nested at most ${limits.blockDepth} deep`);
    skipBalanced(state);
    return 'broken';
  }
  return parseBlock(state, fact.block.name, [...open, fact.block.name], header);
}

function skipBalanced(state: ParserState): void {
  let depth = 0;
  for (;;) {
    const token = peek(state);
    if (isSymbol(token, '{')) depth++;
    else if (isSymbol(token, '}') && --depth === 0) {
      next(state);
      return;
    } else if (token.kind === 'newline' && state.index >= state.tokens.length - 1) return;
    else if (depth > 0 && startsTopLevel(state, state.index)) return;
    next(state);
  }
}

function parseBlock(state: ParserState, name: BlockName, open: Open, header: Span, braceless?: Braceless): BlockNode {
  const brace = isSymbol(peek(state), '{') ? next(state) : previous(state)!;
  const statements: Statement[] = [];
  const done = (closed: boolean): BlockNode => ({
    name,
    statements,
    closed,
    from: brace.from,
    to: previous(state)!.to,
  });
  const facts = blockOf(name).facts;
  for (;;) {
    if (state.probe && startsFact(state)) {
      if (facts.some((fact) => fact.keyword === '' && fact !== overrideFact)) expecting(state, { kind: 'layer' });
      expecting(state, { kind: 'fact', facts });
    }
    const token = peek(state);
    if (isSymbol(token, '}')) {
      if (open.length === 2 && closesTooEarly(state)) {
        report(state, 'brace-too-early', token, `this \`}\` ends the \`${name}\` block although more of it follows`, {
          hint: 'remove it',
          instead: [''],
        });
        next(state);
        continue;
      }
      next(state);
      return done(true);
    }
    if (token.kind === 'newline') {
      if (state.index >= state.tokens.length - 1) {
        if (braceless !== 'both') reportUnclosed(state, name, header, undefined);
        return done(false);
      }
      next(state);
    } else if (isSymbol(token, ';')) next(state);
    else if (startsLet(state) && isStray(state, open)) {
      const stray = parseStray(state, name);
      (name === 'variant' ? statements : state.strays).push(stray);
    } else {
      if (belongsOutside(state, open)) {
        if (braceless !== 'both') reportUnclosed(state, name, header, token.text);
        return done(false);
      }
      if (tooManyStatements(state, token)) {
        state.index = state.tokens.length - 1;
        return done(false);
      }
      statements.push(parseStatement(state, open));
    }
  }
}

/** The line is read as if it stood outside, or as a change of the variant it stands in, so that whoever uses its name is not told again. */
function parseStray(state: ParserState, block: BlockName): Statement {
  const first = peek(state);
  const name = peek(state, 1).text;
  const hint = block === 'variant' ? `write \`${name} = …\` to change it in this variant` : 'move it out of the block';
  const before = state.problems.length;
  const statement = parseStatement(state, ['file']);
  if (state.problems.length === before)
    report(state, 'let-in-block', { from: first.from, to: statement.headerTo }, '`let` stands outside blocks', hint);
  return statement;
}

function reportUnclosed(state: ParserState, name: BlockName, header: Span, before: string | undefined): void {
  report(
    state,
    'block-not-closed',
    header,
    `this \`${name}\` block is never closed`,
    before === undefined ? 'add a `}`' : `add a \`}\` before \`${before}\``,
  );
}
