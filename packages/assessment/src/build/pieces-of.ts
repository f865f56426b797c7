import type { AssemblyLayer, FrameLayer, MaterialLayer } from '@boothwright/language';
import { isSoft } from './area-uses.js';
import { frameMembers, type Hollow } from './frame-members.js';
import type { Piece } from './piece.js';

/** Pieces below this length are offcuts that nobody cuts, m. Evidence: common practice. */
export const leastPiece = 0.03;

/**
 * Everything that a stretch of a build-up is made of: per layer its sheet, cut around openings, or its frame with what
 * fills it. Mass: kg/m2 of the layer times its area; sticks by density times their true section and length.
 */
export function piecesOf(
  layers: readonly AssemblyLayer[],
  width: number,
  height: number,
  openings: readonly Hollow[] = [],
): Piece[] {
  return layers.flatMap((layer, index) => {
    if (layer.kind === 'air') return [];
    if (layer.kind === 'frame') return framePieces(layer, index, width, height, openings);
    return sheetRectangles(width, height, openings).map((rectangle) => sheetPiece(layer, index, rectangle, 'sheet'));
  });
}

interface Rectangle {
  readonly width: number;
  readonly height: number;
  readonly cutOut: number;
}

/**
 * One sheet with its openings cut out, or strips around them where the openings take more than half of it: what would
 * be cut out of a sheet of a door panel is worth more as a door leaf.
 */
function sheetRectangles(width: number, height: number, openings: readonly Hollow[]): Rectangle[] {
  const cutOut = openings.reduce((sum, opening) => sum + opening.width * opening.height, 0);
  if (cutOut <= (width * height) / 2) return [{ width, height, cutOut }];
  const edges = [...openings].sort((a, b) => a.offset - b.offset);
  const strips: Rectangle[] = [];
  let reached = 0;
  for (const opening of edges) {
    strips.push({ width: opening.offset - reached, height, cutOut: 0 });
    strips.push({ width: opening.width, height: opening.base, cutOut: 0 });
    strips.push({ width: opening.width, height: height - opening.base - opening.height, cutOut: 0 });
    reached = opening.offset + opening.width;
  }
  strips.push({ width: width - reached, height, cutOut: 0 });
  return strips.filter((strip) => strip.width >= leastPiece / 2 && strip.height >= leastPiece / 2);
}

function sheetPiece(layer: MaterialLayer, index: number, size: Rectangle, use: 'sheet' | 'fill'): Piece {
  const { material, thickness, surfaceMass } = layer;
  return {
    use,
    material,
    form: isSoft(material) ? 'soft' : 'sheet',
    widthM: size.width,
    lengthM: size.height,
    thicknessM: thickness?.value ?? material.thickness?.value,
    massKg: surfaceMass.value * (size.width * size.height - size.cutOut),
    cutOutM2: size.cutOut,
    layer: index,
  };
}

function framePieces(
  layer: FrameLayer,
  index: number,
  width: number,
  height: number,
  openings: readonly Hollow[],
): Piece[] {
  const frame = frameMembers(width, height, layer.width.value, layer.spacing.value, openings);
  const density = layer.lumber.density?.value;
  const section = layer.width.value * layer.depth.value;
  const sticks = frame.members
    .filter((member) => member.length >= leastPiece)
    .map(
      (member): Piece => ({
        use: member.use,
        material: layer.lumber,
        form: 'stick',
        widthM: layer.width.value,
        lengthM: member.length,
        thicknessM: layer.depth.value,
        massKg: density === undefined ? null : density * section * member.length,
        cutOutM2: 0,
        layer: index,
      }),
    );
  const { fill } = layer;
  if (fill === undefined) return sticks;
  const bays = frame.bays
    .filter((bay) => bay.width >= leastPiece / 2 && bay.height >= leastPiece / 2)
    .map((bay) => sheetPiece(fill, index, { ...bay, cutOut: 0 }, 'fill'));
  return [...sticks, ...bays];
}
