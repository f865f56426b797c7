import { type HeatFlow, surfaceResistances } from '@boothwright/acoustics';
import type { AssemblyLayer, Booth, Face } from '@boothwright/language';
import { netFaceArea } from '../booth/face-areas.js';
import { faceNames } from '../booth/geometry.js';
import { facePatches } from '../booth/linings.js';
import { layerHeat } from './layer-heat.js';

/** The shell of a booth as heat sees it, all faces together. */
export interface BoothConductance {
  /** W/K from the air inside to the air of the room */
  readonly total: number;
  /** W/K from the air inside to the boards that warm with it */
  readonly toBoards: number;
  /** W/K from those boards to the room */
  readonly fromBoards: number;
  /** W/K past any board, through parts that have none */
  readonly direct: number;
  /** J/K of those boards */
  readonly boardCapacity: number;
}

/**
 * Heat through the faces, doors and windows of a booth.
 *
 * Equation: UA = sum A/(R_si + sum R + R_so), the air of a room on both sides. The innermost boards of each face, with the lining
 * before them, store heat; what lies behind the first cavity or wool follows too slowly to count in a session. The faces are put
 * together as one node so that the steady UA stays what it is. A missing floor lets no heat through.
 * Units: m2, W/K, J/K. Source: ISO 6946 (surface resistances as of `surfaceResistances`); one node for all boards is our own.
 * Valid: a booth that stands clear in a room. A face close to a wall of the building, or a floor on a cold slab, differs.
 */
export function boothConductance(booth: Booth): BoothConductance {
  const parts = [
    ...faceNames.flatMap((face) => {
      const area = netFaceArea(booth, face);
      return facePatches(booth, face).map(({ share, layers }) => ({ area: area * share, layers, face }));
    }),
    ...booth.doors.map(({ size, leaf, face }) => ({ area: areaOf(size), layers: leaf.layers, face })),
    ...booth.windows.map(({ size, pane, face }) => ({ area: areaOf(size), layers: pane.layers, face })),
  ].filter(({ area, layers }) => area > 0 && layers.length > 0);
  let [total, toBoards, boardCapacity, direct] = [0, 0, 0, 0];
  for (const { area, layers, face } of parts) {
    const found = patchHeat(layers, heatFlowOf(face));
    total += area / found.resistance;
    if (found.capacity > 0) {
      toBoards += area / found.toBoard;
      boardCapacity += area * found.capacity;
    } else {
      direct += area / found.resistance;
    }
  }
  const throughBoards = total - direct;
  return {
    total,
    toBoards,
    fromBoards: throughBoards > 0 ? 1 / (1 / throughBoards - 1 / toBoards) : 0,
    direct,
    boardCapacity,
  };
}

function heatFlowOf(face: Face): HeatFlow {
  if (face === 'roof') return 'up';
  return face === 'floor' ? 'down' : 'across';
}

/** Layers of a patch, outside first, seen from inside: m2 K/W in all and to the middle of the first boards, and J/(m2 K) of these. */
function patchHeat(
  layers: readonly AssemblyLayer[],
  heatFlow: HeatFlow,
): { readonly resistance: number; readonly toBoard: number; readonly capacity: number } {
  const surface = surfaceResistances[heatFlow];
  let resistance = surface;
  let [before, across, capacity] = [0, 0, 0];
  let state: 'before' | 'in' | 'behind' = 'before';
  for (const layer of layers.toReversed()) {
    const heat = layerHeat(layer, heatFlow);
    if (state === 'before' && heat.capacity > 0) {
      state = 'in';
      before = resistance;
    } else if (state === 'in' && heat.capacity === 0) {
      state = 'behind';
    }
    if (state === 'in') {
      across += heat.resistance;
      capacity += heat.capacity;
    }
    resistance += heat.resistance;
  }
  return { resistance: resistance + surface, toBoard: before + across / 2, capacity };
}

function areaOf(size: { readonly width: { readonly value: number }; readonly height: { readonly value: number } }) {
  return size.width.value * size.height.value;
}
