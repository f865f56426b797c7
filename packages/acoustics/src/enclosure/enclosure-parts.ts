import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { checkLayers, type Layer } from '../layered/layer.js';
import { leafAt } from '../layered/leaf.js';
import { isPresent } from '../layered/prepared-stack.js';
import { transferMatrix } from '../layered/transfer-matrix.js';
import { add, type Complex, complex, multiply, scale } from '../math/complex.js';
import { pistonImpedance } from '../openings/aperture-transmission-loss.js';
import { channelMatrix, narrowGapMedium } from '../openings/narrow-gap-medium.js';
import { slitMouthImpedance } from '../openings/slit-transmission-loss.js';
import { panelImpedance } from '../panels/panel-impedance.js';
import { defaultPanelEdges, type EnclosureElement } from './enclosure-element.js';

/** A part of the skin of a small enclosure, ready to be asked at any frequency. */
export interface EnclosurePart {
  /** m2; 0 for an opening that is shut */
  readonly area: number;
  /** A and B of its two-port at a frequency in Hz. */
  readonly twoPort: (hz: number) => TwoPort;
}

export type TwoPort = { readonly a: Complex; readonly b: Complex };

/**
 * Parts of the skin, in order. Walls of the same layers and the same size share one two-port, worked out once for each
 * frequency: of the faces of a box two and two are alike.
 */
export function enclosureParts(elements: readonly EnclosureElement[], air: Air): EnclosurePart[] {
  const walls: { readonly wall: Wall; readonly twoPort: EnclosurePart['twoPort'] }[] = [];
  return elements.map((element) => {
    if (element.kind !== 'wall') return { area: openArea(element), twoPort: (hz) => openingTwoPort(element, hz, air) };
    const alike = walls.find(({ wall }) => isAlike(wall, element));
    if (alike !== undefined) return { area: element.area, twoPort: alike.twoPort };
    const parts = wallParts(element, air);
    const known = new Map<number, TwoPort>();
    const twoPort = (hz: number) => {
      const found = known.get(hz) ?? wallTwoPort(parts, hz, air);
      known.set(hz, found);
      return found;
    };
    walls.push({ wall: element, twoPort });
    return { area: element.area, twoPort };
  });
}

type Wall = EnclosureElement & { kind: 'wall' };

function isAlike(one: Wall, other: Wall): boolean {
  return (
    one.layers === other.layers &&
    one.edges === other.edges &&
    one.size?.width === other.size?.width &&
    one.size?.height === other.size?.height
  );
}

function openArea(element: EnclosureElement & { kind: 'leak' | 'slit' }): number {
  return element.kind === 'slit' ? element.gap * element.length : element.area;
}

/** A and B of a slit or of holes. */
function openingTwoPort(element: EnclosureElement & { kind: 'leak' | 'slit' }, hz: number, air: Air): TwoPort {
  if (openArea(element) === 0) return { a: complex(1), b: complex(0) };
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  if (element.kind === 'slit') {
    const { gap, depth, position = 'mid' } = element;
    const mouth = slitMouthImpedance(k * gap * (position === 'edge' ? 2 : 1), air);
    return throughMouths(mouth, narrowGapMedium(gap, hz, air), depth);
  }
  const { area, depth, count = 1 } = element;
  const radius = Math.sqrt(area / count / Math.PI);
  const mouth = scale(pistonImpedance(k * radius), air.impedance);
  // A slit as wide as the radius has the same rim for its area, and so the same friction while the boundary layer is thin.
  return throughMouths(mouth, narrowGapMedium(radius, hz, air), depth);
}

/** A channel with the mass and radiation of a mouth in series at both ends. */
function throughMouths(
  mouth: Complex,
  medium: { readonly characteristicImpedance: Complex; readonly wavenumber: Complex },
  depth: number,
): TwoPort {
  const { a, b, c, d } = channelMatrix(medium, depth);
  const throughFirst = add(a, multiply(mouth, c));
  return { a: throughFirst, b: add(add(b, multiply(mouth, d)), multiply(throughFirst, mouth)) };
}

/** A leaf of a wall as a panel, or a layer as it is. */
type WallPart = { readonly layer: Layer } | { readonly impedance: (hz: number) => Complex };

/** What does not depend on the frequency. */
function wallParts({ layers, size, edges = defaultPanelEdges }: Wall, air: Air): WallPart[] {
  const parts: WallPart[] = [];
  for (let index = 0; index < layers.length; index++) {
    const layer = layers[index]!;
    if (size === undefined || !isPresent(layer) || (layer.kind !== 'plate' && layer.kind !== 'limp-sheet')) {
      parts.push({ layer });
      continue;
    }
    const { surfaceMass, bendingStiffness: stiffness, lossFactor, last } = leafAt(layers, index, air);
    parts.push({ impedance: panelImpedance({ surfaceMass, stiffness, lossFactor }, size.width, size.height, edges) });
    index = last;
  }
  return parts;
}

function wallTwoPort(parts: readonly WallPart[], hz: number, air: Air): TwoPort {
  let a = complex(1);
  let b = complex(0);
  for (const part of parts) {
    if ('impedance' in part) {
      b = add(b, multiply(a, part.impedance(hz)));
      continue;
    }
    const next = transferMatrix(part.layer, hz, 0, air);
    [a, b] = [add(multiply(a, next.a), multiply(b, next.c)), add(multiply(a, next.b), multiply(b, next.d))];
  }
  return { a, b };
}

/** ArgumentError for an element that can't be. */
export function checkElement(element: EnclosureElement): void {
  const expectSize = (name: string, value: number, unit: string) => requireNumber(name, value, { atLeast: 0, unit });
  requireOneOf('kind of an element', element.kind, ['wall', 'leak', 'slit']);
  if (element.kind === 'slit') {
    if (element.position !== undefined) requireOneOf('position of a slit', element.position, ['mid', 'edge']);
    expectSize('length of a slit', element.length, 'metres');
    expectSize('gap of a slit', element.gap, 'metres');
    expectSize('depth of a slit', element.depth, 'metres');
    return;
  }
  expectSize(element.kind === 'wall' ? 'area of a wall' : 'area of a leak', element.area, 'm2');
  if (element.kind === 'wall') {
    if (element.edges !== undefined) {
      requireOneOf('edges of a wall', element.edges, ['simply-supported', 'clamped', 'between']);
    }
    checkLayers(element.layers);
    return;
  }
  expectSize('depth of a leak', element.depth, 'metres');
  if (element.attenuation !== undefined) expectSize('attenuation of a leak', element.attenuation, 'dB');
  if (element.count !== undefined && !(Number.isInteger(element.count) && element.count > 0)) {
    throw new ArgumentError('count of leaks', element.count, 'a whole number above 0');
  }
}
