import { formatFigures, formatNumber } from './format-number.js';
import { lengthText } from './length-text.js';
import { isImperial } from './shown.js';

const metresPerInch = 0.0254;
const metresPerFoot = 0.3048;
const kgPerPound = 0.45359237;
const newtonsPerPoundForce = 4.4482216152605;
const pascalsPerInchOfWater = 249.08891;

/** One of a metric unit in the one that stands for it: by definition from the inch and the pound. */
export const imperialPer = {
  pounds: 1 / kgPerPound,
  feet: 1 / metresPerFoot,
  inches: 1 / metresPerInch,
  squareFeet: 1 / metresPerFoot ** 2,
  cubicFeet: 1 / metresPerFoot ** 3,
  poundsPerSquareFoot: metresPerFoot ** 2 / kgPerPound,
  poundsPerCubicFoot: metresPerFoot ** 3 / kgPerPound,
  /** Of force, for a load on a floor in pascals. */
  psf: metresPerFoot ** 2 / newtonsPerPoundForce,
  cfm: 60 / metresPerFoot ** 3,
  feetPerMinute: 60 / metresPerFoot,
  inchesOfWater: 1 / pascalsPerInchOfWater,
  poundsForcePerInch: metresPerInch / newtonsPerPoundForce,
  poundsForcePerFoot: metresPerFoot / newtonsPerPoundForce,
  poundsForce: 1 / newtonsPerPoundForce,
} as const;

/** A thickness or a depth: `12.5 mm`; in inches `0.492″` below an inch, where a sixteenth is too coarse, else `5 3/16″`. */
export function thicknessText(metres: number, figures = 3): string {
  if (!isImperial()) return `${formatFigures(metres * 1000, figures)} mm`;
  if (Math.abs(metres) < metresPerInch) return `${formatFigures(metres / metresPerInch, figures)}″`;
  return lengthText(metres, 'imperial');
}

/** A length in a room: `2.45 m`, `8′ 0 7/16″`. */
export function roomLengthText(metres: number, decimals = 2): string {
  return isImperial() ? lengthText(metres, 'imperial') : `${formatNumber(metres, decimals)} m`;
}

/** Whole millimetres, or what is left in inches. */
export function millimetresText(metres: number): string {
  return isImperial() ? lengthText(metres, 'imperial') : `${Math.round(metres * 1000)} mm`;
}

/** The same, never told larger than it is: room to pass through. */
export function roomLeftText(metres: number): string {
  if (!isImperial()) return `${Math.floor(metres * 1000 + 1e-6)} mm`;
  const sixteenth = metresPerInch / 16;
  return lengthText(Math.floor(metres / sixteenth + 1e-6) * sixteenth, 'imperial');
}

/** What is missing for something to pass, never told smaller than it is. */
export function missingText(metres: number): string {
  if (!isImperial()) return `${Math.ceil(metres * 1000 - 1e-6)} mm`;
  const sixteenth = metresPerInch / 16;
  return lengthText(Math.ceil(metres / sixteenth - 1e-6) * sixteenth, 'imperial');
}

/** `2.4 m²`, and `120 cm²` where that is small. */
export function areaText(squareMetres: number): string {
  if (isImperial()) {
    return squareMetres < 0.1
      ? `${formatFigures(squareMetres / metresPerInch ** 2)} in²`
      : `${formatFigures(squareMetres * imperialPer.squareFeet)} ft²`;
  }
  return squareMetres < 0.1 ? `${formatFigures(squareMetres * 1e4)} cm²` : `${formatFigures(squareMetres)} m²`;
}

export function volumeText(cubicMetres: number): string {
  return isImperial()
    ? `${formatFigures(cubicMetres * imperialPer.cubicFeet)} ft³`
    : `${formatFigures(cubicMetres)} m³`;
}

/** `24.3 kg/m²`, `4.98 lb/ft²`. */
export function surfaceMassText(kgPerM2: number): string {
  return isImperial()
    ? `${formatFigures(kgPerM2 * imperialPer.poundsPerSquareFoot)} lb/ft²`
    : `${formatFigures(kgPerM2)} kg/m²`;
}

/** `12.0 L/s`, `25.4 cfm`. */
export function airFlowText(m3PerS: number): string {
  return isImperial() ? `${formatNumber(m3PerS * imperialPer.cfm, 1)} cfm` : `${formatNumber(m3PerS * 1000, 1)} L/s`;
}

/** `0.98 m/s`, `190 ft/min`. */
export function airSpeedText(mPerS: number): string {
  return isImperial()
    ? `${formatFigures(mPerS * imperialPer.feetPerMinute, 2)} ft/min`
    : `${formatFigures(mPerS, 2)} m/s`;
}

/** A temperature, on a thermometer. */
export function temperatureText(celsius: number): string {
  return isImperial() ? `${formatNumber(celsius * 1.8 + 32, 1)} °F` : `${formatNumber(celsius, 1)} °C`;
}

/** By how much something is warmer: without the offset of the scale. */
export function temperatureDifferenceText(kelvin: number): string {
  return isImperial() ? `${formatNumber(kelvin * 1.8, 1)} °F` : `${formatNumber(kelvin, 1)} K`;
}

/** A price for an area; the currency stays the one of the text. */
export function pricePerAreaText(amount: number, currency: string): string {
  return isImperial()
    ? `${formatNumber(amount / imperialPer.squareFeet, 2)} ${currency}/ft²`
    : `${formatNumber(amount, 2)} ${currency}/m²`;
}

/** Of a spring: `120 N/mm`, `685 lbf/in`. */
export function springText(nPerM: number): string {
  return isImperial()
    ? `${formatFigures(nPerM * imperialPer.poundsForcePerInch)} lbf/in`
    : `${formatFigures(nPerM / 1000)} N/mm`;
}

export function forceText(newtons: number): string {
  return isImperial()
    ? `${formatNumber(newtons * imperialPer.poundsForce)} lbf`
    : `${formatNumber(newtons / 1000, 2)} kN`;
}

/** Something bought by area or by length; pieces, which have no unit, as `pieces` tells them. */
export function stockText(amount: number, unit: string, pieces: string): string {
  if (unit === 'm2') {
    return isImperial() ? `${formatNumber(amount * imperialPer.squareFeet)} ft²` : `${formatNumber(amount, 1)} m²`;
  }
  if (unit === 'm')
    return isImperial() ? `${formatNumber(amount * imperialPer.feet)} ft` : `${formatNumber(amount, 1)} m`;
  return pieces;
}

/** The panel for which a rating holds: `4 m × 2.5 m`. */
export function panelSizeText({ widthM, heightM }: { readonly widthM: number; readonly heightM: number }): string {
  return isImperial()
    ? `${lengthText(widthM, 'imperial')} × ${lengthText(heightM, 'imperial')}`
    : `${formatFigures(widthM)} m × ${formatFigures(heightM)} m`;
}
