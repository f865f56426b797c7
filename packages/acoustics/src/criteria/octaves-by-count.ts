const all = [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000];

/**
 * Nominal Hz of the octaves that a list of levels of a given length stands for: 7 from 63 Hz to 4 kHz, 8 from 63 Hz, 9
 * from 31.5 Hz and 10 from 16 Hz, all three to 8 kHz.
 */
export function octavesByCount(count: number): readonly number[] {
  return count === 7 ? all.slice(2, 9) : all.slice(10 - count);
}
