import type { AirResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `980 ppm at the end, fan on`. */
export function sessionLabel(air: AirResult): string {
  const curve = air.fanOn ?? air.fanOff;
  return `${formatQuantity(curve.endPpm, 'ppm')} at the end, fan ${curve.fan}`;
}
