import type { Door, Window } from '../../model/booth-spec.js';
import { SLACK } from './slack.js';

export interface Standing {
  readonly opening: Door | Window;
  readonly isDoor: boolean;
}

/** Whether two openings of a wall fit one above the other: by their sills, or, where one has none, by the room left for it. */
export function fitAboveEachOther(a: Standing, b: Standing, height: number): boolean {
  const one = upright(a);
  const two = upright(b);
  if (one && two) return one.from >= two.to - SLACK || two.from >= one.to - SLACK;
  const known = one ?? two;
  const free = (one ? b : a).opening.size.height.value;
  if (!known) return a.opening.size.height.value + b.opening.size.height.value <= height + SLACK;
  return free <= Math.max(known.from, height - known.to) + SLACK;
}

/** Doors stand on the floor inside; a window is where its sill says. */
function upright({ opening, isDoor }: Standing): { readonly from: number; readonly to: number } | undefined {
  const from = isDoor ? 0 : 'sill' in opening ? opening.sill?.value : undefined;
  return from === undefined ? undefined : { from, to: from + opening.size.height.value };
}
