import { ArgumentError } from '../errors/argument-error.js';
import type { Band } from './bands.js';
import { bandEdges, midBandFrequency } from './mid-band-frequency.js';
import { nominalFrequency } from './nominal-frequency.js';

/**
 * Third-octave bands from one nominal frequency to another, both included.
 *
 * Units: Hz, nominal. Exact mid-band frequencies and edges as in `midBandFrequency` and `bandEdges`.
 * Source: IEC 61260-1:2014, base-ten system (as transcribed; the printed page was not opened).
 * Valid: 1 Hz to 40 kHz.
 * Errors: ArgumentError for a frequency that names no third-octave band, or a range that ends before it begins.
 */
export function thirdOctaveBandsBetween(lowestNominal: number, highestNominal: number): Band[] {
  return between(lowestNominal, highestNominal, 3);
}

/**
 * Octave bands from one nominal frequency to another, both included.
 *
 * Units, source and validity as in `thirdOctaveBandsBetween`.
 * Errors: ArgumentError for a frequency that names no octave band, or a range that ends before it begins.
 */
export function octaveBandsBetween(lowestNominal: number, highestNominal: number): Band[] {
  return between(lowestNominal, highestNominal, 1);
}

function between(lowest: number, highest: number, bandsPerOctave: 1 | 3): Band[] {
  const stride = 3 / bandsPerOctave;
  const from = thirdsFrom1kHz('lowest nominal frequency', lowest, stride);
  const to = thirdsFrom1kHz('highest nominal frequency', highest, stride);
  if (to < from) throw new ArgumentError('highest nominal frequency', highest, `a number of Hz of ${lowest} or more`);
  const bands: Band[] = [];
  for (let step = from; step <= to; step += stride) {
    const exact = midBandFrequency(step / stride, bandsPerOctave);
    bands.push({ nominal: nominalFrequency(step), exact, ...bandEdges(exact, bandsPerOctave) });
  }
  return bands;
}

function thirdsFrom1kHz(argument: string, nominal: number, stride: number): number {
  const step = Math.round(10 * Math.log10(nominal / 1000));
  // Of no frequency above zero, the step is not a number, and the comparison fails as it should.
  const named = step >= -30 && step <= 16 && step % stride === 0 && nominalFrequency(step) === nominal;
  if (!named) {
    const width = stride === 1 ? 'a third-octave' : 'an octave';
    throw new ArgumentError(argument, nominal, `the nominal frequency of ${width} band from 1 Hz to 40 kHz`);
  }
  return step;
}
