interface Placed {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Whether straight cuts from edge to edge, one after the other, free every piece: what a saw on a rail can do. */
export function cutsEdgeToEdge(placed: readonly Placed[]): boolean {
  if (placed.length <= 1) return true;
  const parts = parted(placed, 'x', 'w') ?? parted(placed, 'y', 'h');
  return parts?.every(cutsEdgeToEdge) ?? false;
}

/** The pieces in groups between cuts across one axis; undefined when no cut misses all of them. */
function parted(placed: readonly Placed[], from: 'x' | 'y', size: 'w' | 'h'): Placed[][] | undefined {
  const sorted = [...placed].sort((a, b) => a[from] - b[from]);
  const groups: Placed[][] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const piece of sorted) {
    if (piece[from] >= reached) groups.push([]);
    groups[groups.length - 1]?.push(piece);
    reached = Math.max(reached, piece[from] + piece[size]);
  }
  return groups.length > 1 ? groups : undefined;
}
