import type { Requirement, Unread } from '@boothwright/language';

type Kind = Requirement['kind'];

const heardInside: readonly Kind[] = ['room-tone'];
const soundInside: readonly Kind[] = ['reverberation', 'decay-ratio'];
const throughTheShell: readonly Kind[] = ['room-tone', 'isolation', 'voice-outside'];
const airAndHeat: readonly Kind[] = ['co2', 'temperature-rise'];
const weight: readonly Kind[] = ['mass', 'floor-load'];

/**
 * What an error in one line of a booth can change: the requirements that depend on what the line says. A line that is not
 * listed can change everything. Rather too much than too little: a verdict that stands must not rest on what was lost.
 */
const ofBoothLine: Readonly<Record<string, readonly Kind[]>> = {
  mic: [...heardInside, ...soundInside],
  mouth: [...heardInside, ...soundInside],
  mounts: heardInside,
  contents: ['floor-load'],
  equipment: [...heardInside, ...soundInside, ...airAndHeat, ...weight],
  panels: [...throughTheShell, ...weight, 'panel-weight', 'cost'],
  'stands at': [],
  slit: [...throughTheShell, ...soundInside],
  hole: [...throughTheShell, ...soundInside],
  vent: [...throughTheShell, ...soundInside, ...airAndHeat, ...weight, 'cost'],
  lining: [...throughTheShell, ...soundInside, 'temperature-rise', ...weight, 'cost'],
};

/** The same for a line inside a line of a booth. */
const ofDoorLine: Readonly<Record<string, readonly Kind[]>> = {
  swing: [],
  lock: [],
  'gap perimeter': throughTheShell,
  'gap threshold': throughTheShell,
};

const ofSiteLine: Readonly<Record<string, readonly Kind[]>> = {
  noise: ['room-tone', 'isolation'],
  impact: ['room-tone'],
  neighbour: ['voice-outside'],
  alarm: [],
  passage: [],
  obstacle: [],
  doorway: [],
  lift: [],
  appliance: [],
  joists: [],
  floor: [],
  'cold-surface': [],
  'outdoor-air': ['co2'],
  'fresh-air': ['co2', 'temperature-rise'],
  occupants: ['co2', 'temperature-rise'],
};

const ofSessionLine: Readonly<Record<string, readonly Kind[]>> = {
  stature: [],
  posture: [],
  starts: ['room-tone'],
  effort: ['room-tone', 'voice-outside', ...airAndHeat],
  voice: ['room-tone'],
};

/** Whether an error of a booth, of the site or of the session can change a requirement of this kind. */
export function touches({ part, within }: Unread, kind: Kind): boolean {
  const [line, inner] = within;
  if (line === undefined) return true;
  const lines = part === 'booth' ? ofBoothLine : part === 'site' ? ofSiteLine : part === 'session' ? ofSessionLine : {};
  const door = part === 'booth' && line === 'door' && inner !== undefined ? ofDoorLine[inner] : undefined;
  return (door ?? lines[line])?.includes(kind) ?? true;
}

/** Whether an error of a material that only these lines of the booth use can change a requirement of this kind. */
export function linesTouch(lines: ReadonlySet<string>, kind: Kind): boolean {
  return [...lines].some((line) => ofBoothLine[line]?.includes(kind) ?? true);
}
