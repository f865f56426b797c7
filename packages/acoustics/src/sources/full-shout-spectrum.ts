import { scaleToReading } from '../levels/scale-to-reading.js';
import { speechSpectrum } from './speech-spectrum.js';

/**
 * A-weighted level of a man's shout at 1 m, dB. From memory: K. S. Pearsons, R. L. Bennett and S. Fidell, Speech Levels in
 * Various Noise Environments, EPA-600/1-77-025, 1977, men, as W. O. Olsen, Am. J. Audiol. 7, 1998, sums it up; the table was
 * not opened. Women and children: 82 dBA (from memory), which is what the standard spectrum has.
 */
export const fullShoutReading = 89;

/**
 * Spectrum of a full shout 1 m in front of the lips, dB in 21 thirds; unknown (null) below 160 Hz.
 *
 * Rule: the spectrum of the standard's shout scaled to `fullShoutReading`. Units: dB.
 * Source: shape ANSI S3.5-1997 Table 3 (as transcribed); level from memory, see `fullShoutReading`.
 * Valid: for what must not be underrated, as the voice that a neighbour hears. The standard's own shout is 7 dB lower.
 */
export function fullShoutSpectrum(): (number | null)[] {
  return scaleToReading(speechSpectrum('shout'), fullShoutReading, 'A');
}
