import { type Air, type FanPoint, type PathElement, pathPressure } from '@boothwright/acoustics';
import { dischargeCoefficient } from './path-constants.js';
import { rootBetween } from './root-between.js';
import type { VentDirection } from './vent-resistance.js';

/** A vent as the balance of a booth sees it. */
export interface Opening {
  /** Which way its fan blows, or air would go without one. */
  readonly direction: VentDirection;
  readonly resistance: Readonly<Record<VentDirection, readonly PathElement[]>>;
  readonly drive:
    | { readonly kind: 'none' }
    | { readonly kind: 'stated'; readonly flow: number }
    | { readonly kind: 'curve'; readonly points: readonly FanPoint[] };
}

export interface Balance {
  /** Pa in the booth above the room */
  readonly pressure: number;
  /** m3/s into the booth, negative out of it, in the order of the openings */
  readonly flows: readonly number[];
  /** A fan still has pressure left where its curve ends. */
  readonly beyondCurve: boolean;
}

/**
 * The pressure in a booth at which as much air comes in as goes out; null where a fan's curve never meets its path.
 *
 * Rule: every opening gives the flow that its resistance and its drive let pass at a pressure; the sum falls with the pressure
 * and is brought to zero. Openings with a stated flow alone have no pressure to find: the booth then takes that of
 * the side that draws, as if each fan carried its own vent.
 * Units: m2 of gaps, Pa, m3/s. Source: balance of flows (common practice). Valid: as of `pathPressure`.
 */
export function balancedPressure(openings: readonly Opening[], gaps: number, air: Air): Balance | null {
  const flowThroughGaps = (pressure: number) =>
    -Math.sign(pressure) * dischargeCoefficient * gaps * Math.sqrt((2 * Math.abs(pressure)) / air.density);
  let met = true;
  let beyondCurve = false;
  const flowAt = (opening: Opening, pressure: number): number => {
    const { drive, direction, resistance } = opening;
    if (drive.kind === 'none') {
      const way = pressure > 0 ? 'out' : 'in';
      return -Math.sign(pressure) * flowOf(resistance[way], Math.abs(pressure), air);
    }
    const sign = direction === 'in' ? 1 : -1;
    if (drive.kind === 'stated') return sign * drive.flow;
    const point = operatingFlow(drive.points, resistance[direction], sign * pressure, air);
    if (point.kind === 'none') met = false;
    if (point.kind === 'beyond') beyondCurve = true;
    return sign * point.flow;
  };
  const flows = (pressure: number) => {
    met = true;
    beyondCurve = false;
    return openings.map((opening) => flowAt(opening, pressure));
  };
  const net = (pressure: number) =>
    flows(pressure).reduce((sum, flow) => sum + flow, 0) + (gaps > 0 ? flowThroughGaps(pressure) : 0);
  const moves = gaps > 0 || openings.some(({ drive }) => drive.kind !== 'stated');
  if (!moves) return { pressure: 0, flows: flows(0), beyondCurve: false };
  const pressure = rootBetween(net, ...bracket(net));
  const missing = Math.abs(net(pressure));
  const settled = flows(pressure);
  const moved = Math.max(...settled.map(Math.abs));
  // A fan that ends below the flow of another leaves air over at any pressure.
  return met && missing <= 1e-3 * moved ? { pressure, flows: settled, beyondCurve } : null;
}

/** Pressures on both sides of the balance, Pa; widened until it lies between. */
function bracket(net: (pressure: number) => number): [number, number] {
  const sign = Math.sign(net(0));
  let [near, far] = [0, 1];
  while (sign !== 0 && far < 1e5 && Math.sign(net(sign * far)) === sign) [near, far] = [far, 4 * far];
  return sign >= 0 ? [near, far] : [-far, -near];
}

/** Flow that a path lets pass at a pressure, m3/s: `pathPressure` turned round, step by step along its nearly square law. */
export function flowOf(path: readonly PathElement[], pressure: number, air: Air): number {
  if (pressure <= 0) return 0;
  let flow = 0.01;
  for (let step = 0; step < 60; step++) {
    const next = flow * Math.sqrt(pressure / pathPressure(path, flow, air));
    if (Math.abs(next - flow) <= 1e-9 * flow) return next;
    flow = next;
  }
  return flow;
}

/** Where a fan's curve meets its own path and a pressure that stands against it. */
function operatingFlow(
  points: readonly FanPoint[],
  path: readonly PathElement[],
  against: number,
  air: Air,
): { readonly kind: 'met' | 'beyond' | 'none'; readonly flow: number } {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return { kind: 'none', flow: 0 };
  const excess = (point: FanPoint) => point.pressure - against - pathPressure(path, point.flow, air);
  if (excess(last) > 0) return { kind: 'beyond', flow: last.flow };
  if (excess(first) < 0) return first.flow > 0 ? { kind: 'none', flow: 0 } : { kind: 'met', flow: 0 };
  // The last piece of the curve that begins above its path and ends below it: the crossing with most flow.
  for (let index = points.length - 1; index > 0; index--) {
    const [low, high] = [points[index - 1] as FanPoint, points[index] as FanPoint];
    if (!(excess(low) >= 0 && excess(high) <= 0)) continue;
    const slope = (high.pressure - low.pressure) / (high.flow - low.flow);
    const at = (flow: number) => excess({ flow, pressure: low.pressure + slope * (flow - low.flow) });
    return { kind: 'met', flow: rootBetween(at, low.flow, high.flow) };
  }
  return { kind: 'none', flow: 0 };
}
