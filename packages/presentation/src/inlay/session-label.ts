import type { AirResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `980 ppm and 3.2 K warmer at the end, fan high`; of a session in takes the carbon dioxide at the end of the last one. */
export function sessionLabel(air: AirResult): string {
  if (air.takes !== null) {
    return `${formatQuantity(air.takes.lastPeakPpm, 'ppm')} at the end of the last take, fan ${air.takes.fanInTake}`;
  }
  const curve = air.judged === 'off' ? air.fanOff : (air.fanOn ?? air.fanOff);
  const rise = air.heat?.bySetting.find(({ setting }) => setting === curve.setting)?.endRiseK;
  const warmer = rise === undefined ? '' : ` and ${formatQuantity(rise, 'K')} warmer`;
  return `${formatQuantity(curve.endPpm, 'ppm')}${warmer} at the end, fan ${curve.setting}`;
}
