import { airHeatCapacity } from '../air/air-heat-capacity.js';
import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireAirZones } from './require-air-zones.js';
import { requireZoneList } from './require-zone-list.js';
import { requireZoneRows } from './require-zone-rows.js';
import type { HeatLoad, ThermalZones } from './thermal-zones.js';
import type { ZoneRates } from './zone-rates.js';

/** Rates of the balance of heat, temperatures counted from outside; equation and units as in `zoneTemperatures`. */
export function heatRates(zones: ThermalZones, { gains }: HeatLoad, air: Air): ZoneRates {
  const perFlow = airHeatCapacity(air);
  return {
    inflow: zones.heatCapacities.map((capacity, zone) =>
      zones.between.map((row, from) => (perFlow * row[zone]! + zones.conductances[from]![zone]!) / capacity),
    ),
    outside: zones.heatCapacities.map(
      (capacity, zone) => (perFlow * zones.fromOutside[zone]! + zones.toOutside[zone]!) / capacity,
    ),
    source: zones.heatCapacities.map((capacity, zone) => gains[zone]! / capacity),
  };
}

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
