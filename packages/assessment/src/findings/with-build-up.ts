import type { Assembly, AssemblyLayer, Booth, Face } from '@boothwright/language';

/** The booth with other layers in every face, door and window of one build-up. */
export function withBuildUp(booth: Booth, name: string, layers: readonly AssemblyLayer[]): Booth {
  const changed = (assembly: Assembly): Assembly => (assembly.name === name ? { ...assembly, layers } : assembly);
  const faces = Object.fromEntries(
    Object.entries(booth.faces).map(([face, built]) => [
      face,
      built === undefined ? undefined : { ...built, assembly: changed(built.assembly) },
    ]),
  ) as Record<Face, Booth['faces'][Face]>;
  return {
    ...booth,
    faces,
    doors: booth.doors.map((door) => ({ ...door, leaf: changed(door.leaf) })),
    windows: booth.windows.map((window) => ({ ...window, pane: changed(window.pane) })),
  };
}
