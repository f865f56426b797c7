import type { Booth, Fan, Session, Vent } from '@boothwright/language';
import type { FanSettingName } from '../result/noise-result.js';

export type VentWithFan = Vent & { readonly fan: Fan };

export function ventsWithFan(booth: Booth): VentWithFan[] {
  return booth.vents.filter((vent): vent is VentWithFan => vent.fan !== undefined);
}

/** The settings at which a booth can be heard: without a fan there is nothing to switch. */
export function fanSettingsOf(booth: Booth): FanSettingName[] {
  return ventsWithFan(booth).length === 0 ? ['off'] : ['off', 'low', 'high'];
}

/** Speed of a fan at a setting as a share of full speed, 0..1. */
export function speedShare(fan: Fan, setting: FanSettingName): number {
  if (setting === 'off') return 0;
  return setting === 'high' ? 1 : fan.lowSpeed.value;
}

/**
 * The setting at which a session records: off where takes have the fan off. Without a session the fans run at full speed, which is the
 * cautious side.
 */
export function sessionSetting(booth: Booth, session: Session | undefined): FanSettingName {
  if (ventsWithFan(booth).length === 0 || session?.cycle?.fan.value === 'off') return 'off';
  return session?.fanSpeed.value ?? 'high';
}
