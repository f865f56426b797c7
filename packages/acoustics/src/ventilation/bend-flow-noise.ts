import { requireNumber } from '../errors/require-number.js';

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
  requireNumber('air speed', speed, { above: 0, unit: 'metres per second' });
  requireNumber('duct area', area, { above: 0, unit: 'square metres' });
  requireNumber('duct height', height, { above: 0, unit: 'metres' });
  requireNumber('air density', density, { above: 0 });
  const shape = 1 + 0.165 * ((hz * height) / speed) ** 2;
  return 60 * Math.log10(speed) + 10 * Math.log10(area * density) + 14 - 10 * Math.log10(shape);
}
