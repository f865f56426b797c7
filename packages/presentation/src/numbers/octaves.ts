import { octaveBands, octaveTransmissionLoss, thirdLevelsToOctaves } from '@boothwright/acoustics';
import type { ByBand } from '@boothwright/assessment';

export const octaveCentres: readonly number[] = octaveBands.map((band) => band.nominal);

/** Levels by octave; null where any of the three thirds is unknown. */
export function octaveLevels(thirds: ByBand): readonly (number | null)[] {
  return thirdLevelsToOctaves([...thirds]);
}

/** Transmission loss by octave: the mean transmitted energy of the three thirds. */
export function octaveLoss(thirds: readonly number[]): readonly number[] {
  return octaveTransmissionLoss([...thirds]);
}

/** The three thirds of every octave as rows: all lower thirds, all middle thirds, all upper thirds. */
export function thirdsUnderOctaves<T>(thirds: readonly T[]): readonly (readonly T[])[] {
  return [0, 1, 2].map((row) => thirds.filter((_, index) => index % 3 === row));
}

/** What third-octave bands hold at the octave centres: every middle third. */
export function atOctaveCentres<T>(thirds: readonly T[]): readonly T[] {
  return thirds.filter((_, index) => index % 3 === 1);
}
