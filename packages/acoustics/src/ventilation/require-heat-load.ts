import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireAirZones } from './require-air-zones.js';
import { requireZoneList } from './require-zone-list.js';
import { requireZoneRows } from './require-zone-rows.js';
import type { HeatLoad, ThermalZones } from './thermal-zones.js';

/** Rejects zones and a load whose lists don't fit together or hold a quantity that can't be. */
export function requireHeatLoad(zones: ThermalZones, { outside, gains }: HeatLoad): void {
  requireAirZones(zones);
  const count = zones.volumes.length;
  requireZoneList('heatCapacities', 'heat capacity of', zones.heatCapacities, count, { above: 0 });
  requireZoneRows('conductances', 'heat conductance', zones.conductances, count);
  zones.conductances.forEach((row, zone) => {
    row.forEach((value, other) => {
      const back = zones.conductances[other]![zone]!;
      if (value !== back) {
        const words = `heat conductance from zone ${zone + 1} to zone ${other + 1}`;
        throw new ArgumentError(words, value, `${back}, the same as the other way`);
      }
    });
  });
  requireZoneList('toOutside', 'heat conductance to outside of', zones.toOutside, count, { atLeast: 0 });
  requireNumber('temperature outside', outside, { unit: 'degC' });
  requireZoneList('gains', 'heat given off in', gains, count, { unit: 'watts' });
}
