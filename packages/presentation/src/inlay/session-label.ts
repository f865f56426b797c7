import type { AirResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `980 ppm at the end, fan high`; of a session in takes the end of the last one. */
export function sessionLabel(air: AirResult): string {
  if (air.takes !== null) {
    return `${formatQuantity(air.takes.lastPeakPpm, 'ppm')} at the end of the last take, fan ${air.takes.fanInTake}`;
  }
  const curve = air.judged === 'off' ? air.fanOff : (air.fanOn ?? air.fanOff);
  return `${formatQuantity(curve.endPpm, 'ppm')} at the end, fan ${curve.setting}`;
}
