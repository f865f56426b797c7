import { condensationMargin, dewPoint } from '@boothwright/acoustics';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Below this a room counts as cold, degC. Evidence: common practice for heated rooms. */
export const coldRoom = 15;

/** Where surfaces are cold, air that people have breathed leaves its water on them. */
export function moisture({ spec: { site }, booths, air }: JudgedContext): Caution[] {
  if (site === undefined || booths.length === 0) return [];
  const why =
    'Breath adds some tens of grams of water an hour, and a sealed box keeps it. Where it meets a surface below the dew point it condenses; mould grows before that, where the air next to a surface stays above 80 % for days (common practice). A tight booth against a cold outer wall also keeps that wall cold.';
  const ask =
    'Cure the damp of a basement, garage or shed first, leave a gap that air can pass behind the booth, watch a hygrometer inside, and ask a building physicist before closing a cold wall with a vapour layer.';
  if (site.coldSurface !== undefined) {
    const surface = site.coldSurface.value;
    const inside = dampest(booths);
    const margin = Math.min(condensationMargin(air, surface), inside === null ? 99 : surface - inside.dewPoint);
    if (margin >= moistureMargin) return [];
    const own =
      inside === null
        ? ''
        : `, ${decimals(inside.dewPoint, 1)} degC inside ${inside.booth} at the end of the session with the fan ${inside.setting}`;
    return [
      caution('moisture', site.coldSurface.range, {
        hazard: margin < 0 ? 'Water condenses on the cold surface' : 'The cold surface is near the dew point',
        number: `dew point ${decimals(dewPoint(air), 1)} degC of the air of the room${own}; surface ${decimals(surface, 1)} degC`,
        why,
        ask,
      }),
    ];
  }
  if (site.temperature.value >= coldRoom) return [];
  return [
    caution('moisture', site.temperature.range, {
      hazard: 'A cold room: damp inside the booth',
      number: `${decimals(site.temperature.value, 0)} degC; \`cold-surface\` is not stated`,
      why,
      ask,
    }),
  ];
}

/** A surface less than this above the dew point of the room or of the booth is worth a word, K. Our own. */
export const moistureMargin = 3;

/** The booth whose air ends with the highest dew point, at the setting at which it is used; null where nobody breathes in one. */
function dampest(booths: JudgedContext['booths']) {
  const found = booths.flatMap(({ booth, result: { air } }) => {
    if (air === null || air.moisture === null) return [];
    const setting = air.fanOn === null || air.takes?.fanInTake === 'off' ? 'off' : air.judged;
    const at = air.moisture.bySetting.find((each) => each.setting === setting);
    return at === undefined ? [] : [{ booth: booth.name, setting, dewPoint: at.endDewPointC }];
  });
  return found.toSorted((a, b) => b.dewPoint - a.dewPoint)[0] ?? null;
}
