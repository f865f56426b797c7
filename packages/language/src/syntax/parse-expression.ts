import { limits } from '../limits.js';
import { insteadOfWhole, writeAdvice } from '../text/advice.js';
import { isUnitWord, UNIT_WORDS, unitWord } from '../units/unit-names.js';
import {
  isInchSign,
  rejectCommaInNumber,
  rejectForeignUnit,
  rejectForeignValue,
  rejectPlusMinus,
  rejectWeightingInParentheses,
} from './foreign-signs.js';
import { numberValue } from './lex.js';
import {
  BrokenLine,
  expecting,
  fail,
  isSymbol,
  isWord,
  meant,
  next,
  type ParserState,
  peek,
  previous,
  report,
} from './parser-state.js';
import { speltOutUnit, whichDecibels } from './spelt-out-units.js';
import type { Token } from './token.js';
import type { Expression, LiteralNode, UnitNode } from './tree.js';

export interface ExpressionContext {
  /** What was expected, in words, for the message when nothing that could be a value follows. */
  readonly expected: string;
  readonly hint: string | undefined;
  readonly dimension:
    | 'any'
    | 'amount'
    | Exclude<
        Extract<import('../symbols/context.js').Expectation, { kind: 'quantity' }>['dimension'],
        'any' | 'amount'
      >;
  /** Fixed words of the fact: they end a value and are never taken for units. */
  readonly words: ReadonlySet<string>;
}

/** Reads `a + b * (c - d)`; throws `BrokenLine` after complaining. */
export function parseExpression(state: ParserState, context: ExpressionContext): Expression {
  const budget = { operators: 0, depth: 0 };
  return parseSum(state, context, budget);
}

interface Budget {
  operators: number;
  depth: number;
}

function parseSum(state: ParserState, context: ExpressionContext, budget: Budget): Expression {
  let left = parseProduct(state, context, budget);
  for (;;) {
    const token = peek(state);
    const minus = isMinus(token);
    if (!minus && !isSymbol(token, '+')) return left;
    rejectPlusMinus(state);
    if (minus && !(token.spaced && peek(state, 1).spaced)) {
      report(
        state,
        'minus-needs-blanks',
        token,
        'a minus between two values needs a blank on both sides',
        context.dimension === 'frequency'
          ? 'a value below zero stands in parentheses, like `(-3 dB)`'
          : { hint: 'write `a - b`', instead: [' - '] },
      );
      throw new BrokenLine();
    }
    left = operate(state, context, budget, left, parseProduct);
  }
}

function parseProduct(state: ParserState, context: ExpressionContext, budget: Budget): Expression {
  let left = parsePrimary(state, context, budget);
  while (isSymbol(peek(state), '*') || isSymbol(peek(state), '/'))
    left = operate(state, context, budget, left, parsePrimary);
  return left;
}

function operate(
  state: ParserState,
  context: ExpressionContext,
  budget: Budget,
  left: Expression,
  parseRight: typeof parsePrimary,
): Expression {
  const token = next(state);
  if (++budget.operators > limits.expressionLength) {
    report(
      state,
      'value-too-long',
      token,
      `a value may have at most ${limits.expressionLength} operators`,
      'split it with `let`',
    );
    throw new BrokenLine();
  }
  const right = parseRight(state, context, budget);
  const operator = isMinus(token) ? '-' : (token.text as '+' | '*' | '/');
  return { kind: 'binary', operator, operatorSpan: token, left, right, from: left.from, to: right.to };
}

function parsePrimary(state: ParserState, context: ExpressionContext, budget: Budget): Expression {
  if (state.probe) expecting(state, { kind: 'quantity', dimension: context.dimension });
  const token = peek(state);
  if (isMinus(token)) {
    next(state);
    if (++budget.operators > limits.expressionLength) fail(state, 'value-too-long', 'a shorter value');
    const operand = parsePrimary(state, context, budget);
    return { kind: 'negate', operand, from: token.from, to: operand.to };
  }
  if (isSymbol(token, '(')) {
    if (++budget.depth > limits.expressionDepth) {
      report(
        state,
        'value-too-deep',
        token,
        `parentheses may be nested at most ${limits.expressionDepth} deep`,
        'split the value with `let`',
      );
      throw new BrokenLine();
    }
    next(state);
    const inner = parseSum(state, context, budget);
    budget.depth--;
    if (!isSymbol(peek(state), ')')) fail(state, 'parenthesis-not-closed', '`)`');
    return { ...inner, from: token.from, to: next(state).to };
  }
  if (token.kind === 'number') return parseLiteral(state, context);
  if (isWord(token, 'NC') && peek(state, 1).kind === 'number') {
    next(state);
    const number = next(state);
    const unit: UnitNode = { text: 'NC', from: token.from, to: token.to };
    return {
      kind: 'literal',
      value: numberValue(number.text),
      unit,
      rest: undefined,
      tolerance: undefined,
      from: token.from,
      to: number.to,
    };
  }
  if (token.kind === 'word' && !context.words.has(token.text)) {
    next(state);
    return { kind: 'name', name: token.text, from: token.from, to: token.to };
  }
  rejectForeignValue(state);
  if (isSymbol(token, '.') && peek(state, 1).kind === 'number')
    fail(state, 'number-without-zero', context.expected, {
      hint: `write \`0.${peek(state, 1).text}\``,
      instead: ['0.'],
    });
  return fail(state, 'value-missing', context.expected, context.hint);
}

function isMinus(token: Token): boolean {
  return isSymbol(token, '-') || isSymbol(token, '−');
}

function parseLiteral(state: ParserState, context: ExpressionContext): LiteralNode {
  const number = next(state);
  rejectCommaInNumber(state, number);
  rejectForeignUnit(state, number, context.dimension === 'money' || context.dimension === 'any');
  const unit = parseUnit(state, context);
  if (unit && !unit.text.includes('/')) rejectWeightingInParentheses(state, previous(state)!, number);
  let end = unit ?? number;
  let rest: LiteralNode['rest'];
  if (unit?.text === 'ft' && peek(state).kind === 'number' && isWord(peek(state, 1), 'in')) {
    const inches = next(state);
    const word = next(state);
    rest = { value: numberValue(inches.text), unit: { text: 'in', from: word.from, to: word.to } };
    end = { text: '', from: inches.from, to: word.to };
  } else if (unit === undefined && peek(state).kind === 'number' && peek(state).text.includes('/')) {
    report(
      state,
      'mixed-number',
      { from: number.from, to: peek(state).to },
      'a mixed number is written with a hyphen',
      isInchSign(peek(state, 1))
        ? `write \`${number.text}-${peek(state).text} in\``
        : writeAdvice(`${number.text}-${peek(state).text}`),
    );
    throw new BrokenLine();
  }
  const tolerance = parseTolerance(state, context);
  return {
    kind: 'literal',
    value: numberValue(number.text),
    unit,
    rest,
    tolerance,
    from: number.from,
    to: tolerance?.to ?? end.to,
  };
}

function parseTolerance(state: ParserState, context: ExpressionContext): LiteralNode['tolerance'] {
  const sign = peek(state);
  if (!isSymbol(sign, '±') && !isSymbol(sign, '+/-')) return undefined;
  next(state);
  const number = peek(state);
  if (number.kind !== 'number') fail(state, 'tolerance-missing', 'a tolerance such as `10 %` or `2 mm`');
  next(state);
  rejectCommaInNumber(state, number);
  rejectForeignUnit(state, number, false);
  const unit = parseUnit(state, context);
  return { value: numberValue(number.text), unit, from: sign.from, to: unit?.to ?? number.to };
}

/** A unit stands on the line of its number; `.` and `/` inside it have no blanks around them. */
export function parseUnit(state: ParserState, context: ExpressionContext): UnitNode | undefined {
  if (state.probe) expecting(state, { kind: 'unit', dimension: context.dimension });
  const first = peek(state);
  if (isSymbol(first, '%')) {
    next(state);
    return { text: '%', from: first.from, to: first.to };
  }
  if (first.kind !== 'word' || context.words.has(first.text) || first.text === 'x') return undefined;
  if (!isUnitWord(first.text)) {
    const hint = whichDecibels(first.text) ?? speltOutUnit(first.text) ?? meant(first.text, UNIT_WORDS);
    report(
      state,
      'unknown-unit',
      first,
      `\`${first.text}\` is no unit`,
      hint ?? 'units are written like `mm`, `kg/m2`, `kPa.s/m2` or `L/s`',
    );
    throw new BrokenLine();
  }
  next(state);
  let text = first.text + parsePower(state);
  while (joins(state)) {
    const sign = next(state);
    const word = next(state);
    if (unitWord(word.text) === undefined) {
      report(
        state,
        'unknown-unit',
        { from: first.from, to: word.to },
        `\`${word.text}\` in \`${state.text.slice(first.from, word.to)}\` is no unit`,
        insteadOfWhole(
          state.text.slice(first.from, word.from),
          speltOutUnit(word.text) ?? meant(word.text, UNIT_WORDS),
        ),
      );
      throw new BrokenLine();
    }
    text += (sign.text === '·' ? '.' : sign.text) + word.text + parsePower(state);
  }
  return { text, from: first.from, to: previous(state)!.to };
}

function parsePower(state: ParserState): string {
  if (!isSymbol(peek(state), '^') || peek(state, 1).kind !== 'number' || peek(state).spaced) return '';
  next(state);
  return next(state).text;
}

/** After a slash, a word that is no unit is a name to divide by unless it is glued to the unit. */
function joins(state: ParserState): boolean {
  const sign = peek(state);
  const word = peek(state, 1);
  return (
    (isSymbol(sign, '/') || isSymbol(sign, '.') || isSymbol(sign, '·')) &&
    !sign.spaced &&
    word.kind === 'word' &&
    !word.spaced
  );
}
