import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';

/** `help above 14 Hz`; undefined without springs. */
export function mountsLabel({ noise }: BoothResult): string | undefined {
  return noise.mounts === null ? undefined : `help above ${formatNumber(noise.mounts.gainsAboveHz)} Hz`;
}
