import { paint, type TextStyle } from './text-style.js';

/** A heading over its body; undefined bodies give no section. */
export function section(heading: string, body: string | undefined, style: TextStyle): string | undefined {
  return body ? `${paint(heading, 'bold', style)}\n${body}` : undefined;
}

/** Lines that are there, joined. */
export function joinLines(...lines: readonly (string | undefined | null | false)[]): string {
  return lines.filter(Boolean).join('\n');
}

/** ` of alcove` where more than one booth is described. */
export function ofBooth(name: string, count: number): string {
  return count > 1 ? ` (${name})` : '';
}
