import { describe, expect, test } from 'vitest';
import * as a from '../../src/index.js';
import type { ValidCall } from '../errors/valid-calls.js';
import { wrongCalls } from '../errors/wrong-arguments.js';

const air = a.airProperties({ temperature: 20, relativeHumidity: 0.5 });
const octaves = [80, 80, 78, 75, 70, 65, 60, 55];
const wallLoss = a.asTransmissionLoss([21, 24, 27, 30, 33, 36, 41, 45]);
const curve = [
  { flow: 0.001, pressure: 60 },
  { flow: 0.04, pressure: 10 },
];
const zones = {
  volumes: [40, 4],
  between: [
    [0, 0.01],
    [0.01, 0],
  ],
  fromOutside: [0.02, 0],
};
const thermal = {
  ...zones,
  heatCapacities: [2e5, 3e4],
  conductances: [
    [0, 12],
    [12, 0],
  ],
  toOutside: [30, 1],
};

const call = <Args extends readonly unknown[]>(
  run: (...args: Args) => unknown,
  args: NoInfer<Args>,
  options: Pick<ValidCall, 'anySign' | 'anyLength'> = {},
): ValidCall => ({ name: run.name, run: run as ValidCall['run'], args, ...options });
/** Levels and temperatures may be negative, and the losses of a wall are checked as such. */
const anySign = { anySign: true };

/** A right call of each function of air paths, of the air in zones, of moist air and of voices. */
const calls: readonly ValidCall[] = [
  call(a.bodySurfaceArea, [1.75, 70]),
  call(a.co2Generation, [1.8, 1.2, 0.83]),
  call(a.straightDuctFlowNoise, [250, 5, 0.04]),
  call(a.straightDuctFlowNoiseOctaves, [5, 0.04]),
  call(a.bendFlowNoise, [250, { speed: 5, area: 0.04, height: 0.2, density: 1.2 }]),
  call(a.openingFlowNoise, [250, { speed: 5, area: 0.04, pressure: 20 }]),
  call(
    a.co2OfMetabolism,
    [{ basalRate: 8.24, activity: 1.2, respiratoryQuotient: 0.85, temperature: 20, pressure: 101.325 }],
    anySign,
  ),
  call(a.ductFrictionFactor, [1e5, 0.001]),
  call(a.ductFrictionPressure, [{ area: 0.008, perimeter: 0.3, length: 2, roughness: 1e-4 }, 0.02, air]),
  call(a.localPressureLoss, [1, 5, air]),
  call(a.fanPressure, [curve, 0.02]),
  call(a.fanCurveAtSpeed, [curve, 0.6]),
  call(a.fansInSeries, [[curve, curve]]),
  call(a.fansInParallel, [[curve, curve]]),
  call(a.fanSoundPower, [{ flow: 0.1, pressure: 100, efficiency: 0.8 }, a.forwardCurvedFanLevels], anySign),
  call(a.fanCasingPower, [octaves], anySign),
  call(a.plenumLoss, [{ outletArea: 0.1, distance: 1, angleDeg: 30, wallArea: 20, absorption: 0.2 }]),
  call(a.branchSplitLoss, [0.6, [0.2, 0.5], 0]),
  call(a.unlinedRectangularDuctOctaveLoss, [{ width: 0.3, height: 0.2, length: 1 }]),
  call(a.unlinedRoundDuctOctaveLoss, [1]),
  call(a.flexibleDuctOctaveLoss, [{ diameter: 0.2, length: 1 }]),
  call(a.rectangularDuctBreakoutLoss, [{ width: 0.3, height: 0.3, surfaceMass: 4.7 }]),
  call(a.rectangularDuctBreakinLoss, [wallLoss, { width: 0.3, height: 0.3, length: 2 }], anySign),
  call(a.ductBreakoutPower, [octaves, wallLoss, { wallArea: 1, section: 0.09 }], anySign),
  call(a.ductBreakinPower, [octaves, wallLoss], anySign),
  call(a.silencerLoss, [a.silencerRows.slice(0, 1), { airway: 0.1, splitter: 0.2, length: 0.9 }], {
    anySign: true,
    anyLength: true,
  }),
  call(a.expansionChamberLoss, [250, { chamberArea: 0.08, ductArea: 0.01, length: 0.5 }, air]),
  call(a.suddenExpansionCoefficient, [0.01, 0.02]),
  call(a.pathPressure, [[{ kind: 'device', pressure: 5, flow: 0.02, exponent: 2 }], 0.02, air]),
  call(a.zoneConcentrations, [zones, { outside: 420, generation: [0, 5e-6] }, [420, 600], 60]),
  call(a.steadyZoneConcentrations, [zones, { outside: 420, generation: [0, 5e-6] }]),
  call(a.zoneVapour, [zones, { outside: 0.006, generation: [0, 2e-5] }, [0.008, 0.009], 60]),
  call(a.steadyZoneVapour, [zones, { outside: 0.006, generation: [0, 2e-5] }]),
  call(a.zoneTemperatures, [thermal, { outside: 5, gains: [0, 130] }, [20, 21], 60, air], anySign),
  call(a.steadyZoneTemperatures, [thermal, { outside: 5, gains: [0, 130] }, air], anySign),
  call(a.vapourOfLatentHeat, [45, 34]),
  call(a.relativeHumidityOfVapour, [0.008, 20], anySign),
  call(a.surfaceTemperature, [{ inside: 20, outside: 5, transmittance: 2, surfaceResistance: 0.13 }], anySign),
  call(a.condensationMargin, [air, 12], anySign),
  call(a.microphoneSelfNoise, [12, 'white'], anySign),
  call(a.speechLevelInNoise, [60], anySign),
  call(a.speechSpectrumAt, ['loud', 2]),
  call(a.speechOctavesForReading, ['loud', 70, 'A'], anySign),
  call(a.talkerSoundPower, [[60, 62]], anySign),
];

describe('a wrong argument', () => {
  test.each(calls.map((valid) => [valid.name, valid] as const))('of %s is told as such', (_, valid) => {
    expect(() => valid.run(...(valid.args as never[]))).not.toThrow();
    const wrong = wrongCalls(valid);
    expect(wrong.length).toBeGreaterThan(0);
    const untold = wrong.filter(({ args }) => !toldBy(() => valid.run(...(args as never[]))));
    expect(untold.map(({ what }) => what)).toEqual([]);
  });
});

/** Whether a call throws an ArgumentError that says what was found and what is allowed. */
function toldBy(run: () => unknown): boolean {
  try {
    run();
    return false;
  } catch (error) {
    return error instanceof a.ArgumentError && error.argument !== '' && error.message.includes('expected');
  }
}
