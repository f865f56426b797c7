import { thirdOctaveBands } from '../bands/bands.js';
import { ArgumentError } from '../errors/argument-error.js';

/**
 * Values measured in octaves on the 21 third-octave bands; null where no octave was measured.
 *
 * Equation: linear over lg f between octave centres; the outer third of the first and the last measured octave keeps the
 * value of that octave. Octaves outside the grid, 8 kHz, help between but are not returned.
 * Source: common practice. The centre third of each octave has the measured value, the others are a guess at what lies
 * between: a resonance narrower than an octave is lost.
 * Errors: ArgumentError for lists of different length, or centres that are not ascending octaves.
 *
 * @example
 * ```ts
 * import { absorptionInThirds } from '@boothwright/acoustics/database';
 *
 * const thirds = absorptionInThirds([250, 500, 1000], [0.2, 0.5, 0.8]);
 * // 160 Hz unknown, then 200 Hz to 630 Hz.
 * thirds.slice(5, 12); // [null, 0.2, 0.2, 0.3, 0.4, 0.5, 0.6]
 * ```
 */
export function absorptionInThirds(bandsHz: readonly number[], values: readonly number[]): (number | null)[] {
  if (bandsHz.length !== values.length) {
    throw new ArgumentError('number of values', values.length, `${bandsHz.length}, one for each band`);
  }
  const places = bandsHz.map((hz) => Math.log2(hz / 1000));
  const centres = places.map((place) => Math.round(place));
  centres.forEach((centre, i) => {
    const isOctave = Math.abs(places[i]! - centre) < 0.03;
    if (!isOctave || (i > 0 && centre !== centres[i - 1]! + 1)) {
      throw new ArgumentError(
        `band ${i + 1} of ${bandsHz.length}`,
        bandsHz[i],
        'the next octave centre in Hz, ascending',
      );
    }
  });
  const first = centres[0];
  const last = centres.at(-1);
  return thirdOctaveBands.map((_, index) => {
    if (first === undefined || last === undefined) return null;
    // On the base-ten grid the third with index 13 is 1 kHz and three thirds make an octave.
    const place = (index - 13) / 3;
    if (place < first - 0.4 || place > last + 0.4) return null;
    const held = Math.min(Math.max(place, first), last);
    const below = Math.min(Math.floor(held + 1e-9) - first, centres.length - 1);
    const above = Math.min(below + 1, centres.length - 1);
    const share = held - (first + below);
    return values[below]! + share * (values[above]! - values[below]!);
  });
}
