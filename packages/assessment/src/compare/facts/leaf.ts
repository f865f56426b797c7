import type { Sourced, SourceRange } from '@boothwright/language';

/** Properties that only say where something stands, or what it is called. */
const silent: ReadonlySet<string> = new Set([
  'range',
  'nameRange',
  'faceRange',
  'materialRange',
  'againstRange',
  'name',
  'file',
  'origin',
  'fromCatalogue',
]);

/** Properties that say something, in the order of the model. */
export function tellingProperties(thing: object): readonly (readonly [string, unknown])[] {
  return Object.entries(thing).filter(([property, value]) => value !== undefined && !silent.has(property));
}

export function isSourced(value: unknown): value is Sourced<unknown> {
  return isObject(value) && 'value' in value && 'origin' in value && 'range' in value;
}

export function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

/** Whether the text says it; a default is no fact of the text. */
export function isDeclared(value: Sourced<unknown>): boolean {
  return value.origin.kind !== 'default';
}

export function rangeOf(thing: unknown): SourceRange | null {
  return isObject(thing) && 'range' in thing && isObject(thing.range) ? (thing.range as SourceRange) : null;
}

/** Figures that count; what a unit is written in moves the last ones. */
const figures = 10;

/** The same letters for the same content, whatever it is called and wherever it stands. */
export function signature(thing: unknown, nameOf: (thing: object) => string | undefined = () => undefined): string {
  if (typeof thing === 'number') return thing.toPrecision(figures);
  if (!isObject(thing)) return JSON.stringify(thing) ?? '';
  const named = nameOf(thing);
  if (named !== undefined) return named;
  // What is typed for a value, and how its source is told, is no content of it.
  if (isSourced(thing)) return `${signature(thing.value, nameOf)}±${signature(thing.tolerance ?? 0)}`;
  if (thing instanceof Map) return signature([...thing.values()], nameOf);
  if (Array.isArray(thing)) return `[${thing.map((entry) => signature(entry, nameOf)).join(',')}]`;
  const parts = tellingProperties(thing).filter(([property]) => property !== 'title');
  return `{${parts.map(([property, value]) => `${property}:${signature(value, nameOf)}`).join(',')}}`;
}
