/**
 * Where a falling function passes zero between two places; the ends where it does not.
 *
 * Rule: straight line between the ends, the weight of an end that stays twice halved (Illinois). Units: any.
 * Source: numerical practice. Valid: one crossing, the function above zero at `low` and below at `high`.
 */
export function rootBetween(value: (at: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  let [above, below] = [value(from), value(to)];
  if (above <= 0) return from;
  if (below >= 0) return to;
  const near = 1e-9 * (to - from);
  let kept: 'from' | 'to' | undefined;
  for (let step = 0; step < 60 && to - from > near; step++) {
    const middle = (from * below - to * above) / (below - above);
    const found = value(middle);
    if (found === 0) return middle;
    if (found > 0) {
      if (middle - from < near && step > 0 && kept === 'to') return middle;
      from = middle;
      above = found;
      if (kept === 'to') below /= 2;
      kept = 'to';
    } else {
      if (to - middle < near && step > 0 && kept === 'from') return middle;
      to = middle;
      below = found;
      if (kept === 'from') above /= 2;
      kept = 'from';
    }
  }
  return (from + to) / 2;
}
