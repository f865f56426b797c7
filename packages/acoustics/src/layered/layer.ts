import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { Plate } from '../panels/plate.js';
import { checkPlate } from '../panels/plate.js';

/** One layer of a wall; lengths in m. A layer of no thickness or no mass is as if it were not there. */
export type Layer =
  | ({ readonly kind: 'plate' } & Plate)
  | { readonly kind: 'limp-sheet' /** kg/m2 */; readonly surfaceMass: number }
  | { readonly kind: 'air-gap'; readonly thickness: number }
  | {
      readonly kind: 'porous';
      readonly thickness: number;
      /** Pa s/m2 */
      readonly flowResistivity: number;
      /** kg/m3; with it the fibres move along, without it they stand still. */
      readonly density?: number;
    }
  | {
      readonly kind: 'screen';
      /** Pa s/m */
      readonly flowResistance: number;
      /** kg/m2; without it the cloth does not move. */
      readonly surfaceMass?: number;
    };

/**
 * A stud that ties two leaves along parallel lines. `between` holds the indices of one plate or limp sheet of each
 * leaf, outside first.
 */
export type LineConnection = {
  readonly between: readonly [number, number];
  /** m, centre to centre */
  readonly spacing: number;
  /** m, width of the face of the stud; used only where a leaf has no stiffness. */
  readonly width?: number;
  /** m2/N: how far one metre of stud yields to a force per metre between its two faces; rigid when absent. */
  readonly compliance?: number;
  /** m between the screws along a stud that yields: at a screw the sheet is held against the web, so that it is rigid there. */
  readonly screwSpacing?: number;
};

/** Studs that divide the cavity between two leaves into bays without tying the leaves: staggered or independent frames. */
export type SeparateFrame = {
  /** Indices of one plate or limp sheet of each leaf, outside first. */
  readonly between: readonly [number, number];
  /** m, centre to centre, of the studs of one leaf */
  readonly spacing: number;
};

/** Layers from outside to inside, the studs that tie them and those that only stand between them. */
export type Wall = {
  readonly layers: readonly Layer[];
  readonly connections: readonly LineConnection[];
  readonly separateFrames?: readonly SeparateFrame[];
};

/** m */
export type PanelSize = { readonly width: number; readonly height: number };

/**
 * How the directions of a diffuse field are summed: over all of them with the radiation of a panel of finite size, or
 * over an infinite panel up to a limiting angle.
 */
export type Field =
  | { readonly kind: 'finite'; readonly size: PanelSize }
  | { readonly kind: 'limited'; readonly maximumAngleDeg: number };

/** The common limit of field incidence, deg; a convention, not a property of rooms. */
export const fieldIncidenceAngleDeg = 78;

/**
 * Rejects layers that cannot exist.
 * Errors: ArgumentError that names the layer by its place from outside, what was found and what was expected; also for
 * what is no layer or of an unknown kind.
 */
export function checkLayers(layers: readonly Layer[]): void {
  if (!Array.isArray(layers)) throw new ArgumentError('layers of the wall', layers, 'a list of layers');
  for (let index = 0; index < layers.length; index++) {
    const layer: unknown = layers[index];
    if (typeof layer !== 'object' || layer === null) {
      throw new ArgumentError(`layer ${index + 1}`, layer, `a layer with kind ${layerKindWords}`);
    }
    try {
      checkLayer(layer as Layer);
    } catch (error) {
      if (!(error instanceof ArgumentError)) throw error;
      throw new ArgumentError(`layer ${index + 1}: ${error.argument}`, error.value, error.allowed);
    }
  }
}

const layerKindWords = 'plate, limp-sheet, air-gap, porous or screen';

function checkLayer(layer: Layer): void {
  switch (layer.kind) {
    case 'plate':
      checkPlate(layer);
      return;
    case 'limp-sheet':
      requireNumber('surface mass', layer.surfaceMass, { atLeast: 0, unit: 'kg/m2' });
      return;
    case 'air-gap':
      requireNumber('thickness', layer.thickness, { atLeast: 0, unit: 'metres' });
      return;
    case 'porous':
      requireNumber('thickness', layer.thickness, { atLeast: 0, unit: 'metres' });
      requireNumber('flow resistivity', layer.flowResistivity, { atLeast: 0, unit: 'Pa s/m2' });
      if (layer.density !== undefined) requireNumber('density', layer.density, { atLeast: 0, unit: 'kg/m3' });
      return;
    case 'screen':
      requireNumber('flow resistance', layer.flowResistance, { atLeast: 0, unit: 'Pa s/m' });
      if (layer.surfaceMass !== undefined) {
        requireNumber('surface mass', layer.surfaceMass, { atLeast: 0, unit: 'kg/m2' });
      }
      return;
    default:
      throw new ArgumentError('kind', (layer as { kind?: unknown }).kind, layerKindWords);
  }
}
