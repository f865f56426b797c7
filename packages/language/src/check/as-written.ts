import type { Sourced } from '../model/sourced.js';
import { millimetres } from './millimetres.js';

/** Parts of an inch: fine enough to stay within the tenths of a millimetre that sizes are held to. */
const PARTS = 32;

/** A length in the units of another that the user wrote: millimetres, with feet and inches behind where that one has them. */
export function asWritten(metres: number, like: Sourced<number>): string {
  const metric = millimetres(metres);
  return isImperial(like) ? `${metric} (\`${feetAndInches(metres)}\`)` : metric;
}

/** A length alone, in the units of another, as it can stand in a text. */
export function inUnitsOf(metres: number, like: Sourced<number>): string {
  return isImperial(like) ? feetAndInches(metres) : millimetres(metres);
}

function isImperial({ text }: Sourced<number>): boolean {
  return /\d\s*(ft|in|feet|foot|inch|inches)\b/.test(text ?? '');
}

/** `4 ft 9-29/32 in`, rounded to the nearest 1/32 in. */
export function feetAndInches(metres: number): string {
  const all = Math.round((metres / 0.0254) * PARTS);
  const feet = Math.floor(all / (12 * PARTS));
  const inches = Math.floor((all - feet * 12 * PARTS) / PARTS);
  let top = all % PARTS;
  let bottom = PARTS;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const part = top === 0 ? '' : `${top}/${bottom}`;
  const rest = part === '' ? `${inches} in` : inches === 0 ? `${part} in` : `${inches}-${part} in`;
  if (feet === 0) return rest;
  return inches === 0 && part === '' ? `${feet} ft` : `${feet} ft ${rest}`;
}
