import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { checkAir } from './check-air.js';
import { checkField } from './field-integral.js';
import { checkLayers, type Field, type Layer } from './layer.js';

/**
 * Rejects a list of layers that is no wall: one that cannot exist, and one without any layer, which is an opening. Layers
 * of no thickness are legal.
 * Errors: ArgumentError that names the layer by its place from outside.
 */
export function checkWallLayers(layers: readonly Layer[]): void {
  checkLayers(layers);
  if (layers.length === 0) throw new ArgumentError('number of layers', 0, 'at least one layer; an opening is no wall');
}

/** What surrounds a wall, of which a program without types may have left out any part. */
type Surroundings = { readonly air: Air; readonly field: Field };

/**
 * Rejects surroundings without air or field, and a field that cannot exist.
 * Errors: ArgumentError that names what is missing.
 */
export function checkSurroundings(surroundings: Surroundings): void {
  if (!isRecord(surroundings)) throw new ArgumentError('surroundings of the wall', surroundings, 'air and field');
  const { air, field } = surroundings;
  checkAir(air);
  if (!isRecord(field)) throw new ArgumentError('field', field, fieldWords);
  if (field.kind !== 'finite' && field.kind !== 'limited') {
    throw new ArgumentError('kind of the field', (field as { kind?: unknown }).kind, fieldWords);
  }
  if (field.kind === 'finite' && !isRecord(field.size)) {
    throw new ArgumentError('size of the panel', field.size, 'a width and a height in metres');
  }
  checkField(field);
}

const fieldWords = "{ kind: 'finite', size } or { kind: 'limited', maximumAngleDeg }";

function isRecord(value: unknown): boolean {
  return typeof value === 'object' && value !== null;
}
