import type { Booth, Face } from '@boothwright/language';
import { assemblyMass } from '../assembly/surface-mass.js';
import { netFaceArea } from '../booth/face-areas.js';
import { faceNames } from '../booth/geometry.js';
import { airBoxes } from './air-boxes.js';
import { airLiningUses } from './air-lining-uses.js';
import { middleSize } from './area-uses.js';
import { openingPieces } from './owned-parts.js';
import type { PanelDivision } from './panels.js';
import type { Piece } from './piece.js';

export interface MassPart {
  readonly part: string;
  readonly kg: number;
}

/**
 * Mass of the booth by part, kg. Where the text cuts the faces into panels, a face weighs what its panels weigh and a door
 * or window what its pieces weigh. Otherwise a face weighs its mass per area times its area halfway between the inside and
 * the outside box, less its openings: corners then count about once, studs at their mean spacing, and plates not at all.
 * Linings weigh on their covered share of the inside face. Boxes and mazes in air paths weigh with their boards and lining,
 * lined ducts with their lining; pipes, grilles, fans, door hardware and fixings are not counted.
 */
export function massByPart(booth: Booth, division: PanelDivision): MassPart[] {
  const faces = division.why === null ? facesFromPanels(division) : facesByArea(booth);
  const openings =
    division.why === null
      ? openingPieces(booth).map(({ owner, pieces }) => ({ part: owner, kg: massOf(pieces) }))
      : openingsByArea(booth);
  const linings = [...liningMasses(booth).values()].reduce((sum, kg) => sum + kg, 0);
  return [
    ...faces,
    ...openings,
    { part: 'linings', kg: linings },
    { part: 'air paths', kg: airPathMass(booth) },
  ].filter((part) => part.kg > 0);
}

/** kg of boxes and mazes with their lining, and of what lines ducts. */
function airPathMass(booth: Booth): number {
  const boxes = airBoxes(booth);
  const uses = [...boxes.flatMap(({ boards }) => boards), ...airLiningUses(booth)];
  return massOf(boxes.flatMap(({ pieces }) => pieces)) + uses.reduce((sum, use) => sum + (use.massKg ?? 0), 0);
}

function facesFromPanels({ built }: PanelDivision): MassPart[] {
  return faceNames.map((face) => ({
    part: face,
    kg: built.reduce((sum, { result }) => sum + (result.face === face ? result.massKg : 0), 0),
  }));
}

function massOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, piece) => sum + (piece.massKg ?? 0), 0);
}

function facesByArea(booth: Booth): MassPart[] {
  const middle = middleSize(booth);
  return faceNames.map((face) => ({
    part: face,
    kg: netFaceArea(booth, face, middle) * assemblyMass(booth.faces[face]?.assembly.layers ?? []),
  }));
}

function openingsByArea(booth: Booth): MassPart[] {
  return [
    ...booth.doors.map((door) => ({
      part: `door ${door.name}`,
      kg: door.size.width.value * door.size.height.value * assemblyMass(door.leaf.layers),
    })),
    ...booth.windows.map((window) => ({
      part: `window ${window.name}`,
      kg: window.size.width.value * window.size.height.value * assemblyMass(window.pane.layers),
    })),
  ];
}

/** kg of lining on each lined face. */
export function liningMasses(booth: Booth): Map<Face, number> {
  return new Map(faceNames.map((face) => [face, liningMass(booth, face)]));
}

function liningMass(booth: Booth, face: Face): number {
  const linings = booth.linings.filter((lining) => lining.faces.includes(face));
  const covered = linings.reduce((sum, lining) => sum + lining.cover.value, 0);
  const scale = covered > 1 ? 1 / covered : 1;
  return linings.reduce(
    (sum, lining) => sum + netFaceArea(booth, face) * lining.cover.value * scale * assemblyMass(lining.layers),
    0,
  );
}
