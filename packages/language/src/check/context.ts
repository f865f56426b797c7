import { CATALOGUE_FILE } from '../catalog/catalogue-file.js';
import { type DefaultName, defaultOf } from '../defaults.js';
import { limits } from '../limits.js';
import type { Problem, Severity } from '../model/problem.js';
import type { Sourced, SourceRange } from '../model/sourced.js';
import type { Slot, Span, Statement } from '../syntax/tree.js';
import { type Advice, didYouMeanAdvice, type Hint, hintFields } from '../text/advice.js';
import { didYouMean } from '../text/did-you-mean.js';
import type { DimensionName } from '../units/dimension.js';
import type { SymbolKind } from '../vocabulary/shape.js';
import type { ValueEntry } from './check-result.js';
import type { Value } from './value.js';

/** A named declaration of the program that is being checked. */
export interface Declaration {
  readonly kind: SymbolKind;
  readonly name: string;
  readonly statement: Statement;
  readonly nameSpan: Span;
}

/** All declarations that one reading of the spec sees: those of the base, or those of one variant. */
export interface Program {
  /** In order of file and place; the catalogue last. */
  readonly statements: readonly Statement[];
  readonly lets: ReadonlyMap<string, Declaration>;
  readonly materials: ReadonlyMap<string, Declaration>;
  readonly assemblies: ReadonlyMap<string, Declaration>;
}

/** What one reading of the spec gathers. */
export interface CheckContext {
  readonly program: Program;
  readonly texts: ReadonlyMap<string, string>;
  readonly problems: Problem[];
  readonly values: ValueEntry[];
  readonly references: ReferenceLog;
  /** Undefined stands for a value that is wrong and was reported, `'busy'` for one that is being worked out. */
  readonly letValues: Map<string, Value | undefined | 'busy'>;
  /** What this reading may still spend, so that no text, however odd, costs more than a moment. */
  readonly purse: { lets: number; suggestions: number };
  /** Names whose declaration is broken: whoever uses them is not told again. */
  readonly broken: Set<string>;
}

/** References by `kind`, container and name. */
export type ReferenceLog = Map<string, Map<string, SourceRange>>;

export function referenceKey(kind: SymbolKind, name: string, container = ''): string {
  return `${kind}\n${container}\n${name}`;
}

/** What a key of the log stands for. */
export function ofReferenceKey(key: string): { readonly kind: string; readonly name: string } {
  const [kind = '', , name = ''] = key.split('\n');
  return { kind, name };
}

export function refer(ctx: CheckContext, kind: SymbolKind, name: string, range: SourceRange, container?: string): void {
  const key = referenceKey(kind, name, container);
  let ranges = ctx.references.get(key);
  if (!ranges) {
    ranges = new Map();
    ctx.references.set(key, ranges);
  }
  ranges.set(`${range.file}\n${range.from}`, range);
}

export function rangeIn(file: string, span: Span): SourceRange {
  return { file, from: span.from, to: span.to };
}

/** The keyword and what follows it, without the block. */
export function headerOf(statement: Statement): SourceRange {
  return { file: statement.file, from: statement.from, to: statement.headerTo };
}

export function wholeOf(statement: Statement): SourceRange {
  return { file: statement.file, from: statement.from, to: statement.to };
}

export function slotRange(statement: Statement, slot: Slot): SourceRange {
  return rangeIn(slot.file ?? statement.file, slot);
}

/** The text of a range, single-spaced. */
export function textOf(ctx: CheckContext, range: SourceRange): string {
  const text = (ctx.texts.get(range.file) ?? '').slice(range.from, range.to);
  return /\s\s|[^\S ]/.test(text) ? text.replace(/\s+/g, ' ').trim() : text;
}

export interface Complaint {
  readonly severity?: Severity;
  readonly hint?: Hint | undefined;
  readonly related?: Problem['related'];
  readonly lacks?: Problem['lacks'];
}

export function complain(
  ctx: CheckContext,
  id: string,
  range: SourceRange,
  message: string,
  more: Complaint = {},
): void {
  if (ctx.problems.length > limits.problems) return;
  if (ctx.problems.length === limits.problems) {
    ctx.problems.push({ id: 'too-many-problems', severity: 'error', message: 'more problems are not listed', range });
    return;
  }
  ctx.problems.push({
    id,
    severity: more.severity ?? 'error',
    message,
    range,
    ...hintFields(more.hint),
    ...(more.lacks === undefined ? {} : { lacks: more.lacks }),
    ...(more.related === undefined || more.related.length === 0 ? {} : { related: more.related }),
  });
}

export function warn(ctx: CheckContext, id: string, range: SourceRange, message: string, more: Complaint = {}): void {
  complain(ctx, id, range, message, { severity: 'warning', ...more });
}

/** Looking for a near name among all is the dearest thing that a mistake can cause, so it is done only so often. */
export function meantHint(ctx: CheckContext, name: string, known: Iterable<string>): Advice | undefined {
  if (ctx.purse.suggestions-- <= 0) return undefined;
  const near = didYouMean(name, known);
  return near === undefined ? undefined : didYouMeanAdvice(near);
}

export function keep<T>(
  ctx: CheckContext,
  label: string,
  fact: string,
  dimension: DimensionName | 'text',
  value: Sourced<T>,
): Sourced<T> {
  ctx.values.push({ label, fact, dimension, value });
  return value;
}

/** A named default, placed on the header of the block that lacks it. */
export function fallback<T>(
  ctx: CheckContext,
  name: DefaultName,
  label: string,
  dimension: DimensionName | 'text',
  range: SourceRange,
): Sourced<T> {
  const entry = defaultOf(name);
  return keep(ctx, label, name, dimension, {
    value: entry.value as T,
    origin: { kind: 'default', name, evidence: entry.evidence, source: entry.source },
    range,
  });
}

/** On a line that could not be read to its end nothing more is complained about; what was understood is still used. */
export function hearing(ctx: CheckContext, statement: Statement): CheckContext {
  return statement.complete ? ctx : { ...ctx, problems: [] };
}

export function isCatalogue(file: string): boolean {
  return file === CATALOGUE_FILE;
}
