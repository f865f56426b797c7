import type { AssemblyLayer, FrameLayer } from '@boothwright/language';
import { assemblyThickness, layerThickness } from '../assembly/thickness.js';

/** A shell of a wall that is built and carried on its own. */
export interface Skin {
  readonly layers: readonly AssemblyLayer[];
  /** m from the outer surface of the build-up to that of the shell */
  readonly fromM: number;
  /** m, without air at its outside and inside */
  readonly thicknessM: number;
}

/**
 * The shells of a build-up, outside first. Two frames with clear air between them hold two shells that touch nowhere;
 * everything else is one piece. Air at the outside or inside end belongs to no shell.
 */
export function skinsOf(layers: readonly AssemblyLayer[]): Skin[] {
  const frames = layers.flatMap((layer, index) => (isFrame(layer) ? [index] : []));
  const cuts = layers.flatMap((layer, index) => {
    if (layer.kind !== 'air' || layer.thickness.value <= 0 || layer.fixings) return [];
    return frames.some((frame) => frame < index) && frames.some((frame) => frame > index) ? [index] : [];
  });
  const bounds = [-1, ...cuts, layers.length];
  return bounds.slice(1).flatMap((end, index) => {
    const skin = trimmed(layers, (bounds[index] as number) + 1, end);
    return skin === undefined ? [] : [skin];
  });
}

function isFrame(layer: AssemblyLayer): layer is FrameLayer {
  return layer.kind === 'frame' && layer.depth.value > 0;
}

function trimmed(layers: readonly AssemblyLayer[], from: number, to: number): Skin | undefined {
  const solid = (index: number) => layers[index]?.kind !== 'air' && layerThicknessOrMass(layers[index]) > 0;
  let start = from;
  let end = to;
  while (start < end && !solid(start)) start += 1;
  while (end > start && !solid(end - 1)) end -= 1;
  if (start === end) return undefined;
  const own = layers.slice(start, end);
  return { layers: own, fromM: assemblyThickness(layers.slice(0, start)), thicknessM: assemblyThickness(own) };
}

/** Positive for everything that is there, be it known by its thickness or by its mass alone. */
function layerThicknessOrMass(layer: AssemblyLayer | undefined): number {
  if (layer === undefined) return 0;
  const thickness = layerThickness(layer);
  return layer.kind === 'material' && layer.thickness === undefined ? layer.surfaceMass.value : thickness;
}
