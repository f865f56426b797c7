import { formatNumber } from './format-number.js';

/** The units in which lengths are shown; the text itself may be written in either. */
export type DisplayUnits = 'metric' | 'imperial';

const sixteenthM = 0.0254 / 16;

/** `1339 mm`, tenths only where there are some; or `4′ 4 11/16″`, to the nearest sixteenth of an inch. */
export function lengthText(metres: number, units: DisplayUnits): string {
  const figure = lengthFigure(metres, units);
  return units === 'imperial' || !Number.isFinite(metres) ? figure : `${figure} mm`;
}

/** The same as a dimension line carries it, where the drawing states the unit: `1339`, `4′ 4 11/16″`. */
export function lengthFigure(metres: number, units: DisplayUnits): string {
  if (!Number.isFinite(metres)) return '–';
  return units === 'imperial' ? feetAndInches(metres) : formatNumber(metres * 1000, 1).replace(/\.0$/, '');
}

/** `6′ 0″`, `5 1/2″`, `7/16″`; what is not zero but below half a sixteenth is `< 1/16″`. */
function feetAndInches(metres: number): string {
  const sixteenths = Math.round(Math.abs(metres) / sixteenthM);
  if (sixteenths === 0) return Math.abs(metres) < 1e-9 ? '0″' : '< 1/16″';
  const feet = Math.floor(sixteenths / (12 * 16));
  const inches = Math.floor(sixteenths / 16) % 12;
  const fraction = fractionText(sixteenths % 16);
  const whole = inches > 0 || fraction === '' ? String(inches) : feet > 0 ? '0' : '';
  const inchText = `${[whole, fraction].filter(Boolean).join(' ')}″`;
  return `${metres < 0 ? '-' : ''}${feet > 0 ? `${feet}′ ` : ''}${inchText}`;
}

function fractionText(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let [top, bottom] = [sixteenths, 16];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}
