import { type Air, airProperties } from '@boothwright/acoustics';
import type { BoothSpec } from '@boothwright/language';

/** The air of a text without a `site`: 20 degC and 50 % relative humidity. Evidence: common practice. */
export const airWithoutSite = { temperature: 20, relativeHumidity: 0.5 } as const;

/** Air in and around the booth. */
export function siteAir(spec: BoothSpec): Air {
  const { site } = spec;
  return airProperties(
    site === undefined
      ? airWithoutSite
      : { temperature: site.temperature.value, relativeHumidity: site.humidity.value },
  );
}
