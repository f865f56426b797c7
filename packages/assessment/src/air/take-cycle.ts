import {
  doorwayDischargeCoefficient,
  doorwayExchange,
  joinedSteps,
  type LinearStep,
  linearStep,
  takeStep,
  zoneConcentrations,
} from '@boothwright/acoustics';
import type { Booth, Session } from '@boothwright/language';
import type { FanSettingOfAir, TakesResult } from '../result/air-result.js';
import { decimals } from '../text/decimals.js';
import type { AirSupply } from './air-supply.js';
import type { BoothFlow } from './booth-flow.js';
import { openDoorDifference } from './path-constants.js';
import { peopleInside } from './people-inside.js';

/** Longest take that is looked for, min. */
const longestTake = 240;
const pureGas = 1e6;

/** The fans in a take, and the air that they bring. */
interface SettingOfTakes {
  readonly setting: FanSettingOfAir;
  readonly supply: AirSupply;
  readonly flow: Pick<BoothFlow, 'flow'>;
}

/**
 * CO2 over takes with the door shut and rests with it open.
 *
 * Rule: in a take the fans run or stand as the text says; in a rest the booth and the room exchange air through the open door, the
 * largest there is, as `doorwayExchange` at an assumed difference of temperature, the fans not counted. The people stay inside in the
 * rest, which is the cautious reading. Each span is solved exactly; the peak that repeats is the state that a take and a rest
 * leave as it is. Units: ppm, min. Source: mass balance (common practice); docs/models/takes-and-rests.md.
 */
export function takeCycle(
  booth: Booth,
  session: Session,
  { setting, supply: inTake, flow }: SettingOfTakes,
  volume: number,
  temperature: number,
): TakesResult | null {
  const { cycle } = session;
  if (cycle === undefined) return null;
  const flowInTake = flow.flow ?? 0;
  const [take, rest] = [cycle.take.value, cycle.rest.value];
  const doors = booth.doors.map(({ size }) =>
    doorwayExchange({
      width: size.width.value,
      height: size.height.value,
      difference: openDoorDifference,
      temperature,
      dischargeCoefficient: doorwayDischargeCoefficient(openDoorDifference),
    }),
  );
  const exchange = doors.length === 0 ? null : Math.max(...doors);
  const generation = session.people.value * peopleInside(session).breath;
  const resting = afterOpening(inTake, exchange ?? 0);
  // The exact solution holds no air that is more than all CO2.
  if ((1e6 * generation * 60) / volume > 5e5) return null;
  const exactStep = (supply: AirSupply, flow: number, seconds: number) =>
    supply.model === 'two-zones'
      ? linearStep(2, 1000, (state) => zoneConcentrations(supply.zones, supply.load, state, seconds))
      : linearStep(1, 1000, (state) =>
          zoneConcentrations(
            { volumes: [volume], between: [[0]], fromOutside: [flow] },
            { outside: supply.supply, generation: [generation] },
            state,
            seconds,
          ),
        );
  const stepOf = (supply: AirSupply, flow: number, seconds: number) => {
    const whole = Math.floor(seconds / 60);
    const rest = seconds - 60 * whole;
    const parts = [
      ...(whole > 0 ? [repeatedStep(exactStep(supply, flow, 60), whole)] : []),
      ...(rest > 0 || whole === 0 ? [exactStep(supply, flow, rest)] : []),
    ];
    return joinedSteps(parts);
  };
  const taking = stepOf(inTake, flowInTake, take);
  const restStep = rest > 0 ? stepOf(resting, exchange ?? 0, rest) : null;
  const start = inTake.model === 'two-zones' ? [inTake.start, inTake.start] : [inTake.start];
  const inBooth = (state: readonly number[]) => Math.min(pureGas, state.at(-1) as number);
  const takes = Math.max(1, Math.floor((session.length.value - 1e-9) / (take + rest)) + 1);
  let state: readonly number[] = start;
  let [first, last] = [0, 0];
  for (let count = 0; count < Math.min(takes, 1000); count++) {
    state = takeStep(taking, state);
    last = inBooth(state);
    if (count === 0) first = last;
    if (restStep !== null) state = takeStep(restStep, state);
  }
  const minute = stepOf(inTake, flowInTake, 60);
  return {
    takeMinutes: take / 60,
    restMinutes: rest / 60,
    fanInTake: setting === 'off' ? 'off' : 'on',
    doorExchangeM3PerS: exchange,
    takes,
    firstPeakPpm: first,
    lastPeakPpm: last,
    repeatingPeakPpm: repeatingPeak(restStep === null ? null : joinedSteps([restStep, taking])),
    longestTakeMinutes: longest(restStep, minute),
    note:
      exchange === null
        ? 'Without a door nothing but the vents renews the air in a rest.'
        : `Assumed in a rest: the door stands open, ${decimals(exchange * 1000, 0)} L/s go each way through it at ${openDoorDifference} K of difference, and everybody stays inside.`,
  };
}

/** A step many times over, by squaring. */
function repeatedStep(step: LinearStep, times: number): LinearStep {
  if (times === 1) return step;
  const half = repeatedStep(step, Math.floor(times / 2));
  const twice = joinedSteps([half, half]);
  return times % 2 === 0 ? twice : joinedSteps([twice, step]);
}

/** The supply with the door open instead of the vents. */
function afterOpening(supply: AirSupply, exchange: number): AirSupply {
  if (supply.model === 'fixed') return { ...supply, supply: supply.start };
  const { zones } = supply;
  const around = zones.fromOutside[0] as number;
  return {
    ...supply,
    zones: {
      volumes: zones.volumes,
      between: [
        [0, exchange],
        [exchange, 0],
      ],
      fromOutside: [around, 0],
    },
  };
}

/** ppm in the booth that a rest and a take leave as it is; null where there is none below pure gas. */
function repeatingPeak(step: LinearStep | null): number | null {
  if (step === null) return null;
  const { matrix, constant } = step;
  if (matrix.length === 1) {
    const kept = 1 - (matrix[0]?.[0] as number);
    const peak = (constant[0] as number) / kept;
    return kept > 1e-9 && peak <= pureGas ? peak : null;
  }
  const [[a, b], [c, d]] = matrix as [[number, number], [number, number]];
  const [u, v] = constant as [number, number];
  const determinant = (1 - a) * (1 - d) - b * c;
  const peak = ((1 - a) * v + c * u) / determinant;
  return Math.abs(determinant) > 1e-12 && peak >= 0 && peak <= pureGas ? peak : null;
}

function longest(rest: LinearStep | null, minute: LinearStep): TakesResult['longestTakeMinutes'] {
  const found = { '1000': 0, '1500': 0 };
  if (rest === null) return found;
  let take = minute;
  for (let minutes = 1; minutes <= longestTake; minutes++) {
    const peak = repeatingPeak(joinedSteps([rest, take]));
    if (peak === null || peak > 1500) break;
    found['1500'] = minutes;
    if (peak <= 1000) found['1000'] = minutes;
    take = joinedSteps([take, minute]);
  }
  return found;
}
