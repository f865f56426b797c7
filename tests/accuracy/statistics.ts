import { soundTransmissionClass } from '@boothwright/acoustics';

/** Mean of some numbers; NaN of none. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Root of the mean square; NaN of none. */
export function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((value) => value * value)));
}

/** Middle value; the mean of the two middle ones of an even number. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

const thirds = [125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000] as const;

/**
 * STC of a curve in octaves, read off at the third-octave centres by straight lines over lg f. It is no measured STC, but
 * prediction and measurement go through the same reading.
 */
export function classFromOctaves(centresHz: readonly number[], values: readonly number[]): number {
  const read = thirds.map((hz) => {
    let i = 0;
    while (i < centresHz.length - 2 && hz > centresHz[i + 1]!) i++;
    const share = Math.log(hz / centresHz[i]!) / Math.log(centresHz[i + 1]! / centresHz[i]!);
    return values[i]! + share * (values[i + 1]! - values[i]!);
  });
  return soundTransmissionClass(read).stc;
}
