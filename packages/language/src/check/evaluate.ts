import type { Expression, LiteralNode, Span } from '../syntax/tree.js';
import type { Hint } from '../text/advice.js';
import { type Amount, add, baseValue, dimensionKey, divide, multiply, negate, subtract } from '../units/math.js';
import { amountOf, type ResolvedUnit, resolveUnit, toBase } from '../units/resolve-unit.js';
import { inWords, type Value } from './value.js';

/** Where an expression stands and what its names mean. */
export interface EvaluationScope {
  readonly text: (span: Span) => string;
  /** Undefined when the name cannot be used; the complaint has been made. */
  readonly lookup: (name: string, span: Span) => Value | undefined;
  readonly report: (id: string, span: Span, message: string, hint?: Hint) => void;
}

/** Undefined when something in it is wrong; that has been reported on the very token. */
export function evaluate(expression: Expression, scope: EvaluationScope): Value | undefined {
  switch (expression.kind) {
    case 'missing':
      return undefined;
    case 'literal':
      return literal(expression, scope);
    case 'name':
      return scope.lookup(expression.name, expression);
    case 'negate': {
      const operand = evaluate(expression.operand, scope);
      if (!operand) return undefined;
      if (operand.kind === 'level')
        return { ...operand, level: { ...operand.level, decibels: -operand.level.decibels } };
      if (operand.kind === 'temperature') return { ...operand, celsius: -operand.celsius };
      return { ...operand, si: -operand.si, amount: () => negate(operand.amount()) };
    }
    case 'binary':
      return binary(expression, scope);
  }
}

function literal(node: LiteralNode, scope: EvaluationScope): Value | undefined {
  if (!Number.isFinite(node.value) || (node.rest && !Number.isFinite(node.rest.value))) {
    scope.report('number-too-large', node, `\`${scope.text(node)}\` is no number that can be worked with`);
    return undefined;
  }
  const unit = node.unit ? resolveUnit(node.unit.text) : undefined;
  if (node.unit && !unit) {
    scope.report('unknown-unit', node.unit, `\`${node.unit.text}\` is no unit`);
    return undefined;
  }
  if (unit?.kind === 'level') {
    const tolerance = levelTolerance(node, scope);
    if (tolerance === null) return undefined;
    return { kind: 'level', level: { decibels: node.value, weighting: unit.weighting }, tolerance };
  }
  if (unit?.kind === 'temperature') {
    if (node.tolerance)
      scope.report(
        'tolerance',
        { from: node.tolerance.from, to: node.tolerance.to },
        'a temperature takes no tolerance here',
      );
    return { kind: 'temperature', celsius: unit.celsius(node.value), tolerance: undefined };
  }
  const share = unit?.kind === 'share';
  const factor = unit?.kind === 'factor' ? unit : undefined;
  const rest = node.rest && resolveUnit(node.rest.unit.text);
  const extra = node.rest && rest?.kind === 'factor' ? { value: node.rest.value, unit: rest } : undefined;
  const si =
    (share ? node.value / 100 : factor ? toBase(node.value, factor) : node.value) +
    (extra ? toBase(extra.value, extra.unit) : 0);
  const amount = (): Amount => {
    const own = factor ? amountOf(node.value, factor) : si;
    return extra ? add(own, amountOf(extra.value, extra.unit)) : own;
  };
  const tolerance = node.tolerance ? quantityTolerance(node, unit, Math.abs(si), scope) : undefined;
  if (tolerance === null) return undefined;
  return { kind: 'quantity', si, dimension: factor?.dimension ?? '', amount, tolerance, share };
}

/** Null when it is wrong and has been reported. */
function levelTolerance(node: LiteralNode, scope: EvaluationScope): number | undefined | null {
  if (!node.tolerance) return undefined;
  const unit = node.tolerance.unit ? resolveUnit(node.tolerance.unit.text) : undefined;
  if (unit?.kind === 'level') return node.tolerance.value;
  scope.report(
    'tolerance',
    node.tolerance,
    'a level has its tolerance in dB, never in percent',
    'write it like `62 dBA ± 2 dB`',
  );
  return null;
}

function quantityTolerance(
  node: LiteralNode,
  unit: ResolvedUnit | undefined,
  size: number,
  scope: EvaluationScope,
): number | null {
  const given = node.tolerance!;
  const own = given.unit ? resolveUnit(given.unit.text) : undefined;
  if (own?.kind === 'share') return (size * given.value) / 100;
  if (own?.kind === 'factor' && unit?.kind === 'factor' && own.dimension === unit.dimension)
    return toBase(given.value, own);
  if (!given.unit && !node.unit) return given.value;
  scope.report(
    'tolerance',
    given,
    `the tolerance of \`${node.value}${node.unit ? ` ${node.unit.text}` : ''}\` must be in percent or in the same sort of unit`,
    'write it like `50 mm ± 2 mm` or `50 mm ± 10 %`',
  );
  return null;
}

const VERBS = { '+': 'added with', '-': 'subtracted with', '*': 'multiplied with', '/': 'divided with' } as const;

function binary(node: Extract<Expression, { kind: 'binary' }>, scope: EvaluationScope): Value | undefined {
  const left = evaluate(node.left, scope);
  const right = evaluate(node.right, scope);
  if (!left || !right) return undefined;
  for (const value of [left, right]) {
    if (value.kind === 'quantity') continue;
    const at = value === left ? node.left : node.right;
    if (value.kind === 'level')
      scope.report(
        'level-arithmetic',
        node,
        `levels cannot be ${VERBS[node.operator]} \`${node.operator}\`: decibels are logarithms, so \`${scope.text(at)}\` is no amount that adds up`,
        'state each as a `noise` of its own',
      );
    else
      scope.report(
        'temperature-arithmetic',
        node,
        `temperatures cannot be ${VERBS[node.operator]} \`${node.operator}\``,
        'write the temperature itself',
      );
    return undefined;
  }
  if (left.kind !== 'quantity' || right.kind !== 'quantity') return undefined;
  const additive = node.operator === '+' || node.operator === '-';
  if (additive && (left.dimension !== right.dimension || left.share !== right.share)) {
    const verb = node.operator === '+' ? 'added to' : 'subtracted from';
    const [first, second] = node.operator === '+' ? [left, right] : [right, left];
    const [a, b] = node.operator === '+' ? [node.left, node.right] : [node.right, node.left];
    scope.report(
      'unit-of-wrong-dimension',
      node.right,
      `\`${scope.text(a)}\` is ${inWords(first)} and cannot be ${verb} \`${scope.text(b)}\`, ${inWords(second)}`,
    );
    return undefined;
  }
  if (node.operator === '/' && right.si === 0) {
    scope.report('division-by-zero', node.right, `\`${scope.text(node.right)}\` is zero: nothing can be divided by it`);
    return undefined;
  }
  const operate = { '+': add, '-': subtract, '*': multiply, '/': divide }[node.operator];
  const amount = operate(left.amount(), right.amount());
  const si = baseValue(amount);
  return {
    kind: 'quantity',
    amount: () => amount,
    si,
    dimension: dimensionKey(amount),
    tolerance: combined(node.operator, left, right, si),
    share: additive && left.share,
  };
}

/** Independent tolerances combine by the root of the sum of squares, absolute for sums and relative for products. */
function combined(
  operator: '+' | '-' | '*' | '/',
  left: Extract<Value, { kind: 'quantity' }>,
  right: Extract<Value, { kind: 'quantity' }>,
  result: number,
): number | undefined {
  if (left.tolerance === undefined && right.tolerance === undefined) return undefined;
  const a = left.tolerance ?? 0;
  const b = right.tolerance ?? 0;
  if (operator === '+' || operator === '-') return Math.hypot(a, b);
  const relative = (tolerance: number, size: number): number => (tolerance === 0 ? 0 : tolerance / Math.abs(size));
  const spread = Math.abs(result) * Math.hypot(relative(a, left.si), relative(b, right.si));
  return Number.isFinite(spread) ? spread : undefined;
}
