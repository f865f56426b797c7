import { requireNumber } from '../errors/require-number.js';
import { exactDuctOctaves } from './duct-tables.js';

/**
 * Octave sound power of the air itself in a straight duct, dB re 1 pW.
 *
 * Equation: Lw = 7 + 50 lg U + 10 lg S - 2 - 26 lg(1.14 + 0.02 f/U).
 * Units: air speed U m/s, area S m2, octave frequency f Hz.
 * Source: VDI 2081-1 as D. A. Bies, C. H. Hansen and C. Q. Howard, Engineering Noise Control, 5th ed., 2017, equation
 * 8.251 (as transcribed). Valid: smooth straight duct. Errors: ArgumentError for a quantity that can't be.
 */
export function straightDuctFlowNoise(hz: number, speed: number, area: number): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('air speed', speed, { above: 0 });
  requireNumber('duct area', area, { above: 0 });
  return 5 + 50 * Math.log10(speed) + 10 * Math.log10(area) - 26 * Math.log10(1.14 + (0.02 * hz) / speed);
}

/**
 * Octave sound power of the air itself in a bend, dB re 1 pW.
 *
 * Equation: Lw = 30 lg U + 10 lg S + 10 lg rho + 117 - 10 lg(1 + 0.165 (f h/U)^2) + 30 lg U - 103.
 * Units: air speed U m/s, area S m2, height h m, density rho kg/m3, octave frequency f Hz.
 * Source: as in `straightDuctFlowNoise`, equation 8.254 (as transcribed). Errors: ArgumentError for a quantity that can't be.
 */
export function bendFlowNoise(
  hz: number,
  {
    speed,
    area,
    height,
    density,
  }: { readonly speed: number; readonly area: number; readonly height: number; readonly density: number },
): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('air speed', speed, { above: 0 });
  requireNumber('duct area', area, { above: 0 });
  requireNumber('duct height', height, { above: 0 });
  requireNumber('air density', density, { above: 0 });
  const shape = 1 + 0.165 * ((hz * height) / speed) ** 2;
  return 60 * Math.log10(speed) + 10 * Math.log10(area * density) + 14 - 10 * Math.log10(shape);
}

/** `straightDuctFlowNoise` in the 8 octaves 63 Hz to 8 kHz, at their exact centres; units and source as there. */
export function straightDuctFlowNoiseOctaves(speed: number, area: number): number[] {
  return exactDuctOctaves.map((hz) => straightDuctFlowNoise(hz, speed, area));
}
