import { thirdOctaveBands } from '@boothwright/acoustics';

/** Nominal centres of the working grid, Hz: 21 third-octave bands from 50 Hz to 5 kHz. */
export const nominalHz: readonly number[] = thirdOctaveBands.map((band) => band.nominal);
/** Exact centres, at which single-frequency formulas are evaluated. */
export const exactHz: readonly number[] = thirdOctaveBands.map((band) => band.exact);
/** One value per band of the grid. */
export function perBand<T>(value: (index: number, hz: number) => T): T[] {
  return exactHz.map((hz, index) => value(index, hz));
}
/** Index of the band whose edges enclose `hz`; -1 below the grid, its length above it. */
export function bandIndexOf(hz: number): number {
  if (hz < (thirdOctaveBands[0]?.lower ?? 0)) return -1;
  const index = thirdOctaveBands.findIndex((band) => hz < band.upper);
  return index < 0 ? thirdOctaveBands.length : index;
}
