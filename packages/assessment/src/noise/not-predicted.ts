import type { Booth, Site } from '@boothwright/language';
import type { FanSettingName, MountsResult } from '../result/noise-result.js';
import type { BoothResult } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { ventsWithFan } from './fan-settings.js';

type NotPredicted = BoothResult['noise']['notPredicted'][number];

/** What makes noise and is not predicted, each with what can be done about it. */
export function notPredicted(
  site: Site | undefined,
  booth: Booth,
  setting: FanSettingName,
  mounts: MountsResult | null,
): NotPredicted[] {
  return [...structureBorne(site, mounts), ...vibratingFans(booth, setting), ...machines(booth)];
}

function structureBorne(site: Site | undefined, mounts: MountsResult | null): NotPredicted[] {
  const pads = mounts === null ? 'stand the booth on soft pads' : mounts.text;
  return (site?.sources ?? []).flatMap((source) =>
    source.kind === 'impact'
      ? [
          {
            kind: 'structure' as const,
            name: source.name,
            range: textRange(source.range),
            why: `arrives through the floor and the structure, which is not predicted; record it at the place of the booth with the microphone on the floor, ${mounts === null ? `${pads}, ` : ''}keep it clear of walls, and measure again inside before you trust the quiet${mounts === null ? '' : `. Mounts: ${pads}`}`,
          },
        ]
      : [],
  );
}

function vibratingFans(booth: Booth, setting: FanSettingName): NotPredicted[] {
  if (setting === 'off') return [];
  return ventsWithFan(booth)
    .filter(({ fan }) => fan.place !== undefined && fan.place.value !== 'outside')
    .map(({ name, fan }) => ({
      kind: 'vibration' as const,
      name: `vibration of the fan of ${name}`,
      range: textRange(fan.range),
      why: 'a fan fixed to the booth shakes its walls, which is not predicted; hang it outside on soft hangers with a flexible piece of duct',
    }));
}

/** A computer whose sound power is not given is not silent. */
export function machinesUnknown(booth: Booth): Booth['equipment'] {
  return booth.equipment.filter(({ kind, soundPower }) => kind.value === 'computer' && soundPower === undefined);
}

function machines(booth: Booth): NotPredicted[] {
  return machinesUnknown(booth).map(({ name, nameRange }) => ({
    kind: 'unknown-power' as const,
    name,
    range: textRange(nameRange),
    why: 'its sound power is not given, so its noise inside is unknown; put it outside, or state `sound-power`',
  }));
}
