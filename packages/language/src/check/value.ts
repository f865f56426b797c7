import type { Level } from '../model/booth-spec.js';
import type { DimensionName } from '../units/dimension.js';
import { DIMENSION_WORDS } from '../units/dimension-words.js';
import type { Amount } from '../units/math.js';
import { dimensionName } from '../units/resolve-unit.js';

/** What an expression comes to. Levels and temperatures are types of their own: arithmetic does not apply to them. */
export type Value =
  | {
      readonly kind: 'quantity';
      /** In base units. */
      readonly si: number;
      /** Powers of the base units as a key. */
      readonly dimension: string;
      /** For arithmetic; made only when it is needed, since most values are used as they stand. */
      readonly amount: () => Amount;
      /** Half-width of the 90 % range in base units. */
      readonly tolerance: number | undefined;
      /** Written in percent. */
      readonly share: boolean;
    }
  | { readonly kind: 'level'; readonly level: Level; readonly tolerance: number | undefined }
  | { readonly kind: 'temperature'; readonly celsius: number; readonly tolerance: number | undefined };

export function valueDimension(value: Value): DimensionName | undefined {
  if (value.kind !== 'quantity') return value.kind;
  return value.share ? 'share' : dimensionName(value.dimension);
}

/** `a mass per area`, for messages. */
export function inWords(value: Value): string {
  const dimension = valueDimension(value);
  return dimension ? DIMENSION_WORDS[dimension].noun : 'a product of units that has no name here';
}

export function plain(value: Value): number {
  if (value.kind === 'quantity') return value.si;
  return value.kind === 'level' ? value.level.decibels : value.celsius;
}
