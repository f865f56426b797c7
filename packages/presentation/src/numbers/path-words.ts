const kinds: Readonly<Record<string, string>> = {
  door: 'door leaf',
  window: 'window',
  vent: 'vent',
  slit: 'slit',
  hole: 'hole',
};
const seals: Readonly<Record<string, string>> = { perimeter: 'perimeter seal', threshold: 'threshold gap' };

/** Faces that are walls; roof and floor say themselves what they are. */
const walls = ['front', 'back', 'left', 'right'];

/** A path as a reader names it: `door leaf entry`, `threshold gap of door entry`, `back wall`, `roof`. */
export function pathWords(path: { readonly id: string; readonly kind: string; readonly name: string }): string {
  if (path.kind === 'face') return walls.includes(path.name) ? `${path.name} wall` : path.name;
  if (path.kind === 'door-seal') {
    const [, door, part = ''] = path.id.split(':');
    return `${seals[part] ?? 'seals'} of door ${door ?? path.name}`;
  }
  const kind = kinds[path.kind] ?? path.kind;
  return path.name.startsWith(kind) ? path.name : `${kind} ${path.name}`;
}

/** The same from the identifier of a path, e.g. `face:back`; anything else as it is called. */
export function limiterWords(limitedBy: string): string {
  const [kind = '', name, part] = limitedBy.split(':');
  if (kind === 'faces') return `faces of ${name ?? ''}`;
  if (name === undefined) return limitedBy.replaceAll('-', ' ');
  return pathWords({ id: limitedBy, kind: part === undefined ? kind : 'door-seal', name });
}

/** True for the paths of one opening; a door has its leaf and its seals. */
export function isPathOf(
  opening: string,
  path: { readonly id: string; readonly kind: string; readonly name: string },
): boolean {
  return path.kind !== 'face' && (path.name === opening || path.id.split(':')[1] === opening);
}
