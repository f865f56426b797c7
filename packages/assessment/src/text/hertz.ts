import { decimals } from './decimals.js';

/** A frequency for a sentence: `63 Hz`, `1.6 kHz`. */
export function hertz(hz: number): string {
  if (hz < 1000) return `${decimals(hz, hz < 20 ? 1 : 0)} Hz`;
  return `${Number((hz / 1000).toPrecision(3))} kHz`;
}
