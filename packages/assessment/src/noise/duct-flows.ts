import type { Booth, Vent } from '@boothwright/language';
import { freshAir } from '../air/fresh-air.js';
import type { FanSettingName } from '../result/noise-result.js';
import { speedShare, ventsWithFan } from './fan-settings.js';

/** m3/s through every duct at a setting of the fans; empty where nothing is known to pass. */
export function ductFlows(booth: Booth, setting: FanSettingName): readonly { vent: Vent; flow: number }[] {
  const fans = ventsWithFan(booth);
  if (fans.length === 0 || setting === 'off') return [];
  const share = Math.max(...fans.map(({ fan }) => speedShare(fan, setting)));
  return freshAir(booth).byVent.map(({ vent, flow }) => ({ vent, flow: flow * share }));
}
