import { requireNumber } from '../errors/require-number.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/** Octave constants of a forward-curved fan, with the 2 dB of its blades at 500 Hz; source as in `fanSoundPower`. */
export const forwardCurvedFanLevels: readonly number[] = [53, 53, 43, 38, 36, 31, 26, 21];

/** What a fan's casing keeps in, dB by octave. Source: Long 2014, Table 13.8 (as transcribed). */
export const fanCasingLoss: readonly number[] = [0, 0, 5, 10, 15, 20, 22, 25];

const cubicMetresPerSecondPerCfm = 0.3048 ** 3 / 60;
const pascalPerInchOfWater = 249.089;

/**
 * Sound power of a fan by octave, dB re 1 pW.
 *
 * Equation: Lw = K + 10 lg(Q/cfm) + 10 lg(P/in w.g.) + C, K by octave with the blade increment in its octave, C from 0 dB
 * at 90 % of the peak efficiency and above to 16 dB below 50 %.
 * Units: flow m3/s, pressure Pa, efficiency as a share of the peak, 0 to 1; result dB in the 8 octaves 63 Hz to 8 kHz.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, equation 13.1 and Tables 13.5 to 13.7 (as transcribed); an
 * older form of the same rule has 20 lg P (from memory).
 * Valid: a first estimate where the maker gives nothing; the book's own sheet is 1 to 13 dB lower.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function fanSoundPower(
  { flow, pressure, efficiency }: { readonly flow: number; readonly pressure: number; readonly efficiency: number },
  levels: readonly number[],
): number[] {
  requireNumber('airflow', flow, { above: 0, unit: 'cubic metres per second' });
  requireNumber('fan pressure', pressure, { above: 0, unit: 'pascals' });
  requireNumber('fan efficiency', efficiency, { above: 0, atMost: 1 });
  requireDuctOctaves('fan constant', levels);
  const steps = [0.9, 0.85, 0.75, 0.65, 0.55, 0.5];
  const step = steps.findIndex((limit) => efficiency >= limit);
  const correction = step < 0 ? 16 : 3 * step;
  const duty =
    10 * Math.log10(flow / cubicMetresPerSecondPerCfm) + 10 * Math.log10(pressure / pascalPerInchOfWater) + correction;
  return levels.map((level) => level + duty);
}
