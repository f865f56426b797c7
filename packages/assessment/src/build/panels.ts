import type { AssemblyLayer, Booth } from '@boothwright/language';
import { layerMass } from '../assembly/surface-mass.js';
import { layerThickness } from '../assembly/thickness.js';
import { oncePer } from '../memo/once-per.js';
import type { PanelOpening, PanelResult } from '../result/build-result.js';
import { divideFace, type FacePanel } from './divide-face.js';
import { type FaceExtent, faceExtents } from './face-extents.js';
import type { Piece } from './piece.js';
import { piecesOf } from './pieces-of.js';

/** More panels than this are not laid out: nobody carries them. */
export const mostPanels = 200;

/** A panel with what it is made of. */
export interface BuiltPanel {
  readonly result: PanelResult;
  readonly layers: readonly AssemblyLayer[];
  readonly pieces: readonly Piece[];
}

export interface PanelDivision {
  /** In the order front, back, left, right, roof, floor; numbers run through. */
  readonly built: readonly BuiltPanel[];
  /** Why there are none; null when there are. */
  readonly why: string | null;
  /** What had to be assumed, in sentences. */
  readonly notes: readonly string[];
}

export const panelsUnknown = 'the text does not say how the faces are cut into panels';

/**
 * The faces as numbered panels, from `panels` of the booth: no panel wider than its width, walls in two heights where it
 * has a split. Each is made of what its build-up says: docs/models/panels-and-parts.md.
 */
export const panelsOf: (booth: Booth) => PanelDivision = oncePer((booth) => {
  const { panels } = booth;
  if (panels === undefined) return { built: [], why: panelsUnknown, notes: [] };
  const width = panels.width.value;
  if (!(width > 0)) return { built: [], why: 'the panels have no width', notes: [] };
  const extents = faceExtents(booth);
  const expected = extents.reduce((sum, extent) => sum + Math.ceil(extent.lengthM / width) * 2, 0);
  if (expected > 2 * mostPanels) {
    const why = `panels of ${Math.round(width * 1000)} mm would be more than ${mostPanels}, too many to lay out`;
    return { built: [], why, notes: [] };
  }
  const notes: string[] = [];
  const built: BuiltPanel[] = [];
  for (const extent of extents) {
    const divided = divideFace(extent, booth, width, panels.split?.value);
    notes.push(...divided.notes);
    let place = 0;
    let column = Number.NaN;
    for (const panel of divided.panels) {
      if (panel.offset !== column) place += 1;
      column = panel.offset;
      built.push(builtPanel(extent, panel, built.length + 1, place));
    }
  }
  return { built, why: null, notes: [...new Set(notes)] };
});

function builtPanel(extent: FaceExtent, panel: FacePanel, number: number, place: number): BuiltPanel {
  const { face, leaf, skin } = extent;
  const hollows = panel.openings.map((o) => ({ offset: o.offsetM, base: o.baseM, width: o.widthM, height: o.heightM }));
  const pieces = piecesOf(skin.layers, panel.width, panel.height, hollows);
  const massKg = pieces.reduce((sum, piece) => sum + (piece.massKg ?? 0), 0);
  const gravity = centreOfGravity(skin.layers, panel);
  const words: (string | number)[] = [face];
  if (leaf !== 'whole') words.push(leaf);
  words.push(place);
  if (panel.level !== 'whole') words.push(panel.level);
  const flat = face === 'roof' || face === 'floor';
  const leaves = leafMasses(skin.layers, pieces);
  return {
    layers: skin.layers,
    pieces,
    result: {
      number,
      name: words.join(' '),
      face,
      leaf,
      widthM: panel.width,
      heightM: panel.height,
      thicknessM: skin.thicknessM,
      massKg,
      massMissing: [...new Set(pieces.filter((p) => p.massKg === null).map((p) => p.material.name))],
      openings: panel.openings,
      offsetM: extent.startM + panel.offset,
      baseM: flat ? extent.baseM : extent.baseM + panel.base,
      box: extent.box(panel.offset, panel.width, panel.base, panel.height),
      centreOfGravityM: gravity,
      tipAngleDegrees: flat ? null : tipAngle(gravity, skin.thicknessM),
      heaviestLeafKg: leaves.length > 1 ? Math.max(...leaves) : null,
    },
  };
}

/** Of a panel that weighs the same everywhere but in its openings, and across its thickness as its layers do. */
function centreOfGravity(layers: readonly AssemblyLayer[], panel: FacePanel): PanelResult['centreOfGravityM'] {
  const area = panel.width * panel.height;
  const hollow = (of: (opening: PanelOpening) => number) =>
    panel.openings.reduce((sum, opening) => sum + opening.widthM * opening.heightM * of(opening), 0);
  const solid = area - hollow(() => 1);
  const moment = (area * panel.height) / 2 - hollow((opening) => opening.baseM + opening.heightM / 2);
  let reached = 0;
  let mass = 0;
  let across = 0;
  for (const layer of layers) {
    const thickness = layerThickness(layer);
    const own = layerMass(layer);
    mass += own;
    across += own * (reached + thickness / 2);
    reached += thickness;
  }
  return {
    height: solid > 1e-9 ? moment / solid : panel.height / 2,
    fromOutside: mass > 0 ? across / mass : reached / 2,
  };
}

/** Degrees: atan(distance of the centre of gravity from the nearer edge of its foot / its height). */
function tipAngle(gravity: PanelResult['centreOfGravityM'], thickness: number): number {
  const arm = Math.min(gravity.fromOutside, thickness - gravity.fromOutside);
  return (Math.atan2(Math.max(0, arm), gravity.height) * 180) / Math.PI;
}

/** kg of the leaves on both sides of clear air within the panel. */
function leafMasses(layers: readonly AssemblyLayer[], pieces: readonly Piece[]): number[] {
  const leaves: number[] = [0];
  layers.forEach((layer, index) => {
    if (layer.kind === 'air' && layer.thickness.value > 0) leaves.push(0);
    const own = pieces.filter((piece) => piece.layer === index);
    leaves[leaves.length - 1] = own.reduce(
      (sum, piece) => sum + (piece.massKg ?? 0),
      leaves[leaves.length - 1] as number,
    );
  });
  return leaves.filter((mass) => mass > 0);
}
