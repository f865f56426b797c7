import {
  angledBendCoefficient,
  commonLossCoefficients,
  grilleLossCoefficient,
  type PathElement,
  suddenContractionCoefficient,
  suddenExpansionCoefficient,
} from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';
import { largestRoughnessShare, roughness } from './path-constants.js';
import { ventSections } from './vent-sections.js';

/** Which way the air goes through a vent. */
export type VentDirection = 'in' | 'out';

/** A resistance to the air with the part of the vent that it belongs to. */
export interface VentResistance {
  readonly part: 'ends' | 'duct' | 'bends' | 'chambers' | 'maze' | 'grille';
  readonly element: PathElement;
}

/**
 * What resists the air in a vent, from the room towards the booth, as elements of `pathPressure`.
 *
 * Rule: friction of the straight run and of the maze's channel; a bend of a round duct is a round one, of a rectangular duct a
 * mitred one; every turn of the maze a mitred one of its angle; a chamber and every change of the clear section is a sudden
 * widening or narrowing; a grille is a thin one on its face; the air enters by a flush inlet and loses its speed where it leaves.
 * Source: as of the functions called; docs/models/air-path-pressure.md. Valid: parts some widths apart.
 */
export function ventResistances(vent: Vent, direction: VentDirection): VentResistance[] {
  const sections = ventSections(vent);
  const duct = sections[0] as (typeof sections)[number];
  const { maze, grille } = vent;
  const found: VentResistance[] = [];
  const fitting = (part: VentResistance['part'], coefficient: number, area: number) => {
    if (coefficient > 0) found.push({ part, element: { kind: 'fitting', coefficient, area } });
  };
  const straight = (
    part: VentResistance['part'],
    section: { readonly area: number; readonly perimeter: number },
    length: number,
    face: keyof typeof roughness,
  ) => {
    const diameter = (4 * section.area) / section.perimeter;
    const rough = Math.min(roughness[face], largestRoughnessShare * diameter);
    found.push({
      part,
      element: { kind: 'duct', area: section.area, perimeter: section.perimeter, length, roughness: rough },
    });
  };

  straight('duct', duct, vent.run.value, vent.lining === undefined ? vent.wall.value : 'lined');
  const bend = commonLossCoefficients[vent.duct.kind === 'round' ? 'round bend' : 'square bend'];
  fitting('bends', vent.bends.value * bend, duct.area);
  for (const chamber of sections.filter(({ part }) => part === 'chamber')) {
    // The duct goes on behind the chamber, so that the air widens and narrows whichever way it goes.
    fitting('chambers', changeCoefficient(duct.area, chamber.area), Math.min(duct.area, chamber.area));
    fitting('chambers', changeCoefficient(chamber.area, duct.area), Math.min(duct.area, chamber.area));
  }
  // Sections in the order of the air; the grille counts with its face here, its bars are a resistance of their own.
  const channel = sections.find(({ part }) => part === 'maze');
  const face = grille === undefined ? undefined : grille.size.width.value * grille.size.height.value;
  const inwards = [duct.area, ...(channel === undefined ? [] : [channel.area]), ...(face === undefined ? [] : [face])];
  const areas = direction === 'in' ? inwards : inwards.toReversed();
  for (let index = 1; index < areas.length; index++) {
    const [from, to] = [areas[index - 1] as number, areas[index] as number];
    fitting('ends', changeCoefficient(from, to), Math.min(from, to));
  }
  if (maze !== undefined && channel !== undefined) {
    const lined = maze.lining === undefined ? 'smooth' : 'lined';
    straight('maze', channel, (maze.turns.value + 1) * maze.leg.value, lined);
    fitting('maze', maze.turns.value * angledBendCoefficient(Math.min(180, maze.angle.value)), channel.area);
  }
  if (grille !== undefined && face !== undefined) fitting('grille', grilleLossCoefficient(grille.free.value), face);
  fitting('ends', commonLossCoefficients['flush inlet'], areas[0] as number);
  fitting('ends', commonLossCoefficients.outlet, areas.at(-1) as number);
  return found;
}

/** Loss coefficient of a sudden change of the section, referred to the narrower one. */
export function changeCoefficient(from: number, to: number): number {
  return to >= from ? suddenExpansionCoefficient(from, to) : suddenContractionCoefficient(from, to);
}
