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
    const margin = condensationMargin(air, site.coldSurface.value);
    if (margin >= moistureMargin) return [];
    return [
      caution('moisture', site.coldSurface.range, {
        hazard: margin < 0 ? 'Water condenses on the cold surface' : 'The cold surface is near the dew point',
        number: `dew point ${decimals(dewPoint(air), 1)} degC of the air of the room, surface ${decimals(site.coldSurface.value, 1)} degC`,
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

/** A surface less than this above the dew point of the room is worth a word: people add their own moisture, K. Our own. */
export const moistureMargin = 3;
