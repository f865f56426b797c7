import type { Measured } from './measure.js';

export interface Aim {
  readonly what: string;
  readonly measured: number | undefined;
  readonly unit: string;
  readonly most: number;
}

/** The value below which a share of a list lies; undefined of an empty list. */
export function quantile(list: readonly number[], share: number): number | undefined {
  const sorted = list.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
}

export const median = (list: readonly number[]): number | undefined => quantile(list, 0.5);

/** What is aimed at beside what was measured; `bundle` is the size in bytes of the built server without the script of its thread. */
export function aims(ours: Measured, typeScript: Measured, ofTenThousand: Measured, bundle: number): readonly Aim[] {
  const ms = (what: string, measured: number | undefined, most: number): Aim => ({ what, measured, unit: 'ms', most });
  return [
    ms('keystroke to diagnostics, 1,000 lines, median', median(ours.diagnostics), 15),
    ms('keystroke to diagnostics, 1,000 lines, p95', quantile(ours.diagnostics, 0.95), 50),
    ms(
      'keystroke to diagnostics, 1,000 lines, median, as TypeScript',
      median(ours.diagnostics),
      median(typeScript.diagnostics) ?? Number.NaN,
    ),
    ms('keystroke to new numbers, 1,000 lines, median', median(ours.numbers), 50),
    ms('hover, 1,000 lines, median', median(ours.hover), 5),
    ms('completion, 1,000 lines, median', median(ours.completion), 5),
    ms('keystroke to diagnostics, 10,000 lines, median', median(ofTenThousand.diagnostics), 100),
    ms('cold start, 1,000 lines, median', median(ours.coldStart), 350),
    { what: 'resident memory, 1,000 lines', measured: ours.memory, unit: 'MiB', most: 150 },
    { what: 'bundle of the server without its thread', measured: bundle / 1000, unit: 'kB', most: 700 },
  ];
}
