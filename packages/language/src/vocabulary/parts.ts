import type { DimensionName } from '../units/dimension.js';
import type { Part, SymbolKind } from './shape.js';

/** Short words for the tables of facts. */
export const quantity = (slot: string, dimension: DimensionName): Part => ({ kind: 'quantity', slot, dimension });
export const amount = (slot: string): Part => ({ kind: 'amount', slot });
export const literal = (word: string): Part => ({ kind: 'literal', word });
export const optional = (...parts: Part[]): Part => ({ kind: 'optional', parts });
export const either = (...branches: Part[][]): Part => ({ kind: 'either', branches });
export const choice = (slot: string, ...options: string[]): Part => ({ kind: 'choice', slot, options });
export const reference = (slot: string, ...to: SymbolKind[]): Part => ({ kind: 'reference', slot, to });
export const newName = (declares: SymbolKind): Part => ({ kind: 'new-name', declares });
export const title: Part = { kind: 'title' };
export const text = (slot: string): Part => ({ kind: 'text', slot });
export const size3: Part = { kind: 'size', axes: ['width', 'depth', 'height'] };
export const size2: Part = { kind: 'size', axes: ['width', 'height'] };
export const face: Part = { kind: 'face', slot: 'face' };
export const position: Part = { kind: 'position', axes: ['x', 'y', 'z'] };
export const pairs = (slot: string, first: DimensionName, second: DimensionName): Part => ({
  kind: 'pairs',
  slot,
  first,
  second,
});
export const clock = (slot: string): Part => ({ kind: 'clock', slot });
export const hours = (slot: string): Part => ({ kind: 'hours', slot });
export const bands = (slot: string, dimension: DimensionName): Part => ({ kind: 'bands', slot, dimension });
