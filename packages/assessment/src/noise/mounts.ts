import { mountDeflection, mountFrequency, mountTransmissibility } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import type { MountsResult } from '../result/noise-result.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';

/** Loss factor of rubber in mounts. Evidence: from memory; 0.05 to 0.2 by compound. */
export const mountLossFactor = 0.1;

/** The bands in which footfall and machines are felt most, Hz. */
const feltFrom = 63;

/**
 * Natural frequency and static deflection of the mounts under the loaded booth; null without mounts or without a mass.
 * Units: kg, N/m, Hz, m. Source and validity: `mountFrequency`.
 */
export function mountsResult({ mounts }: Booth, loadedMass: number): MountsResult | null {
  if (mounts === undefined) return null;
  const count = mounts.count.value;
  const total = count * mounts.stiffness.value;
  if (!(total > 0) || !(loadedMass > 0)) return null;
  const naturalHz = mountFrequency(total, loadedMass);
  const deflectionM = mountDeflection(total, loadedMass);
  const gainsAboveHz = naturalHz * Math.SQRT2;
  const passed = mountTransmissibility(feltFrom, naturalHz, mountLossFactor);
  const atFelt =
    gainsAboveHz < feltFrom
      ? `at ${feltFrom} Hz they would pass on ${decimals(-passed, 0)} dB less than a rigid contact if the floor were rigid`
      : `that is above ${decimals(feltFrom / Math.SQRT2, 0)} Hz, so that at ${feltFrom} Hz they pass on ${passed > 0 ? `${decimals(passed, 0)} dB more` : 'hardly less'} than a rigid contact`;
  return {
    range: textRange(mounts.range),
    count,
    stiffnessNPerM: mounts.stiffness.value,
    loadedMassKg: loadedMass,
    deflectionM,
    naturalHz,
    gainsAboveHz,
    text: `${decimals(count, 0)} mounts of ${decimals(mounts.stiffness.value / 1000, 0)} N/mm under ${decimals(loadedMass, 0)} kg give by ${decimals(1000 * deflectionM, 1)} mm; the booth swings on them at ${decimals(naturalHz, 0)} Hz, and ${atFelt}. Rubber is stiffer in quick motion than under load, which puts the frequency up to 1.4 times higher, and a light timber floor is no rigid base: it gives itself, and the gain is smaller there or lost.`,
  };
}
