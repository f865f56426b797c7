import type { BoothResult } from '@boothwright/assessment';
import { airFlowText, airSpeedText } from '../numbers/trade-units.js';

/** `12.0 L/s out, 0.98 m/s`: at full speed, where it is fastest; undefined where no air is moved. */
export function ventAirLabel(name: string, { ventilation }: BoothResult): string | undefined {
  const vent = ventilation.vents.find((each) => each.name === name);
  if (!vent?.flowHighM3PerS || vent.direction === null) return undefined;
  const speeds = vent.sections.flatMap(({ highMPerS }) => (highMPerS === null ? [] : [highMPerS]));
  const fastest = speeds.length === 0 ? '' : `, ${airSpeedText(Math.max(...speeds))}`;
  return `${airFlowText(vent.flowHighM3PerS)} ${vent.direction}${fastest}`;
}
