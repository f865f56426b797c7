import { checkSpec } from '../check/check-spec.js';
import type { Size3 } from '../model/build-up.js';
import type { SpecLine } from './spec-line.js';

/** Lengths in metres that other lines rest on. */
export interface Measures {
  readonly room: Box | undefined;
  /** As it is written. */
  readonly outside: string;
  readonly inside: Box | undefined;
}

export interface Box {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
}

const starts: Readonly<Record<string, readonly [number, number, number]>> = { wardrobe: [1.2, 0.6, 2.0] };
const usual = [1.34, 1.54, 2.15] as const;

/** The size that the booth starts with when none was stated: what is usual, or what the room leaves. */
export function startSize(kind: string | undefined, room: Box | undefined): string {
  const [width, depth, height] = starts[kind ?? ''] ?? usual;
  const least = (wanted: number, there: number | undefined) => metres(Math.min(wanted, (there ?? wanted) * 0.9));
  return [least(width, room?.width), least(depth, room?.depth), least(height, room?.height)].join(' x ');
}

/** The room around the booth; undefined when it was not stated. */
export function roomOf(lines: readonly SpecLine[]): Box | undefined {
  return box(check(lines).spec.site?.room);
}

/** What the faces leave inside; undefined when they do not fit together. */
export function insideOf(lines: readonly SpecLine[]): Box | undefined {
  return box(check(lines).spec.booths[0]?.inside);
}

function box(size: Size3 | undefined): Box | undefined {
  return size && { width: size.width.value, depth: size.depth.value, height: size.height.value };
}

/** Down to the centimetre, so that nothing that has to fit grows. */
export function metres(length: number): string {
  return `${(Math.floor(length * 100 + 1e-6) / 100).toFixed(2)} m`;
}

function check(lines: readonly SpecLine[]) {
  const text = lines.map((line) => line.text).join('\n');
  return checkSpec('first.booth', {
    read: (path) => (path === 'first.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
}
