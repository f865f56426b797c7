/** A door or window in a frame: from its left and lower edge, m. */
export interface Hollow {
  readonly offset: number;
  readonly base: number;
  readonly width: number;
  readonly height: number;
}

export interface FrameMembers {
  readonly members: readonly {
    readonly use: 'stud' | 'post' | 'plate' | 'header' | 'sill' | 'short stud';
    readonly length: number;
  }[];
  /** Clear spaces between the members, m. */
  readonly bays: readonly { readonly width: number; readonly height: number }[];
}

interface Upright {
  readonly from: number;
  readonly use: 'stud' | 'post';
}

/**
 * The frame of one panel: a plate along its lower and its upper edge, a stud at both ends, and studs between them no
 * further apart than `spacing`, centre to centre. An opening gets a post at either side (a stud close by becomes it), a
 * header and a sill where there is room for one besides the plate, and short studs above and below it in place of those
 * that it cuts. An opening down to the lower edge breaks the plate there. All lengths in m; `stick` is the width of every
 * member along the wall.
 */
export function frameMembers(
  width: number,
  height: number,
  stick: number,
  spacing: number,
  openings: readonly Hollow[],
): FrameMembers {
  const clear = Math.max(0, height - 2 * stick);
  const members: { use: FrameMembers['members'][number]['use']; length: number }[] = [];
  const put = (use: FrameMembers['members'][number]['use'], length: number) => {
    if (length > 0) members.push({ use, length });
  };

  put('plate', width);
  for (const length of lowerPlate(width, openings)) put('plate', length);

  const uprights = uprightsOf(width, stick, spacing, openings);
  for (const { use } of uprights.standing) put(use, clear);
  const bays: { width: number; height: number }[] = [];
  const edges = uprights.standing.map(({ from }) => from).sort((a, b) => a - b);
  edges.slice(1).forEach((to, index) => {
    const from = (edges[index] as number) + stick;
    if (to <= from) return;
    const inside = openings.filter((o) => o.offset < to - 1e-9 && o.offset + o.width > from + 1e-9);
    if (inside.length === 0) bays.push({ width: to - from, height: clear });
  });
  for (const opening of openings) {
    const above = Math.max(0, height - stick - opening.base - opening.height);
    const below = Math.max(0, opening.base - stick);
    const header = above >= stick;
    const sill = below >= stick;
    if (header) put('header', opening.width);
    if (sill) put('sill', opening.width);
    const cut = uprights.cutBy(opening);
    const clearWidth = Math.max(0, opening.width - cut * stick) / (cut + 1);
    for (const space of [header ? above - stick : above, sill ? below - stick : below]) {
      for (let index = 0; index < cut; index += 1) put('short stud', space);
      for (let index = 0; index <= cut; index += 1) bays.push({ width: clearWidth, height: space });
    }
  }
  return { members, bays };
}

function lowerPlate(width: number, openings: readonly Hollow[]): number[] {
  const breaks = openings.filter((opening) => opening.base <= 1e-6).sort((a, b) => a.offset - b.offset);
  const pieces: number[] = [];
  let reached = 0;
  for (const opening of breaks) {
    pieces.push(opening.offset - reached);
    reached = opening.offset + opening.width;
  }
  return [...pieces, width - reached].filter((length) => length > 1e-6);
}

function uprightsOf(width: number, stick: number, spacing: number, openings: readonly Hollow[]) {
  const span = width - stick;
  const count = span <= stick ? 1 : Math.ceil(span / spacing - 1e-9) + 1;
  const studs = Array.from({ length: Math.max(1, count) }, (_, index) =>
    count <= 1 ? 0 : (index * span) / (count - 1),
  );
  const isEdge = (from: number) => from < 1e-9 || from > span - 1e-9;
  const posts: number[] = [];
  for (const opening of openings) {
    for (const wanted of [opening.offset - stick, opening.offset + opening.width]) {
      const from = Math.min(Math.max(0, wanted), Math.max(0, span));
      const taken = [...studs.filter(isEdge), ...posts].some((other) => Math.abs(other - from) < stick - 1e-9);
      if (!taken) posts.push(from);
    }
  }
  const within = (from: number, opening: Hollow) =>
    from + stick > opening.offset + 1e-9 && from < opening.offset + opening.width - 1e-9;
  const free = studs.filter((from) => isEdge(from) || !posts.some((post) => Math.abs(post - from) < stick));
  const cut = (from: number, opening: Hollow) => !isEdge(from) && within(from, opening);
  const standing: Upright[] = [
    ...free
      .filter((from) => !openings.some((opening) => cut(from, opening)))
      .map((from): Upright => ({ from, use: 'stud' })),
    ...posts.map((from): Upright => ({ from, use: 'post' })),
  ];
  return {
    standing,
    cutBy: (opening: Hollow) => free.filter((from) => cut(from, opening)).length,
  };
}
