import { type Advice, writeAdvice } from '../text/advice.js';
import { isUnitWord } from '../units/unit-names.js';
import { BrokenLine, endsLine, isSymbol, type ParserState, peek, report } from './parser-state.js';
import type { Token } from './token.js';

/** Signs of money and the code that is most likely meant; the dollar is that of several countries. */
const CURRENCY_SIGNS: Readonly<Record<string, string>> = { '€': 'EUR', $: 'USD', '£': 'GBP', '¥': 'JPY' };
const INCH_SIGNS = new Set(['"', '”', '″', '“']);
const FOOT_SIGNS = new Set(["'", '’', '′']);

/** A sign that people write where a value belongs although the language spells it otherwise: `€18`, `½ in`. */
export function isForeignValue(token: Token): boolean {
  return token.kind === 'other' && (token.text in CURRENCY_SIGNS || fraction(token) !== undefined);
}

/** `1/2` for the one character that shows it; undefined for any other. */
function fraction(token: Token): string | undefined {
  if (token.kind !== 'other') return undefined;
  const spelt = token.text.normalize('NFKD').replace('\u2044', '/');
  return /^\d\/\d$/.test(spelt) ? spelt : undefined;
}

export function isInchSign(token: Token): boolean {
  return token.kind === 'other' && !token.spaced && INCH_SIGNS.has(token.text);
}

/** Where a value should start: complains about a sign of money or a fraction in one character. */
export function rejectForeignValue(state: ParserState): void {
  const token = peek(state);
  if (!isForeignValue(token)) return;
  const part = fraction(token);
  if (part !== undefined) rejectFraction(state, token, part, part);
  const number = peek(state, 1);
  const amount = number.kind === 'number' ? number.text : '18';
  rejectMoney(state, token, token.from, number.kind === 'number' ? number.to : token.to, amount);
}

/** Behind a number: complains about inch and foot signs, a fraction in one character and a sign of money. */
export function rejectForeignUnit(state: ParserState, number: Token, canBeMoney: boolean): void {
  const sign = peek(state);
  if (sign.kind !== 'other') return;
  const part = fraction(sign);
  if (part !== undefined && /^\d+$/.test(number.text)) rejectFraction(state, number, `${number.text}-${part}`, part);
  if (canBeMoney && sign.text in CURRENCY_SIGNS) rejectMoney(state, sign, number.from, sign.to, number.text);
  if (sign.spaced) return;
  if (INCH_SIGNS.has(sign.text)) broken(state, number.from, sign.to, 'an inch sign', `${number.text} in`);
  if (FOOT_SIGNS.has(sign.text)) rejectFeet(state, number);
}

function rejectFeet(state: ParserState, feet: Token): void {
  const dash = isSymbol(peek(state, 1), '-') ? 1 : 0;
  const inches = peek(state, 1 + dash);
  const sign = peek(state, 2 + dash);
  const isWhole = inches.kind === 'number' && sign.kind === 'other' && INCH_SIGNS.has(sign.text);
  const to = isWhole ? sign.to : peek(state).to;
  const wanted = isWhole ? `${feet.text} ft ${inches.text} in` : `${feet.text} ft`;
  broken(state, feet.from, to, isWhole ? 'foot and inch signs' : 'a foot sign', wanted);
}

function rejectFraction(state: ParserState, first: Token, spelt: string, part: string): void {
  const isWhole = spelt === part;
  const unit = peek(state, 1);
  const isUnit = unit.kind === 'word' && isUnitWord(unit.text);
  const isInch = unit.kind === 'other' && INCH_SIGNS.has(unit.text);
  const to = isUnit || isInch ? unit.to : peek(state).to;
  const wanted = isUnit ? `${spelt} ${unit.text}` : isInch ? `${spelt} in` : spelt;
  const what = isWhole ? 'is a fraction in one character' : 'has a fraction in one character';
  report(
    state,
    'fraction-sign',
    { from: first.from, to },
    `\`${textOf(state, first.from, to)}\` ${what}`,
    writeAdvice(wanted),
  );
  throw new BrokenLine();
}

function rejectMoney(state: ParserState, sign: Token, from: number, to: number, amount: string): void {
  const code = CURRENCY_SIGNS[sign.text]!;
  const others = sign.text === '$' ? ', or the letters of another dollar' : '';
  report(
    state,
    'currency-sign',
    { from, to },
    `\`${textOf(state, from, to)}\` has a sign for its currency`,
    writeAdvice(`${amount} ${code}`, others),
  );
  throw new BrokenLine();
}

function broken(state: ParserState, from: number, to: number, what: string, wanted: string): never {
  report(
    state,
    'inch-sign',
    { from, to },
    `\`${textOf(state, from, to)}\` is written with ${what}`,
    writeAdvice(wanted),
  );
  throw new BrokenLine();
}

function textOf(state: ParserState, from: number, to: number): string {
  return state.text.slice(from, to);
}

/** `2 x 4`, `2X4` or `2"x4"` where no unit follows: nominal lumber, which is one word. */
export function rejectLooseNominal(state: ParserState): void {
  const first = peek(state);
  if (first.kind !== 'number' && !(first.kind === 'nominal' && isInchSign(peek(state, 1)))) return;
  const rest = state.text.slice(first.from, first.from + 40);
  const match = /^(\d+)[ \t]*["”″]?[ \t]*[xX×][ \t]*(\d+)[ \t]*["”″]?(?![\d.])(?=[ \t]*([a-zA-Z]*))/u.exec(rest);
  if (!match || (match[3] && isUnitWord(match[3]))) return;
  const text = match[0].trimEnd();
  report(
    state,
    'nominal-spelling',
    { from: first.from, to: first.from + text.length },
    `\`${text}\` is neither a size with units nor nominal lumber`,
    { hint: `nominal lumber is written \`${match[1]}x${match[2]}\``, instead: [`${match[1]}x${match[2]}`] },
  );
  throw new BrokenLine();
}

/** `dB(A)` for `dBA`. */
export function rejectWeightingInParentheses(state: ParserState, unit: Token, number: Token): void {
  const [open, letter, close] = [peek(state), peek(state, 1), peek(state, 2)];
  if (unit.text !== 'dB' || !isSymbol(open, '(') || letter.kind !== 'word' || !isSymbol(close, ')')) return;
  if (!/^[ACZ]$/i.test(letter.text)) return;
  const wanted = `${number.text} dB${letter.text.toUpperCase()}`;
  const message = `\`${textOf(state, number.from, close.to)}\` has its weighting in parentheses`;
  report(state, 'weighting-in-parentheses', { from: number.from, to: close.to }, message, writeAdvice(wanted));
  throw new BrokenLine();
}

/** `+-` for `±`, which would otherwise be a sum with a negative value. */
export function rejectPlusMinus(state: ParserState): void {
  const [plus, minus] = [peek(state), peek(state, 1)];
  if (!isSymbol(plus, '+') || minus.spaced || !(isSymbol(minus, '-') || isSymbol(minus, '−'))) return;
  const value = peek(state, 2);
  const what = value.kind === 'number' ? ` ${textOf(state, value.from, unitEnd(state, 2))}` : '';
  report(
    state,
    'tolerance-sign',
    { from: plus.from, to: minus.to },
    `\`${plus.text}${minus.text}\` is no sign of the language`,
    { hint: `a tolerance is written \`±${what}\` or \`+/-${what}\``, instead: ['±'] },
  );
  throw new BrokenLine();
}

function unitEnd(state: ParserState, ahead: number): number {
  const unit = peek(state, ahead + 1);
  const isUnit = isSymbol(unit, '%') || (unit.kind === 'word' && isUnitWord(unit.text));
  return isUnit ? unit.to : peek(state, ahead).to;
}

/**
 * A comma inside a number would be taken for two values of a list. It is a decimal sign to some and parts thousands to
 * others; every one of the line is told, since a size has several.
 */
export function rejectCommaInNumber(state: ParserState, number: Token): void {
  if (commaNumber(state, state.index - 1) === undefined || number.text.includes('.')) return;
  for (let i = state.index - 1; !endsLine(state.tokens[i]!); i++) {
    const end = commaNumber(state, i);
    if (end === undefined || state.tokens[i]!.text.includes('.')) continue;
    const [from, to] = [state.tokens[i]!.from, state.tokens[end]!.to];
    const text = textOf(state, from, to);
    const { id, message, hint } = commaAdvice(text);
    report(state, id, { from, to }, message, hint);
    i = end;
  }
  throw new BrokenLine();
}

/** Index of the last token of a number with commas that starts at `i`; undefined when there is none. */
function commaNumber(state: ParserState, i: number): number | undefined {
  if (state.tokens[i]?.kind !== 'number') return undefined;
  let end = i;
  for (;;) {
    const [comma, digits] = [state.tokens[end + 1], state.tokens[end + 2]];
    if (!comma || !digits || !isSymbol(comma, ',') || comma.spaced || digits.kind !== 'number' || digits.spaced) break;
    end += 2;
  }
  return end === i ? undefined : end;
}

function commaAdvice(text: string): { readonly id: string; readonly message: string; readonly hint: Advice } {
  const pieces = text.split(',');
  const grouped = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(text);
  const whole = pieces.join('');
  if (grouped && (pieces.length > 2 || text.includes('.')))
    return {
      id: 'comma-in-number',
      message: `\`${text}\` has a comma between its thousands`,
      hint: writeAdvice(whole),
    };
  if (grouped) {
    const decimal = `${pieces[0]}.${pieces[1]}`.replace(/\.?0+$/, '');
    return {
      id: 'comma-in-number',
      message: `\`${text}\` has a comma, which can part thousands or be a decimal sign`,
      hint: { hint: `write \`${whole}\` for thousands, or \`${decimal}\``, instead: [whole, decimal] },
    };
  }
  return { id: 'decimal-comma', message: `\`${text}\` has a decimal comma`, hint: writeAdvice(pieces.join('.')) };
}
