import { didYouMeanAdvice, type Hint } from '../text/advice.js';
import type { DimensionName } from '../units/dimension.js';
import { suchAs } from '../units/dimension-words.js';
import type { Part, SymbolKind } from '../vocabulary/shape.js';
import { FACES, NOISE_SHAPES, PRICE_UNITS } from '../vocabulary/words.js';
import { countFollows } from './count-follows.js';
import { isForeignValue, rejectLooseNominal } from './foreign-signs.js';
import { parseClock, parseHours } from './parse-clock.js';
import { type ExpressionContext, parseExpression } from './parse-expression.js';
import { parsePairs } from './parse-pairs.js';
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
  passOver,
  peek,
  report,
} from './parser-state.js';
import type { Token } from './token.js';
import type { Expression, Slot } from './tree.js';

export interface PartsContext {
  readonly slots: Map<string, Slot>;
  readonly words: ReadonlySet<string>;
  /** Shown when the line cannot be read. */
  readonly example: string;
}

/** Reads what follows a keyword, part by part; what was read before a mistake stays in the slots. */
export function parseParts(state: ParserState, parts: readonly Part[], context: PartsContext): void {
  for (const part of parts) parsePart(state, part, context);
}

function parsePart(state: ParserState, part: Part, context: PartsContext): void {
  const { slots } = context;
  switch (part.kind) {
    case 'quantity':
      setExpression(context, part.slot, value(state, context, part.dimension));
      return;
    case 'amount':
      setExpression(context, part.slot, value(state, context, 'amount'));
      return;
    case 'any-value':
      setExpression(context, part.slot, value(state, context, 'any'));
      return;
    case 'size':
      parseSize(state, part, context);
      return;
    case 'position':
      parsePosition(state, part, context);
      return;
    case 'choice':
      parseChoice(state, part, context);
      return;
    case 'reference':
      if (state.probe) expecting(state, { kind: 'reference', to: part.to });
      setWord(state, context, part.slot, `the name of ${kindsInWords(part.to)}`);
      return;
    case 'new-name':
      if (state.probe) expecting(state, { kind: 'new-name', declares: part.declares });
      setWord(state, context, 'name', `a name for the ${part.declares === 'let' ? 'value' : part.declares}`);
      return;
    case 'title':
      if (state.probe) expecting(state, { kind: 'text' });
      if (peek(state).kind === 'string') slots.set('title', readString(state));
      return;
    case 'text':
      if (state.probe) expecting(state, { kind: 'text' });
      if (peek(state).kind !== 'string')
        fail(state, 'text-missing', 'a text in quotes', `write it like \`${context.example}\``);
      slots.set(part.slot, readString(state));
      return;
    case 'literal': {
      if (state.probe) expecting(state, { kind: 'word', word: part.word });
      const token = peek(state);
      if (token.text !== part.word) failLiteral(state, part.word, context);
      next(state);
      // In `6 turns` the number has the name of the word behind it, and counts for more.
      if (!slots.has(part.word))
        slots.set(part.word, { kind: 'flag', word: part.word, from: token.from, to: token.to });
      return;
    }
    case 'optional':
      if (starts(state, part.parts[0]!, context.words) && (!part.beforeCount || countFollows(state, context.words)))
        parseParts(state, part.parts, context);
      else {
        passOver(state, wordsOfStart(part.parts[0]!));
        expectStart(state, part.parts[0]!);
      }
      return;
    case 'either': {
      for (const branch of part.branches) expectStart(state, branch[0]!);
      if (part.branches[0]?.[0]?.kind === 'nominal') rejectLooseNominal(state);
      const branch = part.branches.find((candidate) => starts(state, candidate[0]!, context.words));
      if (part.branches.some(([first]) => first?.kind === 'bands') && startsBand(state))
        fail(state, 'grid-missing', '`octave` or `third` before the bands', `write it like \`${context.example}\``);
      if (!branch)
        fail(
          state,
          'unexpected',
          part.branches.map((b) => partInWords(b[0]!)).join(' or '),
          `write it like \`${context.example}\``,
        );
      parseParts(state, branch, context);
      return;
    }
    case 'face':
      if (state.probe) expecting(state, { kind: 'face' });
      parseFaceWord(state, part.slot, context, FACES);
      return;
    case 'faces':
      parseFaces(state, part.slot, context);
      return;
    case 'bands':
      parseBands(state, part, context);
      return;
    case 'pairs':
      parsePairs(state, {
        slot: part.slot,
        dimensions: [part.first, part.second],
        slots,
        example: context.example,
        value: (dimension) => value(state, context, dimension),
      });
      return;
    case 'clock': {
      const time = parseClock(state);
      slots.set(part.slot, { kind: 'clock', time, from: time.from, to: time.to });
      return;
    }
    case 'hours':
      parseHours(state, part.slot, slots);
      return;
    case 'price':
      parsePrice(state, part, context);
      return;
    case 'nominal': {
      const token = peek(state);
      if (token.kind !== 'nominal') fail(state, 'unexpected', 'nominal lumber such as `2x4`');
      next(state);
      slots.set(part.slot, { kind: 'nominal', text: token.text, from: token.from, to: token.to });
      return;
    }
    case 'path':
      parsePath(state, part.slot, context);
      return;
    case 'tokens':
      parseTokens(state, part.slot, context);
      return;
  }
}

function setExpression(context: PartsContext, slot: string, expression: Expression): void {
  context.slots.set(slot, { kind: 'expression', expression, from: expression.from, to: expression.to });
}

function value(state: ParserState, context: PartsContext, dimension: ExpressionContext['dimension']): Expression {
  const expected =
    dimension === 'any'
      ? 'a value such as `6 mm`'
      : dimension === 'amount'
        ? 'a thickness such as `12.5 mm`'
        : suchAs(dimension);
  return parseExpression(state, { expected, hint: undefined, dimension, words: context.words });
}

function setWord(state: ParserState, context: PartsContext, slot: string, expected: string): void {
  const token = peek(state);
  if (token.kind !== 'word') fail(state, 'name-missing', expected, `write it like \`${context.example}\``);
  next(state);
  context.slots.set(slot, { kind: 'word', word: token.text, from: token.from, to: token.to });
}

function readString(state: ParserState): Slot {
  const token = peek(state);
  if (!closedString(token)) failUnclosed(state, token);
  next(state);
  return { kind: 'string', value: token.text.slice(1, -1), from: token.from, to: token.to };
}

const NOISE_SHAPE_HINT = `add ${NOISE_SHAPES.map((shape) => `\`like ${shape}\``).join(', ')}, or give levels by band`;

function failLiteral(state: ParserState, word: string, context: PartsContext): never {
  const token = peek(state);
  if ((word === '<=' || word === '>=') && ['<', '>', '=', '==', '<=', '>='].includes(token.text)) {
    report(state, 'comparison', token, `this requirement is written with \`${word}\`, found \`${token.text}\``, {
      hint: `write it like \`${context.example}\``,
      instead: [word],
    });
    throw new BrokenLine();
  }
  if (isSymbol(token, ',') && peek(state, 1).text === word) {
    report(state, 'comma-too-many', token, `no comma belongs before \`${word}\``, {
      hint: 'leave it out',
      instead: [''],
    });
    throw new BrokenLine();
  }
  if (word === 'like') fail(state, 'unexpected', '`like` and the shape of the noise', NOISE_SHAPE_HINT);
  fail(state, 'unexpected', `\`${word}\``, `write it like \`${context.example}\``);
}

/** A list of bands whose grid was left out. */
function startsBand(state: ParserState): boolean {
  return peek(state).kind === 'number' && ['Hz', 'kHz'].includes(peek(state, 1).text);
}

/** True when the next token can be the start of the part; a fixed word of the line starts no value. */
function starts(state: ParserState, part: Part, words: ReadonlySet<string>): boolean {
  const token = peek(state);
  switch (part.kind) {
    case 'quantity':
    case 'amount':
    case 'any-value':
    case 'size':
    case 'position':
    case 'pairs':
    case 'price':
      return (
        token.kind === 'number' ||
        (token.kind === 'word' && !words.has(token.text)) ||
        ['(', '-', '−', '.'].includes(token.text) ||
        isForeignValue(token)
      );
    case 'literal':
      return token.text === part.word;
    case 'bands':
      return isWord(token, 'octave') || isWord(token, 'third');
    case 'choice':
      return token.kind === 'word' && part.options.includes(token.text);
    case 'text':
    case 'title':
      return token.kind === 'string';
    case 'nominal':
      return token.kind === 'nominal';
    case 'clock':
    case 'hours':
      return token.kind === 'clock';
    default:
      return token.kind === 'word';
  }
}

function expectStart(state: ParserState, part: Part): void {
  if (part.kind === 'literal') expecting(state, { kind: 'word', word: part.word });
  else if (part.kind === 'bands') {
    if (state.probe) expecting(state, { kind: 'word', word: 'octave' });
    if (state.probe) expecting(state, { kind: 'word', word: 'third' });
  } else if (part.kind === 'choice') expecting(state, { kind: 'choice', options: part.options });
  else if (part.kind === 'quantity') expecting(state, { kind: 'quantity', dimension: part.dimension });
  else if (part.kind === 'amount') expecting(state, { kind: 'quantity', dimension: 'amount' });
  else if (part.kind === 'text') expecting(state, { kind: 'text' });
  else if (part.kind === 'size') expecting(state, { kind: 'quantity', dimension: 'length' });
}

/** Words by which a part that may be left out is known. */
function wordsOfStart(part: Part): readonly string[] {
  if (part.kind === 'literal') return [part.word];
  return part.kind === 'choice' ? part.options : [];
}

export function partInWords(part: Part): string {
  switch (part.kind) {
    case 'literal':
      return `\`${part.word}\``;
    case 'bands':
      return '`octave`, `third`';
    case 'quantity':
      return suchAs(part.dimension);
    case 'size':
      return 'a size such as `1.2 m x 2.1 m`';
    case 'nominal':
      return 'nominal lumber such as `2x4`';
    case 'choice':
      return part.options.map((o) => `\`${o}\``).join(', ');
    case 'text':
      return 'a text in quotes';
    default:
      return 'a value';
  }
}

export function kindsInWords(kinds: readonly SymbolKind[]): string {
  return kinds.map((kind) => (/^[aeio]/.test(kind) ? `an ${kind}` : `a ${kind}`)).join(' or ');
}

function isTimes(token: Token): boolean {
  return isWord(token, 'x') || isSymbol(token, '×');
}

function parseSize(state: ParserState, part: Extract<Part, { kind: 'size' }>, context: PartsContext): void {
  const [first, ...others] = part.axes;
  const token = peek(state);
  if (token.kind === 'nominal') {
    report(
      state,
      'size-without-units',
      token,
      `\`${token.text}\` has no units`,
      'write each length with its unit, like `1.2 m x 2.1 m`',
    );
    throw new BrokenLine();
  }
  const length = value(state, context, 'length');
  if (part.single !== undefined && !isTimes(peek(state))) {
    setExpression(context, part.single, length);
    return;
  }
  setExpression(context, first!, length);
  for (const axis of others) {
    if (state.probe) expecting(state, { kind: 'word', word: 'x' });
    if (!isTimes(peek(state)))
      fail(
        state,
        'size-incomplete',
        `\`x\` and the ${axis} (${part.axes.join(' x ')})`,
        `write it like \`${context.example}\``,
      );
    next(state);
    setExpression(context, axis, value(state, context, 'length'));
  }
}

function parsePosition(state: ParserState, part: Extract<Part, { kind: 'position' }>, context: PartsContext): void {
  part.axes.forEach((axis, i) => {
    if (i > 0) {
      if (!isSymbol(peek(state), ','))
        fail(state, 'position-incomplete', 'a comma and the next length', `write it like \`${context.example}\``);
      next(state);
    }
    setExpression(context, axis, value(state, context, 'length'));
  });
}

type Choice = Extract<Part, { kind: 'choice' }> & { readonly hint?: (word: string) => Hint | undefined };

function parseChoice(state: ParserState, part: Choice, context: PartsContext): void {
  if (state.probe) expecting(state, { kind: 'choice', options: part.options });
  const token = peek(state);
  const list = part.options.map((option) => `\`${option}\``).join(', ');
  if (token.kind !== 'word') fail(state, 'word-missing', `one of ${list}`);
  if (!part.options.includes(token.text)) {
    report(
      state,
      'unknown-word',
      token,
      `expected one of ${list}, found \`${token.text}\``,
      part.hint?.(token.text) ?? meant(token.text, part.options),
    );
    throw new BrokenLine();
  }
  next(state);
  context.slots.set(part.slot, { kind: 'word', word: token.text, from: token.from, to: token.to });
}

function parseFaceWord(state: ParserState, slot: string, context: PartsContext, known: readonly string[]): void {
  const hint = (word: string): Hint | undefined => faceHint(word, known);
  parseChoice(state, { kind: 'choice', slot, options: known, hint }, context);
}

/** What other words for the sides of a booth mean. */
const FACE_WORDS: Readonly<Record<string, string>> = {
  ceiling: 'roof',
  top: 'roof',
  bottom: 'floor',
  ground: 'floor',
  rear: 'back',
};

function faceHint(word: string, known: readonly string[]): Hint | undefined {
  const lower = word.toLowerCase();
  if (lower === 'wall' || lower === 'walls' || lower === 'side' || lower === 'sides')
    return known.includes('walls') ? 'write `walls` for all four, or name the faces' : 'name the wall, like `on front`';
  const face = Object.hasOwn(FACE_WORDS, lower) ? FACE_WORDS[lower] : undefined;
  return face === undefined ? undefined : didYouMeanAdvice(face);
}

function parseFaces(state: ParserState, slot: string, context: PartsContext): void {
  const words: { word: string; from: number; to: number }[] = [];
  do {
    if (words.length > 0) next(state);
    if (state.probe) expecting(state, { kind: 'face' });
    parseFaceWord(state, slot, context, [...FACES, 'walls']);
    const found = context.slots.get(slot)!;
    words.push({ word: (found as { word: string }).word, from: found.from, to: found.to });
    context.slots.set(slot, { kind: 'words', words, from: words[0]!.from, to: found.to });
  } while (isSymbol(peek(state), ','));
}

function parseBands(state: ParserState, part: Extract<Part, { kind: 'bands' }>, context: PartsContext): void {
  expectStart(state, part);
  const grid = peek(state);
  if (!isWord(grid, 'octave') && !isWord(grid, 'third'))
    fail(state, 'grid-missing', '`octave` or `third`', `write it like \`${context.example}\``);
  next(state);
  const bands: { frequency: Expression; value: Expression; from: number; to: number }[] = [];
  const keep = (): void => {
    context.slots.set(part.slot, {
      kind: 'bands',
      grid: grid.text as 'octave' | 'third',
      bands,
      from: grid.from,
      to: bands.at(-1)?.to ?? grid.to,
    });
  };
  keep();
  do {
    if (bands.length > 0) next(state);
    const frequency = value(state, context, 'frequency');
    const level = value(state, context, part.dimension);
    bands.push({ frequency, value: level, from: frequency.from, to: level.to });
    keep();
  } while (isSymbol(peek(state), ','));
  if (peek(state).kind === 'number') {
    report(
      state,
      'comma-missing',
      peek(state),
      'a comma is missing between two bands',
      `write it like \`${context.example}\``,
    );
    throw new BrokenLine();
  }
}

function parsePrice(state: ParserState, part: Extract<Part, { kind: 'price' }>, context: PartsContext): void {
  const amount = value(state, context, 'money' satisfies DimensionName);
  let per: { word: string; from: number; to: number } | undefined;
  if (state.probe) expecting(state, { kind: 'word', word: 'per' });
  if (part.per && isWord(peek(state), 'per')) {
    next(state);
    const token = peek(state);
    if (state.probe) expecting(state, { kind: 'choice', options: PRICE_UNITS });
    if (token.kind !== 'word' || !(PRICE_UNITS as readonly string[]).includes(token.text))
      fail(
        state,
        'price-unit',
        `one of ${PRICE_UNITS.map((u) => `\`${u}\``).join(', ')}`,
        `write it like \`${context.example}\``,
      );
    next(state);
    per = { word: token.text, from: token.from, to: token.to };
  }
  context.slots.set(part.slot, { kind: 'price', amount, per, from: amount.from, to: per?.to ?? amount.to });
}

function parsePath(state: ParserState, slot: string, context: PartsContext): void {
  const words: { word: string; from: number; to: number }[] = [];
  do {
    if (words.length > 0) next(state);
    if (state.probe?.index === state.index) expecting(state, { kind: 'path', typed: words.map((w) => w.word) });
    const token = peek(state);
    if (token.kind !== 'word') fail(state, 'name-missing', 'a name', `write it like \`${context.example}\``);
    next(state);
    words.push({ word: token.text, from: token.from, to: token.to });
    context.slots.set(slot, { kind: 'words', words, from: words[0]!.from, to: token.to });
  } while (isSymbol(peek(state), '.'));
}

function parseTokens(state: ParserState, slot: string, context: PartsContext): void {
  const tokens: Token[] = [];
  if (state.probe) expecting(state, { kind: 'quantity', dimension: 'any' });
  if (endsFact(peek(state))) fail(state, 'value-missing', 'a value', `write it like \`${context.example}\``);
  while (!endsFact(peek(state)) && !isSymbol(peek(state), '{')) tokens.push(next(state));
  context.slots.set(slot, {
    kind: 'tokens',
    tokens,
    from: tokens[0]?.from ?? peek(state).from,
    to: tokens.at(-1)?.to ?? peek(state).from,
  });
}

/** Fixed words among the parts, and `x`, which stands between sizes. */
export function fixedWords(parts: readonly Part[]): ReadonlySet<string> {
  const words = new Set<string>(['x', 'from', 'per']);
  const walk = (list: readonly Part[]): void => {
    for (const part of list) {
      if (part.kind === 'literal') words.add(part.word);
      else if (part.kind === 'optional') walk(part.parts);
      else if (part.kind === 'either') part.branches.forEach(walk);
    }
  };
  walk(parts);
  return words;
}
