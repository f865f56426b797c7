import type { Air } from '@boothwright/acoustics';
import type { Booth, Vent } from '@boothwright/language';
import { boothFlow } from '../air/booth-flow.js';
import type { VentDirection } from '../air/vent-resistance.js';
import type { Memo } from '../memo/memo.js';
import type { FanSettingName } from '../result/noise-result.js';

/** m3/s through every duct at a setting of the fans; empty where nothing is known to pass. */
export function ductFlows(
  booth: Booth,
  setting: FanSettingName,
  air: Air,
  memo: Memo,
): readonly { readonly vent: Vent; readonly flow: number; readonly direction: VentDirection }[] {
  return setting === 'off' ? [] : boothFlow(booth, setting, air, memo).byVent;
}
