import type { Vent } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';

export type SectionPart = 'duct' | 'chamber' | 'maze' | 'grille';

/** A clear cross-section that the air of a vent passes. */
export interface VentSection {
  readonly part: SectionPart;
  /** m2 that air can pass; of a grille its free area */
  readonly area: number;
  /** m round the section; of a grille that of its face */
  readonly perimeter: number;
}

/**
 * Cross-sections of a vent from the room towards the booth. A chamber is passed along its longest side, its lining taken off
 * every face; the duct, the maze and the grille state their clear size.
 */
export function ventSections(vent: Vent): VentSection[] {
  const { duct, maze, grille } = vent;
  const perimeter = duct.kind === 'round' ? Math.PI * duct.diameter.value : 2 * (duct.width.value + duct.height.value);
  return [
    { part: 'duct', area: ductArea(vent), perimeter },
    ...vent.chambers.map((chamber): VentSection => {
      const [, b, c] = chamberSides(chamber);
      return { part: 'chamber', area: b * c, perimeter: 2 * (b + c) };
    }),
    ...(maze === undefined
      ? []
      : [
          {
            part: 'maze' as const,
            area: maze.channel.width.value * maze.channel.height.value,
            perimeter: 2 * (maze.channel.width.value + maze.channel.height.value),
          },
        ]),
    ...(grille === undefined
      ? []
      : [
          {
            part: 'grille' as const,
            area: grille.size.width.value * grille.size.height.value * grille.free.value,
            perimeter: 2 * (grille.size.width.value + grille.size.height.value),
          },
        ]),
  ];
}

/** Clear sides of a chamber inside its lining, m, the longest first; a lining that fills it leaves a millimetre. */
export function chamberSides(chamber: Vent['chambers'][number]): [number, number, number] {
  const lining = chamber.lining?.thickness?.value ?? 0;
  const { width, depth, height } = chamber.size;
  const sides = [width, depth, height].map(({ value }) => Math.max(1e-3, value - 2 * lining)).sort((a, b) => b - a);
  return [sides[0] as number, sides[1] as number, sides[2] as number];
}
