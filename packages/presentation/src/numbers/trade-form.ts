import type { Sourced } from '@boothwright/language';
import { formatFigures } from './format-number.js';
import { isImperial } from './shown.js';
import { imperialPer } from './trade-units.js';

/** SI dimension of a figure and the unit in which the trade writes it. */
const tradeUnits = {
  length: { factor: 1e3, unit: 'mm' },
  'surface-mass': { factor: 1, unit: 'kg/m²' },
  density: { factor: 1, unit: 'kg/m³' },
  'stud-stiffness': { factor: 1e-6, unit: 'MPa' },
  modulus: { factor: 1e-9, unit: 'GPa' },
  resistivity: { factor: 1e-3, unit: 'kPa·s/m²' },
  'flow-resistance': { factor: 1, unit: 'Pa·s/m' },
  flow: { factor: 1e3, unit: 'L/s' },
  mass: { factor: 1, unit: 'kg' },
  time: { factor: 1, unit: 's' },
  ratio: { factor: 1, unit: '' },
} as const;

/** Moduli, resistivities and flow resistances are quoted in SI everywhere. */
const imperialUnits: Partial<Record<TradeDimension, { readonly factor: number; readonly unit: string }>> = {
  length: { factor: imperialPer.inches, unit: 'in' },
  'surface-mass': { factor: imperialPer.poundsPerSquareFoot, unit: 'lb/ft²' },
  density: { factor: imperialPer.poundsPerCubicFoot, unit: 'lb/ft³' },
  flow: { factor: imperialPer.cfm, unit: 'cfm' },
  mass: { factor: imperialPer.pounds, unit: 'lb' },
};

export type TradeDimension = keyof typeof tradeUnits;

/** An SI value in the unit the trade uses, with three figures and its tolerance: `12 kPa·s/m² ± 2.4`. */
export function tradeForm(sourced: Sourced<number>, dimension: TradeDimension): string {
  const { factor, unit } = (isImperial() ? imperialUnits[dimension] : undefined) ?? tradeUnits[dimension];
  const value = `${formatFigures(sourced.value * factor)} ${unit}`.trim();
  return sourced.tolerance === undefined ? value : `${value} ± ${formatFigures(sourced.tolerance * factor, 2)}`;
}
