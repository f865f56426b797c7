const kinds: Readonly<Record<string, string>> = {
  door: 'door leaf',
  'door-seal': 'seals of door',
  window: 'window',
  vent: 'vent',
  slit: 'slit',
  hole: 'hole',
};

/** Faces that are walls; roof and floor say themselves what they are. */
const walls = ['front', 'back', 'left', 'right'];

/** A path as a reader names it: `door leaf entry`, `seals of door entry`, `back wall`, `roof`. */
export function pathWords(path: { readonly kind: string; readonly name: string }): string {
  if (path.kind === 'face') return walls.includes(path.name) ? `${path.name} wall` : path.name;
  const kind = kinds[path.kind] ?? path.kind;
  return path.name.startsWith(kind) ? path.name : `${kind} ${path.name}`;
}
