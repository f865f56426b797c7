const kinds: Readonly<Record<string, string>> = {
  face: '',
  door: 'door leaf',
  'door-seal': 'seals of door',
  window: 'window',
  vent: 'vent',
  slit: 'slit',
  hole: 'hole',
};

/** A path as a reader names it: `door leaf entry`, `seals of door entry`, `roof`. */
export function pathWords(path: { readonly kind: string; readonly name: string }): string {
  const kind = kinds[path.kind] ?? path.kind;
  return path.name.startsWith(kind) ? path.name : `${kind} ${path.name}`;
}
