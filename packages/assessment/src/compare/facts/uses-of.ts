import type { Assembly, BoothSpec, Face } from '@boothwright/language';

/** `booth alcove, front`, `booth alcove, door entry`: what a build-up makes. */
export function usesOf(assembly: Assembly, { booths, site }: BoothSpec): readonly string[] {
  const isIt = (other: Assembly | undefined) => other?.name === assembly.name;
  return [
    ...booths.flatMap(({ name, faces, doors, windows }) => [
      ...Object.entries(faces).flatMap(([face, made]) => (isIt(made?.assembly) ? [`booth ${name}, ${face}`] : [])),
      ...doors.flatMap((door) => (isIt(door.leaf) ? [`booth ${name}, door ${door.name}`] : [])),
      ...windows.flatMap((window) => (isIt(window.pane) ? [`booth ${name}, window ${window.name}`] : [])),
    ]),
    ...(site?.neighbours ?? []).flatMap(({ name, separation }) =>
      separation?.kind === 'assembly' && isIt(separation.assembly) ? [`neighbour ${name}`] : [],
    ),
  ];
}

/** `booth alcove, wall and roof shell`; `assembly shell` where it makes nothing or something of several booths. */
export function placeOfAssembly(assembly: Assembly, spec: BoothSpec): string {
  const alone = `assembly ${assembly.name}`;
  const inBooths = spec.booths.filter(({ faces, doors, windows }) =>
    [
      ...Object.values(faces).map((made) => made?.assembly),
      ...doors.map(({ leaf }) => leaf),
      ...windows.map(({ pane }) => pane),
    ].some((other) => other?.name === assembly.name),
  );
  const booth = inBooths[0];
  if (booth === undefined || inBooths.length > 1) return alone;
  const isIt = (other: Assembly | undefined) => other?.name === assembly.name;
  const made = (face: Face) => isIt(booth.faces[face]?.assembly);
  const words = [
    ...((['front', 'back', 'left', 'right'] as const).some(made) ? ['wall'] : []),
    ...(made('roof') ? ['roof'] : []),
    ...(made('floor') ? ['floor'] : []),
  ];
  if (words.length === 0) {
    if (booth.doors.some(({ leaf }) => isIt(leaf))) words.push('door leaf');
    if (booth.windows.some(({ pane }) => isIt(pane))) words.push('window pane');
  }
  return `booth ${booth.name}, ${words.join(' and ')} ${assembly.name}`;
}
