import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { checkLayers, type Layer, type PanelSize } from '../layered/layer.js';
import { leafAt } from '../layered/leaf.js';
import { isPresent } from '../layered/prepared-stack.js';
import { transferMatrix } from '../layered/transfer-matrix.js';
import { add, type Complex, complex, divide, multiply, scale, squaredSize } from '../math/complex.js';
import { heatRatio } from '../openings/air-friction.js';
import { pistonImpedance } from '../openings/aperture-transmission-loss.js';
import { channelMatrix, narrowGapMedium } from '../openings/narrow-gap-medium.js';
import { slitMouthImpedance } from '../openings/slit-transmission-loss.js';
import type { Edges } from '../panels/first-panel-resonance.js';
import { panelImpedance } from '../panels/panel-impedance.js';
import type { LevelDifference } from '../quantities/level-difference.js';
import { boxRadiationImpedance, type Surrounding } from './box-radiation-impedance.js';

/** A part of the skin of an enclosure: a wall of layers or an opening. */
export type EnclosureElement =
  | {
      readonly kind: 'wall';
      /** Outside to inside. */
      readonly layers: readonly Layer[];
      /** m2 */
      readonly area: number;
      /** m; with it the leaves are as stiff as panels of this size, without it they are limp masses. */
      readonly size?: PanelSize;
      /** `defaultPanelEdges` when absent. */
      readonly edges?: Edges;
    }
  /**
   * Round holes: `area` in m2 of all of them together, `count` of them (one when absent), `depth` through the wall in m.
   * `attenuation`, dB, is what a lining or a silencer takes off the flow that the pressure outside drives; 0 when absent.
   */
  | {
      readonly kind: 'leak';
      readonly area: number;
      readonly depth: number;
      readonly count?: number;
      readonly attenuation?: number;
    }
  /** A slit: `length`, clear width `gap` and `depth` through the wall, m; in the middle of a wall when `position` is absent. */
  | {
      readonly kind: 'slit';
      readonly length: number;
      readonly gap: number;
      readonly depth: number;
      readonly position?: 'mid' | 'edge';
    };

/** An enclosure small against the wavelength: its air and the parts of its skin. */
export type SmallEnclosure = {
  /** m3 of air inside */
  readonly volume: number;
  readonly elements: readonly EnclosureElement[];
  readonly air: Air;
  /** Hz */
  readonly hz: readonly number[];
  /** 0..1, share of the volume that fibre keeps at one temperature; `defaultIsothermalShare` when absent. */
  readonly isothermalShare?: number;
  /** Whether flows of opposite phase may cancel; `defaultCancellation` when absent. */
  readonly cancellation?: Cancellation;
  /**
   * Free outer surface, m2, and what stands round the box; with it the air outside loads the walls, see
   * `boxRadiationImpedance`. Without it that load is left out.
   */
  readonly outside?: { readonly freeSurface: number; readonly surrounding: Surrounding };
};

/** `full`: the flows add with their phases. `none`: those of opposite phase add by their squares. */
export type Cancellation = 'full' | 'none';

/** Screwed and sealed panels are held between hinged and clamped; the geometric mean of the two resonances. */
export const defaultPanelEdges: Edges = 'between';
/** Without knowledge of linings the air inside is taken as adiabatic. */
export const defaultIsothermalShare = 0;
/** The model as it is, for one pressure all over the outside. */
export const defaultCancellation: Cancellation = 'full';

/**
 * Level outside minus level inside of a box small against the wavelength, dB per frequency.
 *
 * Model: one pressure p_o all over the outside, one pressure p_i inside. Every wall is the two-port [A B; C D] of its
 * layers at normal incidence, so v_in = (p_o - A p_i)/B; holes and slits likewise. What flows in compresses the air:
 * Sum S v_in = j omega V/(rho c^2) p_i (1 + s (gamma - 1)) with s the isothermal share. Hence
 * p_o/p_i = (j omega V/(rho c^2) (1 + s (gamma - 1)) + Sum S A/B) / Sum S/B.
 * With `cancellation: 'none'` what the outside drives in, |Sum q|^2, is taken as the sum of four squares: of all parts of q
 * in step with the pressure, against it, a quarter turn before and a quarter turn behind. It equals |Sum q|^2 where all
 * flows are alike and is never below it. Panels above and below their first resonance, and the air in a duct, move in
 * opposite phase, and how well they cancel depends on
 * pressures outside that are never quite equal. A leak's `attenuation` takes 10^(-a/20) off its q; what flows out again
 * is left as it is. At an edge the second surface mirrors the slit: its mouths are those of twice the width, and the
 * square of the pressure that drives it is doubled.
 * Leaves of a wall of known size are panels by `panelVolumeImpedance`; round holes and slits are plugs of air with the
 * mass and radiation of both mouths and with friction (`narrowGapMedium`; a round hole as a slit as wide as its radius,
 * exact while the boundary layer is thin and half too much in holes below 1 mm).
 * Units: volume m3, areas m2, hz in Hz.
 * With `outside` the difference is that to the pressure which the same outside field would have on rigid walls, and the air
 * that the walls carry and the sound that they radiate are counted; openings count their own mouths besides. Without it
 * about 1 kg/m2 is left out, which matters for walls below 10 kg/m2 and for the depth of the breathing resonance.
 * Source: derived; the close-fitting enclosure of the handbooks is the case of a single limp wall.
 * Valid below about half the first mode of the inside (`smallEnclosureLimit`), which this function does not know; above it
 * the pressure inside is not uniform and the result is meaningless. Positive means quieter inside; at the resonances of
 * the box it is negative.
 * Errors: ArgumentError for a quantity that can't be, a word that is not known, or an enclosure without elements.
 */
export function smallEnclosureLevelDifference({
  volume,
  elements,
  air,
  hz,
  isothermalShare = defaultIsothermalShare,
  cancellation = defaultCancellation,
  outside,
}: SmallEnclosure): LevelDifference {
  requireNumber('volume of the enclosure', volume, { above: 0, unit: 'cubic metres' });
  requireNumber('isothermal share', isothermalShare, { atLeast: 0, atMost: 1 });
  requireOneOf('cancellation', cancellation, ['full', 'none']);
  if (elements.length === 0)
    throw new ArgumentError('number of elements', 0, '1 or more, as sound gets in through them');
  elements.forEach(checkElement);
  for (const frequency of hz) requireNumber('frequency', frequency, { above: 0, unit: 'Hz' });
  const prepared = elements.map((element) => ({
    element,
    wall: element.kind === 'wall' ? wallParts(element, air) : [],
  }));
  const compliance = (volume / (air.density * air.soundSpeed ** 2)) * (1 + isothermalShare * (heatRatio(air) - 1));
  const differences: readonly number[] = hz.map((frequency) => {
    let driven = complex(0);
    const parts = [0, 0, 0, 0];
    let loading = complex(0, 2 * Math.PI * frequency * compliance);
    for (const { element, wall } of prepared) {
      const { area, a, b } = elementTwoPort(element, wall, frequency, air);
      const drive = driveOf(element);
      if (area === 0) continue;
      // Nothing in the way: the pressure outside is the pressure inside.
      if (squaredSize(b) === 0) return 0;
      const flow = divide(complex(area * drive), b);
      driven = add(driven, flow);
      parts[flow.re > 0 ? 0 : 1]! += flow.re;
      parts[flow.im > 0 ? 2 : 3]! += flow.im;
      loading = add(loading, divide(scale(a, area), b));
    }
    if (outside !== undefined) {
      // All that flows in compresses the air, and the air outside must bring it: p_o = p_blocked - Z_outside Q.
      const load = boxRadiationImpedance(outside.freeSurface, outside.surrounding, frequency, air);
      const taken = complex(0, 2 * Math.PI * frequency * compliance);
      loading = add(loading, multiply(driven, multiply(load, taken)));
    }
    const inFlow = cancellation === 'full' ? squaredSize(driven) : parts.reduce((sum, part) => sum + part * part, 0);
    return 10 * Math.log10(squaredSize(loading) / inFlow);
  });
  return differences as LevelDifference;
}

/** Pressure that drives one part over that which drives a plain wall. */
function driveOf(element: EnclosureElement): number {
  if (element.kind === 'leak') return 10 ** (-(element.attenuation ?? 0) / 20);
  return element.kind === 'slit' && element.position === 'edge' ? Math.SQRT2 : 1;
}

/** Area and the elements A and B of the two-port of one part of the shell. */
function elementTwoPort(
  element: EnclosureElement,
  wall: readonly WallPart[],
  hz: number,
  air: Air,
): { area: number; a: Complex; b: Complex } {
  if (element.kind === 'wall') return { area: element.area, ...wallTwoPort(wall, hz, air) };
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  if (element.kind === 'slit') {
    const { gap, length, depth, position = 'mid' } = element;
    if (gap * length === 0) return { area: 0, a: complex(1), b: complex(0) };
    const mouth = slitMouthImpedance(k * gap * (position === 'edge' ? 2 : 1), air);
    const { a, b } = throughMouths(mouth, narrowGapMedium(gap, hz, air), depth);
    return { area: gap * length, a, b };
  }
  const { area, depth, count = 1 } = element;
  if (area === 0) return { area: 0, a: complex(1), b: complex(0) };
  const radius = Math.sqrt(area / count / Math.PI);
  const mouth = scale(pistonImpedance(k * radius), air.impedance);
  // A slit as wide as the radius has the same rim for its area, and so the same friction while the boundary layer is thin.
  return { area, ...throughMouths(mouth, narrowGapMedium(radius, hz, air), depth) };
}

/** A channel with the mass and radiation of a mouth in series at both ends. */
function throughMouths(
  mouth: Complex,
  medium: { readonly characteristicImpedance: Complex; readonly wavenumber: Complex },
  depth: number,
): { a: Complex; b: Complex } {
  const { a, b, c, d } = channelMatrix(medium, depth);
  const throughFirst = add(a, multiply(mouth, c));
  return { a: throughFirst, b: add(add(b, multiply(mouth, d)), multiply(throughFirst, mouth)) };
}

/** A leaf of a wall as a panel, or a layer as it is. */
type WallPart = { readonly layer: Layer } | { readonly impedance: (hz: number) => Complex };

/** What does not depend on the frequency. */
function wallParts(
  { layers, size, edges = defaultPanelEdges }: EnclosureElement & { kind: 'wall' },
  air: Air,
): WallPart[] {
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

function wallTwoPort(parts: readonly WallPart[], hz: number, air: Air): { a: Complex; b: Complex } {
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

function checkElement(element: EnclosureElement): void {
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
