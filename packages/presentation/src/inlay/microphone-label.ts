import type { BoothResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `room tone -76 dBFS`; undefined where it is not known. */
export function microphoneLabel({ noise }: BoothResult): string | undefined {
  return noise.roomTone === null ? undefined : `room tone ${formatQuantity(noise.roomTone.dBFS.value, 'dBFS')}`;
}
