/** Insertions, deletions, replacements and swaps of neighbours; stops counting once `limit` is reached. */
export function editDistance(a: string, b: string, limit: number): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let smallest = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, beforeLast[j - 2]! + 1);
      row.push(cost);
      smallest = Math.min(smallest, cost);
    }
    if (smallest >= limit) return limit;
    beforeLast = last;
    last = row;
  }
  return last[b.length]!;
}
