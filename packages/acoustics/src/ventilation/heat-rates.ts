import { airHeatCapacity } from '../air/air-heat-capacity.js';
import type { Air } from '../air/air-properties.js';
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
