import { requireNumber } from '../errors/require-number.js';
import { advanceZones } from './advance-zones.js';
import type { AirZones } from './air-zones.js';
import { requireVapourLoad } from './require-vapour-load.js';
import { requireZoneList } from './require-zone-list.js';
import type { VapourLoad } from './vapour-load.js';
import { vapourRates } from './vapour-rates.js';

/**
 * Water vapour in the air of several zones after a time, kg/m3.
 *
 * Equation: V_j dv_j/dt = sum_i Q_ij (v_i - v_j) + Q_oj (v_o - v_j) + G_j, exact, as in `zoneConcentrations`.
 * Units: m3, m3/s, kg/m3, kg/s, s. Source: mass balance of well-mixed zones (common practice).
 * Valid: constant flows and loads; nothing is taken up by linings or condenses. Fabrics and wool do take up vapour and
 * slow the rise. The change of density with temperature, 3 % for 10 K, is left out.
 * Errors: ArgumentError for wrong lengths or a quantity that can't be.
 */
export function zoneVapour(zones: AirZones, load: VapourLoad, start: readonly number[], seconds: number): number[] {
  requireVapourLoad(zones, load);
  requireZoneList('start', 'water vapour at the start in', start, zones.volumes.length, { atLeast: 0 });
  requireNumber('time', seconds, { atLeast: 0, unit: 'seconds' });
  return advanceZones(vapourRates(zones, load), start, seconds);
}
