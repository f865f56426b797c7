import { requireNumber } from '../errors/require-number.js';

/**
 * Change of a fan's sound power when it turns at another speed, dB, the same in every band.
 *
 * Equation: 50 lg(n / n0). Units: `speedRatio` n/n0, above 0; result dB, negative for a slower fan.
 * Source: fan law for sound, printed in makers' and hobby literature alike (common practice; a page of fan laws read as
 * transcribed); handbooks give 40 to 60 lg n by kind of fan (from memory).
 * Valid: for the same fan on the same duct, from about half speed up. The blade tone moves down in frequency with the speed,
 * which a change alike in all bands does not show; the hum of a motor or of a dimmer need not follow.
 * Errors: ArgumentError for a ratio that isn't above zero.
 */
export function fanSpeedPowerChange(speedRatio: number): number {
  requireNumber('speed ratio of the fan', speedRatio, { above: 0 });
  return 50 * Math.log10(speedRatio);
}
