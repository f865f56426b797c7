import {
  type Expression,
  type Part,
  type Slot,
  type Span,
  type Statement,
  type SymbolKind,
  type Token,
  vocabulary,
} from '@boothwright/language';
import type { SemanticTokensBuilder } from 'vscode-languageserver';
import type { View } from './view.js';

/**
 * Kinds of words. `unit` is a kind of our own: an editor that does not know it leaves the unit as its grammar paints
 * it.
 */
export const tokenTypes = [
  'keyword',
  'property',
  'variable',
  'class',
  'struct',
  'event',
  'namespace',
  'interface',
  'enum',
  'enumMember',
  'number',
  'string',
  'comment',
  'operator',
  'unit',
] as const;
export const tokenModifiers = ['declaration', 'readonly', 'defaultLibrary'] as const;

type TokenType = (typeof tokenTypes)[number];
type TokenModifier = (typeof tokenModifiers)[number];
interface Mark extends Span {
  readonly type: TokenType;
  readonly modifiers: readonly TokenModifier[];
}

const symbolType: Readonly<Record<SymbolKind, TokenType>> = {
  material: 'struct',
  assembly: 'class',
  let: 'variable',
  noise: 'event',
  impact: 'event',
  appliance: 'event',
  passage: 'interface',
  obstacle: 'interface',
  neighbour: 'namespace',
  booth: 'namespace',
  door: 'interface',
  window: 'interface',
  vent: 'interface',
  slit: 'interface',
  hole: 'interface',
  equipment: 'class',
  item: 'variable',
  variant: 'enum',
  measured: 'event',
};

/** Puts the marks of a stretch of the text into a builder of the protocol, in the order of the text. */
export function semanticTokens(view: View, builder: SemanticTokensBuilder, within?: Span): void {
  for (const { from, to, type, modifiers } of marks(view)) {
    if (within !== undefined && (to <= within.from || within.to <= from)) continue;
    const { line, character } = view.lines.positionAt(from);
    const bits = modifiers.reduce((sum, modifier) => sum | (1 << tokenModifiers.indexOf(modifier)), 0);
    builder.push(line, character, to - from, tokenTypes.indexOf(type), bits);
  }
}

/** Each word by what it is: what the parser and the checker made of it goes before what it looks like. */
function marks(view: View): Mark[] {
  const found = new Map<number, Mark>();
  const mark = ({ from, to }: Span, type: TokenType, ...modifiers: TokenModifier[]): void => {
    if (to > from && !found.has(from)) found.set(from, { from, to, type, modifiers });
  };
  names(view, mark);
  for (const statement of view.parsed.tree.statements) words(statement, mark);
  let last = 0;
  const tokens: Mark[] = [];
  for (const token of view.parsed.tokens) {
    // A unit such as `kg/m2` is one mark over several tokens.
    if (token.from < last) continue;
    const known = found.get(token.from) ?? byLook(token);
    if (known === undefined) continue;
    tokens.push(known);
    last = known.to;
  }
  return tokens;
}

type MarkAs = (span: Span, type: TokenType, ...modifiers: TokenModifier[]) => void;

function names({ checked, file }: View, mark: MarkAs): void {
  for (const { kind, nameRange, references, fromCatalogue } of checked.symbols.symbols) {
    const kept: TokenModifier[] = [
      ...(kind === 'let' ? ['readonly' as const] : []),
      ...(fromCatalogue ? ['defaultLibrary' as const] : []),
    ];
    if (nameRange.file === file) mark(nameRange, symbolType[kind], 'declaration', ...kept);
    for (const place of references) if (place.file === file) mark(place, symbolType[kind], ...kept);
  }
}

function words(statement: Statement, mark: MarkAs): void {
  const { fact, keyword, block } = statement;
  if (fact !== undefined && fact.keyword !== '') {
    const isDeclaring =
      fact.declares !== undefined || fact.block !== undefined || /^(?:use|require)\b/.test(fact.keyword);
    let { from } = keyword;
    // Two words of one keyword may stand any number of blanks apart.
    for (const word of keyword.word.split(' ')) {
      if (from === keyword.from) mark({ from, to: from + word.length }, isDeclaring ? 'keyword' : 'property');
      else mark({ from: keyword.to - word.length, to: keyword.to }, isDeclaring ? 'keyword' : 'property');
      from += word.length + 1;
    }
  }
  for (const slot of statement.slots.values()) if (slot.file === undefined) slotWords(slot, mark);
  for (const inner of block?.statements ?? []) words(inner, mark);
}

function slotWords(slot: Slot, mark: MarkAs): void {
  switch (slot.kind) {
    case 'expression':
      values(slot.expression, mark);
      return;
    case 'flag':
      mark(slot, /^[a-z]/.test(slot.word) ? 'keyword' : 'operator');
      return;
    case 'word':
      mark(slot, 'enumMember');
      return;
    case 'words':
      for (const word of slot.words) mark(word, 'enumMember');
      return;
    case 'bands':
      for (const { frequency, value } of slot.bands) {
        values(frequency, mark);
        values(value, mark);
      }
      return;
    case 'pairs':
      for (const { first, second } of slot.pairs) {
        values(first, mark);
        values(second, mark);
      }
      return;
    case 'price':
      values(slot.amount, mark);
      if (slot.per !== undefined) mark(slot.per, 'enumMember');
      return;
    case 'tokens':
      rawUnits(slot.tokens, mark);
      return;
    default:
      return;
  }
}

/** In what a variant writes, which is read only where it is put: a unit follows a number, up to the next blank. */
function rawUnits(tokens: readonly Token[], mark: MarkAs): void {
  tokens.forEach((token, i) => {
    if (tokens[i - 1]?.kind !== 'number' || token.kind !== 'word' || connectives.has(token.text)) return;
    if (token.text === 'x') return;
    let last = i;
    while (tokens[last + 1] !== undefined && !tokens[last + 1]!.spaced && /^[\w./]+$/.test(tokens[last + 1]!.text))
      last++;
    mark({ from: token.from, to: tokens[last]!.to }, 'unit');
  });
}

function values(expression: Expression, mark: MarkAs): void {
  switch (expression.kind) {
    case 'literal':
      if (expression.unit) mark(expression.unit, 'unit');
      if (expression.rest) mark(expression.rest.unit, 'unit');
      if (expression.tolerance?.unit) mark(expression.tolerance.unit, 'unit');
      return;
    case 'negate':
      values(expression.operand, mark);
      return;
    case 'binary':
      values(expression.left, mark);
      mark(expression.operatorSpan, 'operator');
      values(expression.right, mark);
      return;
    case 'name':
      mark(expression, 'variable');
      return;
    case 'missing':
      return;
  }
}

const operators = new Set(['=', '<=', '>=', '==', '<', '>', '±', '+/-', '..', '×']);

/** Fixed words between the values of a line. */
const connectives = new Set([
  ...vocabulary.flatMap(({ facts }) => facts.flatMap(({ parts }) => parts.flatMap(fixedWords))),
  ...['octave', 'third', 'to', 'from'],
]);

function fixedWords(part: Part): readonly string[] {
  switch (part.kind) {
    case 'literal':
      return [part.word];
    case 'optional':
      return part.parts.flatMap(fixedWords);
    case 'either':
      return part.branches.flat().flatMap(fixedWords);
    default:
      return [];
  }
}

/** A token that stands in no part of the tree, or whose look tells all there is to know. */
function byLook({ kind, from, to, text }: View['parsed']['tokens'][number]): Mark | undefined {
  const as = (type: TokenType): Mark => ({ from, to, type, modifiers: [] });
  switch (kind) {
    case 'comment':
      return as('comment');
    case 'string':
      return as('string');
    case 'number':
    case 'nominal':
    case 'clock':
      return as('number');
    case 'word':
      if (text === 'x') return as('operator');
      return connectives.has(text) ? as('keyword') : undefined;
    case 'symbol':
      return operators.has(text) ? as('operator') : undefined;
    default:
      return undefined;
  }
}
