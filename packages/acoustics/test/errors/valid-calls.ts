import * as a from '../../src/index.js';
import { air, board, fibre, panel, risingLoss } from '../predictions/reference-inputs.js';

/** A call that is right, and what of its arguments may be other than it is. */
export type ValidCall = {
  readonly name: string;
  readonly run: (...args: never[]) => unknown;
  readonly args: readonly unknown[];
  /** Numbers may be negative: they are levels, losses, or steps of them. */
  readonly anySign?: boolean;
  /** Lists may have any length. */
  readonly anyLength?: boolean;
};

const call = <Args extends readonly unknown[]>(
  run: (...args: Args) => unknown,
  args: NoInfer<Args>,
  options: Pick<ValidCall, 'anySign' | 'anyLength'> = {},
): ValidCall => ({ name: run.name, run: run as ValidCall['run'], args, ...options });

const decibels = { anySign: true };
const list = { anySign: true, anyLength: true };
const octaves = [60, 50, 42, 36, 30, 26, 22];
const single = { surfaceMass: 10, stiffness: 400, lossFactor: 0.02 };
const size = panel.size;
const surfaces = [
  { area: 20, absorption: 0.2 },
  { area: 20, absorption: 0.4 },
];
const pairs = [surfaces, surfaces, surfaces] as const;
const loss = a.asTransmissionLoss(risingLoss);
const difference = a.asLevelDifference(risingLoss);
const ones = risingLoss.map(() => 1);

/** A right call of each function whose arguments are numbers, lists of them, or objects of both. */
export const validCalls: readonly ValidCall[] = [
  call(a.airAttenuation, [1000, air]),
  call(a.airProperties, [{ temperature: 20, relativeHumidity: 0.5 }], decibels),
  call(a.airAbsorptionArea, [50, 0.01]),
  call(a.sabineTime, [50, 10, 0.01, air]),
  call(a.eyringTime, [50, 85, 0.3, 0.01, air]),
  call(a.kuttruffTime, [50, 85, 0.3, 0.4, 0.01, air]),
  call(a.fitzroyTime, [50, pairs, 0.01, air]),
  call(a.arauPuchadesTime, [50, pairs, 0.01, air]),
  call(a.millingtonSetteTime, [50, surfaces, 0.01, air], { anyLength: true }),
  call(a.schroederFrequency, [50, 0.5]),
  call(a.receivedLevel, [80, 45, 6, 6], decibels),
  call(a.roomConstant, [85, 0.3]),
  call(a.criticalDistance, [1, 20]),
  call(a.environmentalCorrection, [20, 10]),
  call(a.levelInRoom, [80, 1, 1, 20, air], decibels),
  call(a.modalCount, [[4, 3, 2.5], 200, air]),
  call(a.modalDensity, [[4, 3, 2.5], 200, air]),
  call(a.boxModes, [[4, 3, 2.5], 100, air]),
  call(a.sumLevels, [[60, 63]], list),
  call(a.subtractLevel, [60, 50], decibels),
  call(a.frequencyWeighting, ['A', 1000]),
  call(a.weightedTotal, [risingLoss, 'A'], decibels),
  call(a.soundTransmissionClass, [risingLoss], decibels),
  call(a.weightedSoundReduction, [risingLoss], decibels),
  call(a.weightedSoundReductionFine, [risingLoss], decibels),
  call(a.outdoorIndoorTransmissionClass, [risingLoss], decibels),
  call(a.noiseIsolationClass, [difference], decibels),
  call(a.weightedLevelDifference, [difference], decibels),
  call(a.standardizedLevelDifference, [difference, ones], decibels),
  call(a.normalizedLevelDifference, [difference, ones], decibels),
  call(a.apparentTransmissionLoss, [difference, 10, ones], decibels),
  call(a.receivingAbsorptionArea, [50, 0.5]),
  call(a.noiseCriterion, [octaves], decibels),
  call(a.noiseCriterionCurve, [30]),
  call(a.noiseRatingCurve, [30]),
  call(a.roomCriterionCurve, [35]),
  call(a.asTransmissionLoss, [risingLoss], list),
  call(a.asLevelDifference, [risingLoss], list),
  call(a.asInsertionLoss, [risingLoss], list),
  call(a.octaveTransmissionLoss, [risingLoss], decibels),
  call(a.octaveLevelsToThirds, [octaves], decibels),
  call(a.thirdLevelsToOctaves, [risingLoss], decibels),
  call(a.thirdsOfOctave, [1]),
  call(
    a.compositeTransmissionLoss,
    [
      [
        { area: 10, transmissionLoss: loss },
        { area: 1, transmissionLoss: loss },
      ],
    ],
    list,
  ),
  call(a.leakRatio, [0.01, 10]),
  call(a.smallElementTransmissionLoss, [risingLoss, 1], list),
  call(a.slitTransmissionLoss, [{ gap: 0.001, depth: 0.05, position: 'mid' }, 500, air]),
  call(a.inviscidSlitTransmissionLoss, [{ gap: 0.001, depth: 0.05, position: 'mid' }, 500, air]),
  call(a.apertureTransmissionLoss, [{ radius: 0.01, depth: 0.05 }, 500, air]),
  call(a.cableHoleTransmissionLoss, [{ holeRadius: 0.01, cableRadius: 0.005, depth: 0.05 }, 500, air]),
  call(a.massLawNormal, [500, 10, air]),
  call(a.massLawField, [500, 10, air]),
  call(a.massLawOblique, [500, 10, 45, air]),
  call(a.massLawRandom, [500, 10, air]),
  call(a.criticalFrequency, [board, air]),
  call(a.bendingStiffness, [board]),
  call(a.sharpTransmissionLoss, [single, 500, air]),
  call(a.davyTransmissionLoss, [single, size, 500, air]),
  call(a.sewellTransmissionLoss, [single, size, 500, air]),
  call(a.radiationEfficiency, [500, 2500, size, air]),
  call(a.mikiPorous, [8000, 1000, air]),
  call(a.delanyBazleyPorous, [8000, 1000, air]),
  call(a.massAirMassFrequency, [9, 9, 0.09, air]),
  call(a.surfaceMass, [[board, fibre]], { anyLength: true }),
  call(
    a.wallTransmissionLoss,
    [
      { layers: [board], connections: [] },
      { air, field: panel },
    ],
    { anyLength: true },
  ),
  call(a.bandTransmissionLoss, [[board], { air, field: panel }], { anyLength: true }),
  call(a.diffuseTransmissionLoss, [[board], [500], { air, field: panel }], { anyLength: true }),
  call(a.transmissionCoefficient, [[board], 500, 0.5, air], { anyLength: true }),
  call(a.stackAbsorption, [[fibre], { air, backing: 'rigid' }], { anyLength: true }),
  call(a.normalIncidenceAbsorption, [[fibre], [500], { air, backing: 'rigid' }], { anyLength: true }),
  call(a.helmholtzFrequency, [{ volume: 0.001, neckRadius: 0.01, neckLength: 0.02, neckFlowResistance: 5 }, air]),
  call(a.steadyCo2, [{ supply: 450, generation: 5e-6, flow: 0.005 }]),
  call(a.flowForCo2, [{ limit: 1000, supply: 450, generation: 5e-6 }]),
  call(a.co2Concentration, [{ start: 450, supply: 450, generation: 5e-6, flow: 0.005, volume: 4, seconds: 600 }]),
  call(a.co2TimeTo, [{ start: 450, supply: 450, generation: 5e-6, flow: 0.005, volume: 4, threshold: 1000 }]),
  call(a.linedRectangularDuctLoss, [{ width: 0.15, height: 0.2, length: 1, lining: 0.025 }]),
  call(a.linedRoundDuctLoss, [{ diameter: 0.2, length: 1, lining: 0.025 }]),
  call(a.ductBendLoss, [{ width: 0.2, lined: true, form: 'square' }, air]),
  call(a.endReflectionLoss, [{ area: 0.03, termination: 'flush' }, air]),
  call(a.areaChangeLoss, [0.1, 0.05]),
];
