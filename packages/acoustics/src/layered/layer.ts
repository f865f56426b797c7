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
 * A rigid stud that ties two leaves along parallel lines. `between` holds the indices of one plate or limp sheet of each
 * leaf, outside first.
 */
export type LineConnection = {
  readonly between: readonly [number, number];
  /** m, centre to centre */
  readonly spacing: number;
  /** m, width of the face of the stud; used only where a leaf has no stiffness. */
  readonly width?: number;
};

/** Layers from outside to inside and the studs between them. */
export type Wall = { readonly layers: readonly Layer[]; readonly connections: readonly LineConnection[] };

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
 * Errors: RangeError that names the layer by its place from outside, what was found and what was expected.
 */
export function checkLayers(layers: readonly Layer[]): void {
  layers.forEach((layer, index) => {
    try {
      checkLayer(layer);
    } catch (error) {
      if (error instanceof RangeError) throw new RangeError(`layer ${index + 1}: ${error.message}`);
      throw error;
    }
  });
}

function checkLayer(layer: Layer): void {
  switch (layer.kind) {
    case 'plate':
      checkPlate(layer);
      return;
    case 'limp-sheet':
      expectNumber('surface mass', layer.surfaceMass, 'kg/m2', layer.surfaceMass >= 0);
      return;
    case 'air-gap':
      expectNumber('thickness', layer.thickness, 'metres', layer.thickness >= 0);
      return;
    case 'porous':
      expectNumber('thickness', layer.thickness, 'metres', layer.thickness >= 0);
      expectNumber('flow resistivity', layer.flowResistivity, 'Pa s/m2', layer.flowResistivity >= 0);
      if (layer.density !== undefined) expectNumber('density', layer.density, 'kg/m3', layer.density >= 0);
      return;
    case 'screen':
      expectNumber('flow resistance', layer.flowResistance, 'Pa s/m', layer.flowResistance >= 0);
      if (layer.surfaceMass !== undefined) {
        expectNumber('surface mass', layer.surfaceMass, 'kg/m2', layer.surfaceMass >= 0);
      }
  }
}

function expectNumber(name: string, value: number, unit: string, right: boolean): void {
  if (!right || !Number.isFinite(value)) {
    throw new RangeError(`${name} is ${value}, expected a number of ${unit} of 0 or more`);
  }
}
