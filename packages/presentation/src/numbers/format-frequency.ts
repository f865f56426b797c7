import { formatFigures, formatNumber } from './format-number.js';

/** `112 Hz`, `1.9 kHz`. */
export function formatFrequency(hz: number): string {
  return hz < 1000 ? `${formatNumber(hz, hz < 10 ? 1 : 0)} Hz` : `${formatFigures(hz / 1000, 2)} kHz`;
}

/** The short nominal name of a band: `63`, `125`, `1k`, `1.6k`, `31.5`. */
export function bandName(nominalHz: number): string {
  return nominalHz < 1000 ? String(nominalHz) : `${nominalHz / 1000}k`;
}
