import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';

/** Well-mixed spaces that exchange air with each other and with outside. */
export type AirZones = {
  /** Air volume of each zone, m3. */
  readonly volumes: readonly number[];
  /** `between[i][j]`: airflow from zone i into zone j, m3/s. */
  readonly between: readonly (readonly number[])[];
  /** Airflow from outside into each zone, m3/s. The same balance leaves it, so nothing more need be said of it. */
  readonly fromOutside: readonly number[];
};

/** What is given off in each zone, and the air that is supplied. */
export type ZoneLoad = {
  /** Concentration outside, ppm. */
  readonly outside: number;
  /** Carbon dioxide given off in each zone, m3/s. */
  readonly generation: readonly number[];
};

/**
 * Carbon dioxide in several zones after a time, ppm.
 *
 * Equation: V_j dC_j/dt = sum_i Q_ij (C_i - C_j) + Q_oj (C_o - C_j) + 1e6 G_j, whose left side loses what flows in; the
 * step is exact, by the exponential of the system matrix, summed over positive terms alone and squared up.
 * Units: m3, m3/s, ppm, s. Source: mass balance of well-mixed zones (common practice); uniformisation of the exponential.
 * Valid: constant flows and people; for a schedule, call it span after span with the result of the last as the start.
 * Air that flows in flows out somewhere, so volumes stay. Errors: ArgumentError for wrong lengths or a quantity that
 * can't be.
 */
export function zoneConcentrations(
  zones: AirZones,
  load: ZoneLoad,
  start: readonly number[],
  seconds: number,
): number[] {
  requireZones(zones, load, start);
  requireNumber('time', seconds, { atLeast: 0 });
  const count = zones.volumes.length;
  // Coordinates: the zones, then a constant 1 that carries outside air and people.
  const size = count + 1;
  const rates = zones.volumes.map((volume, zone) => {
    const inflow = zones.between.map((row, from) => (from === zone ? 0 : row[zone]! / volume));
    return [
      ...inflow,
      (zones.fromOutside[zone]! * load.outside + 1e6 * load.generation[zone]!) / volume,
      inflow.reduce((sum, rate) => sum + rate, zones.fromOutside[zone]! / volume),
    ];
  });
  const fastest = Math.max(...rates.map((row) => row[size]!));
  const squarings = Math.max(0, Math.ceil(Math.log2(Math.max(1, fastest * seconds))));
  const step = seconds / 2 ** squarings;
  // exp(A step) = e^-x exp((A + fastest) step), whose terms hold no difference of large numbers. The constant row is zero
  // in A, so it keeps the value 1 whatever is added to it.
  const shifted = rates.map((row, zone) =>
    row.slice(0, size).map((rate, column) => step * (column === zone ? fastest - row[size]! : rate)),
  );
  shifted.push(Array.from({ length: size }, (_, column) => (column === count ? fastest * step : 0)));
  const identity: number[][] = shifted.map((row, i) => row.map((_, j) => (i === j ? 1 : 0)));
  let term = identity;
  let sum = identity;
  for (let order = 1; order <= 30; order++) {
    term = multiply(term, shifted).map((row) => row.map((value) => value / order));
    sum = sum.map((row, i) => row.map((value, j) => value + term[i]![j]!));
  }
  const decay = Math.exp(-fastest * step);
  let result = sum.map((row) => row.map((value) => value * decay));
  for (let squaring = 0; squaring < squarings; squaring++) result = multiply(result, result);
  const state = [...start, 1];
  return result.slice(0, count).map((row) => row.reduce((total, value, column) => total + value * state[column]!, 0));
}

function multiply(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] {
  return a.map((row) => b[0]!.map((_, j) => row.reduce((sum, value, k) => sum + value * b[k]![j]!, 0)));
}

function requireZones({ volumes, between, fromOutside }: AirZones, load: ZoneLoad, start: readonly number[]): void {
  const count = volumes.length;
  const lists = { between, fromOutside, generation: load.generation, start };
  for (const [name, list] of Object.entries(lists)) {
    if (list.length !== count) throw new ArgumentError(`number of zones in ${name}`, list.length, `${count}`);
  }
  requireNumber('CO2 outside', load.outside, { atLeast: 0 });
  volumes.forEach((volume, zone) => {
    const words = `zone ${zone + 1} of ${count}`;
    requireNumber(`air volume of ${words}`, volume, { above: 0 });
    requireNumber(`airflow from outside into ${words}`, fromOutside[zone]!, { atLeast: 0 });
    requireNumber(`CO2 generation in ${words}`, load.generation[zone]!, { atLeast: 0 });
    requireNumber(`CO2 at the start in ${words}`, start[zone]!, { atLeast: 0 });
    const row = between[zone]!;
    if (row.length !== count) throw new ArgumentError(`number of airflows out of ${words}`, row.length, `${count}`);
    for (const flow of row) requireNumber(`airflow out of ${words}`, flow, { atLeast: 0 });
  });
}
