import { type Air, type FanPoint, fanCurveAtSpeed, pathPressure } from '@boothwright/acoustics';
import type { Booth, Fan } from '@boothwright/language';
import type { Memo } from '../memo/memo.js';
import { balancedPressure, type Opening } from './balanced-pressure.js';
import { type AirWay, freshAir, gapArea, type VentFlow } from './fresh-air.js';
import { dischargeCoefficient } from './path-constants.js';
import { type VentDirection, ventResistances } from './vent-resistance.js';

/** Setting at which fans run. */
export type FanSetting = 'low' | 'high';

export interface BoothFlow {
  readonly way: AirWay;
  /** m3/s through the booth; zero where nothing passes, null where the curve of a fan never meets its path */
  readonly flow: number | null;
  readonly byVent: readonly (VentFlow & {
    /** Pa that the vent takes at its flow */
    readonly pressure: number;
  })[];
  /** Pa that a fan must give: its own vent and the way of the air on the other side; null where nothing passes */
  readonly needed: number | null;
  /** Pa that the curve of the hardest worked fan gives at its flow; null without a curve */
  readonly given: number | null;
  /** Pa in the booth above the room around it; null where it is not known */
  readonly boothPressure: number | null;
  /** The gaps, where they are the way of the air. */
  readonly gaps: { readonly area: number; readonly speed: number } | null;
  /** What a reader has to know about these figures. */
  readonly notes: readonly string[];
}

/**
 * Airflow through a booth with its fans at a setting, and the pressure that it takes.
 *
 * Rule: a fan with a curve works where its curve, at the speed n of the setting scaled by Q ~ n and p ~ n^2, meets the
 * resistance of its own vent and of the way on the other side; one without a curve moves its stated flow times n. Vents
 * without a fan share what is left so that each takes the pressure of the booth. Gaps count only where they are the way of the
 * air: with another vent they take a share of it that is left out, so that a fan needs no more than is said.
 * Units: m3/s, Pa. Source: balance of flows and pressures; fan laws (common practice); docs/models/air-path-pressure.md.
 */
export function boothFlow(booth: Booth, setting: FanSetting, air: Air, memo: Memo): BoothFlow {
  const speed = (fan: Fan) => (setting === 'low' ? fan.lowSpeed.value : 1);
  const flowOf = (fan: Fan) => fan.flow.value * speed(fan);
  const { way, flow, byVent } = freshAir(booth, flowOf);
  const nothing = { way, byVent: [], needed: null, given: null, boothPressure: null, gaps: null, notes: [] };
  if (byVent.length === 0) return { ...nothing, flow };
  const area = way === 'gaps' ? gapArea(booth) : 0;
  const openings = byVent.map(({ vent, flow: own, direction }): Opening => {
    const curve = vent.fan?.curve === undefined ? undefined : scaledCurve(vent.fan, speed(vent.fan));
    const elements = (way: VentDirection) => ventResistances(vent, way).map(({ element }) => element);
    return {
      direction,
      resistance: { in: elements('in'), out: elements('out') },
      drive:
        vent.fan === undefined || flowOf(vent.fan) <= 0
          ? { kind: 'none' }
          : curve === undefined
            ? { kind: 'stated', flow: own }
            : { kind: 'curve', points: curve },
    };
  });
  const key = JSON.stringify([openings, area, flow, way === 'series', air.density, air.temperature]);
  const balance = memo.of(`air-flow ${key}`, () => balancedPressure(openings, area, air));
  if (balance === null) {
    const fan = byVent.find(({ vent }) => vent.fan?.curve !== undefined)?.vent;
    return {
      ...nothing,
      flow: null,
      notes: [
        `no operating point: the curve of the fan in \`${fan?.name ?? ''}\` never meets the pressure that its path takes; expected a curve that starts above it`,
      ],
    };
  }
  const settled = byVent.map((entry, index): BoothFlow['byVent'][number] => {
    const settledFlow = balance.flows[index] as number;
    const direction = settledFlow === 0 ? entry.direction : settledFlow > 0 ? 'in' : 'out';
    const opening = openings[index] as Opening;
    return {
      vent: entry.vent,
      flow: Math.abs(settledFlow),
      direction,
      pressure: pathPressure(opening.resistance[direction], Math.abs(settledFlow), air),
    };
  });
  const through = Math.max(
    ...(['in', 'out'] as const).map((direction) =>
      settled.reduce((sum, entry) => sum + (entry.direction === direction ? entry.flow : 0), 0),
    ),
  );
  const work = settled.flatMap((entry) => {
    const { fan } = entry.vent;
    if (fan === undefined || flowOf(fan) <= 0) return [];
    const against = entry.direction === 'in' ? balance.pressure : -balance.pressure;
    return [{ needed: entry.pressure + against, given: fan.curve === undefined ? null : entry.pressure + against }];
  });
  const hardest = work.toSorted((a, b) => b.needed - a.needed)[0];
  return {
    way,
    flow: through,
    byVent: settled,
    needed: hardest?.needed ?? null,
    given: hardest?.given ?? null,
    boothPressure: balance.pressure,
    gaps: area > 0 ? { area, speed: through / (dischargeCoefficient * area) } : null,
    notes: balance.beyondCurve
      ? ['the curve of the fan ends before its path holds it back: it moves at least what is said']
      : [],
  };
}

/** The curve at a share of full speed. */
function scaledCurve(fan: Fan, share: number): FanPoint[] {
  const points = (fan.curve ?? []).map(({ flow, pressure }) => ({ flow: flow.value, pressure: pressure.value }));
  return fanCurveAtSpeed(points, share);
}
