import { describe, expect, test } from 'vitest';
import { absorptionRows, findAbsorptionRows } from '../../src/database/index.js';
import * as a from '../../src/index.js';

const air = a.airProperties({ temperature: 20, relativeHumidity: 0.5 });
const fibre = { kind: 'porous', model: 'miki', thickness: 0.05, flowResistivity: 10_000 } as const;
const wrong = 'toString' as never;
const diffuse = { kind: 'diffuse' } as const;
const leak = { kind: 'leak', area: 1e-4, depth: 0.02 } as const;
const box = { volume: 1, elements: [leak], air, hz: [50] };

const calls: [string, string, () => unknown][] = [
  [
    'stackAbsorption',
    'backing is "toString", expected rigid or open',
    () => a.stackAbsorption([], { air, backing: wrong }),
  ],
  [
    'normalIncidenceAbsorption',
    'backing is "toString", expected rigid or open',
    () => a.normalIncidenceAbsorption([], [500], { air, backing: wrong }),
  ],
  [
    'absorberAbsorption, backing',
    'backing is "toString", expected rigid or open',
    () => a.absorberAbsorption([fibre], { air, backing: wrong, incidence: diffuse }),
  ],
  [
    'absorberAbsorption, kind of the backing',
    'kind of the backing is "toString", expected limp or wall',
    () => a.absorberAbsorption([fibre], { air, backing: { kind: wrong, surfaceMass: 1 }, incidence: diffuse }),
  ],
  [
    'absorberAbsorption, incidence',
    'kind of the incidence is "toString", expected diffuse, diffuse-on-sample or plane',
    () => a.absorberAbsorption([fibre], { air, backing: 'rigid', incidence: { kind: wrong } }),
  ],
  [
    'absorberAbsorption, layer',
    'layer 1: kind is "toString", expected porous, perforated, slotted, plate, limp-sheet, air-gap or screen',
    () => a.absorberAbsorption([{ ...fibre, kind: wrong }], { air, backing: 'rigid', incidence: diffuse }),
  ],
  [
    'absorberAbsorption, porous model',
    'layer 1: model is "toString", expected miki, delany-bazley or johnson-champoux-allard',
    () => a.absorberAbsorption([{ ...fibre, model: wrong }], { air, backing: 'rigid', incidence: diffuse }),
  ],
  [
    'slitTransmissionLoss',
    'position of the slit is "toString", expected mid or edge',
    () => a.slitTransmissionLoss({ gap: 0.001, depth: 0.05, position: wrong }, 500, air),
  ],
  [
    'apertureTransmissionLoss',
    'incidence is "toString", expected normal or diffuse',
    () => a.apertureTransmissionLoss({ radius: 0.01, depth: 0.05, incidence: wrong }, 500, air),
  ],
  [
    'endReflectionLoss',
    'termination of the duct is "toString", expected flush or free',
    () => a.endReflectionLoss({ area: 0.02, termination: wrong }, air),
  ],
  [
    'frequencyWeighting',
    'frequency weighting is "toString", expected A, C or Z',
    () => a.frequencyWeighting(wrong, 100),
  ],
  [
    'weightedTotal of nothing known',
    'frequency weighting is "toString", expected A, C or Z',
    () => a.weightedTotal(Array(21).fill(null), wrong),
  ],
  [
    'noiseCriterionCurveOf',
    'family of NC curves is "toString", expected classic or s12.2',
    () => a.noiseCriterionCurveOf(wrong, 30),
  ],
  [
    'noiseCriterionBySpeechInterference',
    'family of NC curves is "toString", expected classic or s12.2',
    () => a.noiseCriterionBySpeechInterference([60, 50, 42, 36, 30, 26, 22], wrong),
  ],
  [
    'plateauTransmissionLoss of a name',
    'plateau material is steel, expected an entry of plateauMaterials, which are aluminium, brick,',
    () => a.plateauTransmissionLoss('steel' as never, 0.01, 500, air),
  ],
  [
    'plateauTransmissionLoss of no material',
    'plateau material is undefined, expected an entry of plateauMaterials',
    () => a.plateauTransmissionLoss(undefined as never, 0.01, 500, air),
  ],
  [
    'boxRadiationImpedance',
    'surrounding of the box is "toString", expected free, floor, edge or corner',
    () => a.boxRadiationImpedance(14, wrong, 50, air),
  ],
  [
    'smallEnclosureLevelDifference, kind',
    'kind of an element is "toString", expected wall, leak or slit',
    () => a.smallEnclosureLevelDifference({ ...box, elements: [{ ...leak, kind: wrong }] }),
  ],
  [
    'smallEnclosureLevelDifference, cancellation',
    'cancellation is "toString", expected full or none',
    () => a.smallEnclosureLevelDifference({ ...box, cancellation: wrong }),
  ],
  [
    'findAbsorptionRows, category',
    'category is "toString", expected ceiling absorber, curtain,',
    () => findAbsorptionRows(absorptionRows, { categories: [wrong] }),
  ],
  [
    'findAbsorptionRows, no list',
    'list for category is curtain, expected a list of some of ceiling absorber, curtain,',
    () => findAbsorptionRows(absorptionRows, { categories: 'curtain' as never }),
  ],
  [
    'findAbsorptionRows, quantity',
    'quantity is "toString", expected absorption, area-per-person or scattering',
    () => findAbsorptionRows(absorptionRows, { quantities: [wrong] }),
  ],
  [
    'findAbsorptionRows, property',
    'property of the query is "category", expected words, categories, quantities, mounting, thickness or openOnly',
    () => findAbsorptionRows(absorptionRows, { category: 'curtain' } as never),
  ],
];

describe('a word that is not known', () => {
  test.each(calls)('%s', (_, message, run) => {
    expect(run).toThrow(a.ArgumentError);
    expect(run).toThrow(message);
  });
});

describe('a number that no result can come of', () => {
  const sheet = { thickness: 0.01, holeDiameter: 0.005, openArea: 0.1 };
  const slots = { thickness: 0.01, slotWidth: 0.005, openArea: 0.1 };
  test.each<[string, string, () => unknown]>([
    ['no frequency for holes', 'frequency is 0', () => a.perforatedImpedance(sheet, 0, air)],
    ['no frequency for slots', 'frequency is 0', () => a.slottedImpedance(slots, 0, air)],
    [
      'holes that overlap',
      'open area is 0.9, expected a number above 0 and up to 0.785',
      () => a.perforatedImpedance({ ...sheet, openArea: 0.9 }, 500, air),
    ],
    [
      'an enclosure of nothing',
      'number of elements is 0',
      () => a.smallEnclosureLevelDifference({ ...box, elements: [] }),
    ],
    [
      'percent',
      'absorption coefficient in band 1 of 4 is 25, expected a number of 0 or more and up to 1.5',
      () => a.noiseReductionCoefficient([25, 50, 60, 70]),
    ],
    [
      'more modes than a list can hold',
      'number of modes up to 100000 Hz is about 8.3e+8, expected at most 200000',
      () => a.boxModes([2, 2, 2], 1e5, air),
    ],
    [
      'no cubic metres',
      'room volume is 0, expected a number of cubic metres above 0',
      () => a.sabineTime(0, 10, 0, air),
    ],
    [
      'no square metres',
      'duct area is 0, expected a number of square metres above 0',
      () => a.straightDuctFlowNoise(250, 10, 0),
    ],
    [
      'an angle beyond the side',
      'angle in the plenum is 91, expected a number of degrees of 0 or more and up to 90',
      () => a.plenumLoss({ outletArea: 0.1, distance: 1, angleDeg: 91, wallArea: 20, absorption: 0.2 }),
    ],
    [
      'no number as argument of a Bessel function',
      'real part of z is NaN',
      () => a.besselRatio({ re: Number.NaN, im: 0 }),
    ],
  ])('%s', (_, message, run) => {
    expect(run).toThrow(a.ArgumentError);
    expect(run).toThrow(message);
  });

  test('near a zero of J0 the quotient is large or told, at a zero of J1 it is none', () => {
    for (const zero of [2.404825557695773, 5.520078110286311, 8.653727912911013]) {
      let size = Number.POSITIVE_INFINITY;
      try {
        const { re, im } = a.besselRatio({ re: zero, im: 0 });
        size = Math.hypot(re, im);
      } catch (error) {
        expect(error).toBeInstanceOf(a.ArgumentError);
      }
      expect(size).toBeGreaterThan(1e13);
    }
    for (const zero of [3.8317059702075125, 7.015586669815619]) {
      const { re, im } = a.besselRatio({ re: zero, im: 0 });
      expect(Math.hypot(re, im)).toBeLessThan(1e-13);
    }
  });

  test('plenumLoss takes degrees: at 60 deg the direct part is half', () => {
    const plenum = { outletArea: 0.1, distance: 1, wallArea: 20, absorption: 1 };
    const ahead = a.plenumLoss({ ...plenum, angleDeg: 0 });
    expect(a.plenumLoss({ ...plenum, angleDeg: 60 }) - ahead).toBeCloseTo(10 * Math.log10(2), 9);
  });
});
