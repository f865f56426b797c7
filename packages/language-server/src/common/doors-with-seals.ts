import type { BoothResult } from '@boothwright/assessment';

/** The booth with the seals of each door named after the door, so that what is said of the door counts them in. */
export function doorsWithSeals(booth: BoothResult): BoothResult {
  const doors = booth.paths.filter(({ kind }) => kind === 'door');
  return {
    ...booth,
    paths: booth.paths.map((path) => {
      const door = path.kind === 'door-seal' ? doors.find(({ id }) => path.id.startsWith(`${id}:`)) : undefined;
      return door === undefined ? path : { ...path, name: door.name };
    }),
  };
}
