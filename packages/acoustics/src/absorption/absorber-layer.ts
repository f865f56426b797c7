import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { checkPlate, type Plate } from '../panels/plate.js';
import { checkPoreStructure, type PoreStructure } from '../porous/johnson-champoux-allard-porous.js';
import { touchingHoles } from './hole-interaction.js';

const layerKinds = ['porous', 'perforated', 'slotted', 'plate', 'limp-sheet', 'air-gap', 'screen'] as const;
const porousModels = ['miki', 'delany-bazley', 'johnson-champoux-allard'] as const;

/** How a porous layer is described. */
export type PorousModel =
  | {
      /** Regression for fibre; Miki's is the one that behaves at low frequencies. */
      readonly model: 'miki' | 'delany-bazley';
      /** Pa s/m2 */
      readonly flowResistivity: number;
    }
  | ({ readonly model: 'johnson-champoux-allard' } & PoreStructure);

/** A porous layer of an absorber. */
export type AbsorberPorous = PorousModel & {
  readonly kind: 'porous';
  /** m */
  readonly thickness: number;
  /** kg/m3; with it the frame is dragged along by the air, without it it stands still. */
  readonly density?: number;
  /** True when partitions across the layer keep sound from running along it. */
  readonly partitioned?: boolean;
};

/** Round holes in a square grid through a plate. */
export type PerforatedSheet = {
  readonly kind: 'perforated';
  /** m, of the sheet */
  readonly thickness: number;
  /** m */
  readonly holeDiameter: number;
  /** Open share of the area, 0..1. */
  readonly openArea: number;
  /** kg/m2; with it the sheet itself moves, without it it stands still. */
  readonly surfaceMass?: number;
};

/** Long parallel slots through a plate. */
export type SlottedSheet = {
  readonly kind: 'slotted';
  /** m, of the sheet */
  readonly thickness: number;
  /** m */
  readonly slotWidth: number;
  /** Open share of the area, 0..1. */
  readonly openArea: number;
  /** kg/m2; with it the sheet itself moves, without it it stands still. */
  readonly surfaceMass?: number;
};

/** One layer of a sound absorber; a layer of no thickness or no mass is as if it were not there. */
export type AbsorberLayer =
  | AbsorberPorous
  | PerforatedSheet
  | SlottedSheet
  | ({ readonly kind: 'plate' } & Plate)
  | { readonly kind: 'limp-sheet' /** kg/m2 */; readonly surfaceMass: number }
  | {
      readonly kind: 'air-gap';
      /** m */
      readonly thickness: number;
      /** True when partitions across the gap keep sound from running along it. */
      readonly partitioned?: boolean;
    }
  | {
      readonly kind: 'screen';
      /** Pa s/m */
      readonly flowResistance: number;
      /** kg/m2; without it the cloth does not move. */
      readonly surfaceMass?: number;
    };

/** What is behind the layer furthest from the room: a hard wall, a sheet that can only move as a whole, a wall, nothing. */
export type AbsorberBacking =
  | 'rigid'
  | 'open'
  | { readonly kind: 'limp' /** kg/m2 */; readonly surfaceMass: number }
  | {
      readonly kind: 'wall';
      /** From outside to inside. */
      readonly layers: readonly AbsorberLayer[];
    };

/**
 * Rejects layers that cannot exist.
 * Errors: ArgumentError that names the layer by its place from outside, what was found and what was expected.
 */
export function checkAbsorber(layers: readonly AbsorberLayer[]): void {
  layers.forEach((layer, index) => {
    try {
      checkAbsorberLayer(layer);
    } catch (error) {
      if (error instanceof ArgumentError) {
        throw new ArgumentError(`layer ${index + 1}: ${error.argument}`, error.value, error.allowed);
      }
      if (error instanceof RangeError) throw new RangeError(`layer ${index + 1}: ${error.message}`);
      throw error;
    }
  });
}

function checkAbsorberLayer(layer: AbsorberLayer): void {
  requireOneOf('kind', layer.kind, layerKinds);
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
    case 'screen':
      requireNumber('flow resistance', layer.flowResistance, { atLeast: 0, unit: 'Pa s/m' });
      requireOptionalMass(layer.surfaceMass);
      return;
    case 'porous':
      requireNumber('thickness', layer.thickness, { atLeast: 0, unit: 'metres' });
      requireOneOf('model', layer.model, porousModels);
      if (layer.density !== undefined) requireNumber('density', layer.density, { atLeast: 0, unit: 'kg/m3' });
      if (layer.model === 'johnson-champoux-allard') checkPoreStructure(layer);
      else requireNumber('flow resistivity', layer.flowResistivity, { atLeast: 0, unit: 'Pa s/m2' });
      return;
    case 'perforated':
      requireNumber('thickness', layer.thickness, { atLeast: 0, unit: 'metres' });
      requireNumber('hole diameter', layer.holeDiameter, { above: 0, unit: 'metres' });
      requireNumber('open area', layer.openArea, { above: 0, atMost: touchingHoles });
      requireOptionalMass(layer.surfaceMass);
      return;
    case 'slotted':
      requireNumber('thickness', layer.thickness, { atLeast: 0, unit: 'metres' });
      requireNumber('slot width', layer.slotWidth, { above: 0, unit: 'metres' });
      requireNumber('open area', layer.openArea, { above: 0, atMost: 1 });
      requireOptionalMass(layer.surfaceMass);
  }
}

function requireOptionalMass(surfaceMass: number | undefined): void {
  if (surfaceMass !== undefined) requireNumber('surface mass', surfaceMass, { atLeast: 0, unit: 'kg/m2' });
}
