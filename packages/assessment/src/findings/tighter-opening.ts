import type { Booth } from '@boothwright/language';

/** What is added to a duct whose air must go on flowing: m of run, and bends. */
export const longerDuct = { run: 1, bends: 1 } as const;

/**
 * The booth with one opening closed, or its duct made longer, by the id of the path; the same booth for a path that is no
 * opening.
 */
export function withTighterOpening(booth: Booth, id: string): Booth {
  const [kind, name, part] = id.split(':');
  switch (kind) {
    case 'door':
      return {
        ...booth,
        doors: booth.doors.map((door) => {
          if (door.name !== name) return door;
          return part === 'perimeter'
            ? { ...door, perimeterGap: { ...door.perimeterGap, value: 0 } }
            : part === 'threshold'
              ? { ...door, thresholdGap: { ...door.thresholdGap, value: 0 } }
              : door;
        }),
      };
    case 'vent':
      return {
        ...booth,
        vents: booth.vents.map((vent) =>
          vent.name !== name
            ? vent
            : {
                ...vent,
                run: { ...vent.run, value: vent.run.value + longerDuct.run },
                bends: { ...vent.bends, value: vent.bends.value + longerDuct.bends },
              },
        ),
      };
    case 'slit':
      return { ...booth, slits: booth.slits.filter((slit) => slit.name !== name) };
    case 'hole':
      return { ...booth, holes: booth.holes.filter((hole) => hole.name !== name) };
    default:
      return booth;
  }
}
