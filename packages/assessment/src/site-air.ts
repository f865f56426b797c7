import { type Air, airProperties } from '@boothwright/acoustics';
import type { BoothSpec } from '@boothwright/language';
import { bounds } from './bounds/bounds.js';

/** The air of a text without a `site`: 20 degC and 50 % relative humidity. Evidence: common practice. */
export const airWithoutSite = { temperature: 20, relativeHumidity: 0.5 } as const;

/** Air in and around the booth. */
export function siteAir(spec: BoothSpec): Air {
  const { site } = spec;
  if (site === undefined) return airProperties(airWithoutSite);
  // A site with impossible figures has its own complaint; the rest of the text is still worth an answer.
  const temperature = clamped(site.temperature.value, bounds.temperature, airWithoutSite.temperature);
  const relativeHumidity = clamped(site.humidity.value, bounds.share, airWithoutSite.relativeHumidity);
  return airProperties({ temperature, relativeHumidity });
}

function clamped(
  value: number,
  { min, max }: { readonly min: number; readonly max: number },
  otherwise: number,
): number {
  return Number.isFinite(value) ? Math.min(Math.max(value, min), max) : otherwise;
}
