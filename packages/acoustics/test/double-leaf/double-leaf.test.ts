import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thirdOctaveBands } from '../../src/bands/bands.js';
import { chooseDoubleLeafModel } from '../../src/double-leaf/choose-double-leaf-model.js';
import { connectionPathTransmission, steelStudCompliance } from '../../src/double-leaf/connection-path.js';
import { connectedDoubleLeaf, davyDoubleLeaf, davyLargestAngleDeg } from '../../src/double-leaf/davy-double-leaf.js';
import {
  cavityLimitFrequency,
  doubleLeafResonance,
  obliqueResonance,
} from '../../src/double-leaf/double-leaf-resonance.js';
import { cavityAbsorptionRatio } from '../../src/double-leaf/leaf-cavity.js';
import { diffuseResponseFactor, lineRadiationFactor } from '../../src/double-leaf/plate-coupling.js';
import {
  complianceInSeries,
  connectionStiffness,
  flangeCompliance,
  guidedFlangeCompliance,
  transmissibility,
} from '../../src/double-leaf/resilient-connection.js';
import { sharpConnectedDoubleLeaf, sharpLineGain, sharpPointGain } from '../../src/double-leaf/sharp-connections.js';
import { sharpDoubleLeaf } from '../../src/double-leaf/sharp-double-leaf.js';
import { multiLeafTransmissionLoss, tripleLeafResonances } from '../../src/double-leaf/triple-leaf.js';
import { singlePanelOfLeaf, wallLeafOf } from '../../src/double-leaf/wall-leaf.js';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { bandTransmissionLoss } from '../../src/layered/band-transmission-loss.js';
import { cavityResonances } from '../../src/layered/cavity-resonances.js';
import { diffuseTransmissionLoss } from '../../src/layered/diffuse-transmission-loss.js';
import { massAirMassFrequency } from '../../src/layered/mass-air-mass-frequency.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { massLawField } from '../../src/panels/mass-law.js';
import { air, board, davyWall, filled, limp, sharpWall, size } from './walls.js';

const mass = fc.double({ min: 1, max: 200, noNaN: true });
const depth = fc.double({ min: 0.01, max: 0.5, noNaN: true });
const slope = (loss: readonly number[]) => loss[1]! - loss[0]!;

describe('resonances', () => {
  it('without fill is massAirMassFrequency; full fill lowers it by the root of the ratio of heats', () => {
    fc.assert(
      fc.property(mass, mass, depth, (m1, m2, d) => {
        const empty = doubleLeafResonance(m1, m2, { depth: d, fillDepth: 0 }, air);
        expect(empty / massAirMassFrequency(m1, m2, d, air)).toBeCloseTo(1, 10);
        const full = doubleLeafResonance(m1, m2, { depth: d, fillDepth: d }, air);
        expect(full / empty).toBeCloseTo(0.845, 2);
      }),
    );
  });

  it('of three leaves agree with the eigenvalues of the chain', () => {
    fc.assert(
      fc.property(mass, mass, mass, depth, depth, (m1, m2, m3, d1, d2) => {
        const found = tripleLeafResonances(
          [m1, m2, m3],
          [
            { depth: d1, fillDepth: d1 },
            { depth: d2, fillDepth: 0 },
          ],
          air,
        );
        const chain = cavityResonances([m1, m2, m3], [{ thickness: d1, isothermal: true }, { thickness: d2 }], air);
        found.forEach((hz, i) => {
          expect(hz / chain[i]!).toBeCloseTo(1, 6);
        });
      }),
    );
  });

  it('of a symmetric triple leaf are those of half the wall and of the middle leaf against both', () => {
    const cavity = { depth: 0.1, fillDepth: 0 };
    const spring = (air.density * air.soundSpeed ** 2) / 0.1;
    const [low, high] = tripleLeafResonances([10, 20, 10], [cavity, cavity], air);
    expect(low).toBeCloseTo(Math.sqrt(spring / 10) / (2 * Math.PI), 9);
    expect(high).toBeCloseTo(Math.sqrt(spring / 10 + spring / 10) / (2 * Math.PI), 9);
  });

  it('rise as 1/cos of the angle without fill and with the stiffness of connections', () => {
    expect(obliqueResonance(50, 60, true)).toBeCloseTo(100, 9);
    expect(obliqueResonance(50, 60, false)).toBe(50);
    const stiff = connectionStiffness('lines', 1e-6, 0.6);
    expect(doubleLeafResonance(8.5, 8.5, filled, air, stiff)).toBeGreaterThan(
      doubleLeafResonance(8.5, 8.5, filled, air),
    );
  });
});

describe('sharpDoubleLeaf(wall, conditions)', () => {
  const wall = { leaves: [limp, limp], cavity: { depth: 0.1, fillDepth: 0.1 }, absorptionRatio: 2 } as const;

  it('is the mass law of both leaves below f0', () => {
    expect(sharpDoubleLeaf(wall, { air, frequencies: [40] })[0]).toBe(massLawField(40, 20, air));
  });

  it('rises by 18 dB per octave up to fl and by 12 above', () => {
    expect(slope(sharpDoubleLeaf(wall, { air, frequencies: [240, 480] }))).toBeCloseTo(18, 0);
    expect(slope(sharpDoubleLeaf(wall, { air, frequencies: [1000, 2000] }))).toBeCloseTo(12, 0);
  });

  it('joins its two upper ranges at fl', () => {
    const fl = cavityLimitFrequency(0.1, air);
    expect(slope(sharpDoubleLeaf(wall, { air, frequencies: [fl * (1 - 1e-9), fl * (1 + 1e-9)] }))).toBeCloseTo(0, 6);
  });

  it('never gains from less absorption', () => {
    const [bare, lined] = [0.1, 2].map((absorptionRatio) =>
      sharpDoubleLeaf({ ...sharpWall, absorptionRatio }, { air }),
    );
    expect(bare).toHaveLength(21);
    bare!.forEach((loss, band) => {
      expect(loss).toBeLessThanOrEqual(lined![band]!);
    });
    expect(bare![17]).toBeLessThan(lined![17]! - 9);
  });
});

describe('sharpLineGain, sharpPointGain and sharpConnectedDoubleLeaf', () => {
  it('have the constants of 23 and 45 dB for equal leaves', () => {
    expect(sharpLineGain([board, board], 0.6, air)).toBeCloseTo(10 * Math.log10(0.6 * 3150) - 23.4, 1);
    expect(sharpPointGain([board, board], 0.6, air)).toBeCloseTo(20 * Math.log10(0.6 * 3150) - 44.8, 1);
  });

  it('gain 3 dB with lines and 6 dB with points twice as far apart', () => {
    expect(sharpLineGain([board, board], 1.2, air) - sharpLineGain([board, board], 0.6, air)).toBeCloseTo(3.01, 2);
    expect(sharpPointGain([board, board], 1.2, air) - sharpPointGain([board, board], 0.6, air)).toBeCloseTo(6.02, 2);
  });

  it('lower the wall in no band below what it is without them', () => {
    const free = sharpDoubleLeaf(sharpWall, { air });
    for (const kind of ['lines', 'points'] as const) {
      sharpConnectedDoubleLeaf(sharpWall, { kind, spacing: 0.6 }, { air }).forEach((loss, band) => {
        expect(loss).toBeLessThanOrEqual(free[band]!);
      });
    }
  });
});

describe('diffuseResponseFactor and lineRadiationFactor', () => {
  it('are 1 for a heavy leaf far below coincidence', () => {
    const heavy = { surfaceMass: 1e5, criticalFrequency: 1e6, lossFactor: 0.01 };
    expect(diffuseResponseFactor(heavy, 100, air)).toBeCloseTo(1, 3);
    expect(lineRadiationFactor(heavy, 100, air)).toBeCloseTo(1, 3);
  });

  it('above coincidence are those of the damped peak', () => {
    // Near w0 the first bracket is 4 x w0 times the distance, so the peak has the area of a Lorentzian.
    const leaf = { surfaceMass: 1e7, criticalFrequency: 100, lossFactor: 0.01 };
    const x = 4;
    const w0 = Math.sqrt(1 - 1 / x);
    const derivative = 4 * x * w0;
    expect(diffuseResponseFactor(leaf, 400, air) / (Math.PI / (0.01 * derivative))).toBeCloseTo(1, 1);
  });
});

describe('connectionPathTransmission(leaves, connection, hz, air)', () => {
  it.each([0, steelStudCompliance])(
    'far below coincidence is the closed form of lines, compliance %d',
    (compliance) => {
      const heavy = { surfaceMass: 500, criticalFrequency: 4e4, lossFactor: 0.01 };
      const other = { surfaceMass: 900, criticalFrequency: 3e4, lossFactor: 0.01 };
      const omega = 2 * Math.PI * 500;
      const g = 500 * Math.sqrt(2 * Math.PI * 3e4) + 900 * Math.sqrt(2 * Math.PI * 4e4);
      const spring = 4 * omega ** 1.5 * 500 * 900 * air.soundSpeed * compliance;
      const expected =
        (64 * air.density ** 2 * air.soundSpeed ** 3) / ((g ** 2 + (spring - g) ** 2) * 0.6 * omega ** 2);
      const found = connectionPathTransmission([heavy, other], { kind: 'lines', spacing: 0.6, compliance }, 500, air);
      expect(Math.abs(10 * Math.log10(found / expected))).toBeLessThan(0.05);
    },
  );

  it('is within 4 dB of Sharp: lines and points, diffuse field against normal incidence', () => {
    const law = massLawField(500, 17, air);
    for (const [kind, gain] of [
      ['lines', sharpLineGain],
      ['points', sharpPointGain],
    ] as const) {
      const path = connectionPathTransmission([board, board], { kind, spacing: 0.6, compliance: 0 }, 500, air);
      expect(Math.abs(-10 * Math.log10(path) - law - gain([board, board], 0.6, air))).toBeLessThan(4);
    }
  });

  it('works both ways alike for lines far below coincidence, for points everywhere', () => {
    const other = { surfaceMass: 30, criticalFrequency: 2000, lossFactor: 0.03 };
    const path = { kind: 'points', spacing: 0.6, compliance: 1e-7 } as const;
    for (const hz of [200, 2500, 5000]) {
      const there = connectionPathTransmission([board, other], path, hz, air);
      expect(there / connectionPathTransmission([other, board], path, hz, air)).toBeCloseTo(1, 6);
    }
  });

  it('falls with compliance for points and ends for a leaf without stiffness', () => {
    const at = (compliance: number) =>
      connectionPathTransmission([board, board], { kind: 'points', spacing: 0.6, compliance }, 1000, air);
    expect(at(1e-5)).toBeLessThan(at(1e-6));
    expect(connectionPathTransmission([limp, board], { kind: 'lines', spacing: 0.6, compliance: 0 }, 1000, air)).toBe(
      0,
    );
  });
});

describe('davyDoubleLeaf and connectedDoubleLeaf', () => {
  it('lies below the sum of both by 20 lg alpha where masses rule', () => {
    const wall = { ...davyWall, leaves: [limp, limp] as const };
    const [full, tenth] = [1, 0.1].map((cavityAbsorption) =>
      davyDoubleLeaf({ ...wall, cavityAbsorption }, { air, frequencies: [2000] }),
    );
    expect(full![0]! - tenth![0]!).toBeCloseTo(20, 0);
  });

  it('rises by about 18 dB per octave between f0 and fl', () => {
    const wall = { ...davyWall, leaves: [limp, limp] as const, cavity: { depth: 0.05, fillDepth: 0.05 } };
    const found = slope(davyDoubleLeaf(wall, { air, frequencies: [400, 800] }));
    expect(Math.abs(found - 18)).toBeLessThan(3.5);
  });

  it('gives finite numbers of 0 dB or more for legal extremes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10_000, noNaN: true }),
        depth,
        fc.double({ min: 5, max: 1e5, noNaN: true }),
        (m, d, fc0) => {
          const leaf = { surfaceMass: m, criticalFrequency: fc0, lossFactor: 0 };
          const wall = {
            leaves: [leaf, board] as const,
            cavity: { depth: d, fillDepth: 0 },
            cavityAbsorption: 0.1,
            size,
            largestAngleDeg: 61,
          };
          for (const loss of [
            ...connectedDoubleLeaf(
              wall,
              { kind: 'lines', spacing: 0.6, compliance: 0 },
              { air, frequencies: [50, 500, 5000] },
            ),
            ...sharpConnectedDoubleLeaf({ ...wall, absorptionRatio: 0 }, { kind: 'points', spacing: 0.3 }, { air }),
          ]) {
            expect(Number.isFinite(loss)).toBe(true);
            expect(loss).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { numRuns: 30 },
    );
  });

  it('lets steel studs carry less than rigid ones at 1 kHz', () => {
    const at = (compliance: number) =>
      connectedDoubleLeaf(davyWall, { kind: 'lines', spacing: 0.6, compliance }, { air, frequencies: [1000] })[0]!;
    expect(at(steelStudCompliance)).toBeGreaterThan(at(0) + 3);
  });
});

describe('against transfer matrices', () => {
  const plate = {
    kind: 'plate',
    thickness: 0.0125,
    density: 680,
    youngsModulus: 2.5e9,
    poissonRatio: 0.3,
    lossFactor: 0.02,
  } as const;
  const leaf = wallLeafOf(plate, air);

  it('multiLeafTransmissionLoss agrees with an empty cavity within 0.5 dB', () => {
    const frequencies = [63, 125, 250, 500];
    const wall = { leaves: [leaf, leaf], cavities: [{ depth: 0.1, fillDepth: 0, lossFactor: 0 }] };
    const field = { kind: 'limited', maximumAngleDeg: 40 } as const;
    const matrix = diffuseTransmissionLoss([plate, { kind: 'air-gap', thickness: 0.1 }, plate], frequencies, {
      air,
      field,
    });
    multiLeafTransmissionLoss(wall, 40, { air, frequencies }).forEach((loss, i) => {
      expect(Math.abs(loss - matrix[i]!)).toBeLessThan(0.5);
    });
  });

  it('Sharp is within 8 dB for filled boards from an octave above f0 to 1 kHz, Davy up to 8 dB below Sharp', () => {
    const layers = [plate, { kind: 'porous', thickness: 0.09, flowResistivity: 9000, density: 30 } as const, plate];
    const matrix = bandTransmissionLoss(layers, { air, field: { kind: 'finite', size } });
    const leaves = [leaf, leaf] as const;
    const sharp = sharpDoubleLeaf({ leaves, cavity: filled, absorptionRatio: 2 }, { air });
    const davy = davyDoubleLeaf({ leaves, cavity: filled, cavityAbsorption: 1, size, largestAngleDeg: 61 }, { air });
    for (let band = 6; band <= 13; band++) {
      expect(Math.abs(sharp[band]! - matrix[band]!)).toBeLessThan(8);
      expect(davy[band]!).toBeLessThan(sharp[band]! + 1);
      expect(davy[band]!).toBeGreaterThan(sharp[band]! - 8);
    }
  });
});

describe('springs', () => {
  it('add their compliances; a flange of 20 mm of 0.5 mm steel has about 1.1e-6 m2/N', () => {
    expect(complianceInSeries(1e-6, 2e-6)).toBeCloseTo(3e-6, 12);
    expect(flangeCompliance(0.02, 0.0005, 2.1e11, 0.3) * 1e6).toBeCloseTo(1.11, 2);
  });

  it('a flange that a board keeps from turning yields a quarter; two of 17.5 mm give 3.8e-7 m2/N', () => {
    const one = guidedFlangeCompliance(0.0175, 0.0005, 207e9, 0.3);
    expect(one).toBeCloseTo(flangeCompliance(0.0175, 0.0005, 207e9, 0.3) / 4, 16);
    expect(complianceInSeries(one, one) * 1e7).toBeCloseTo(3.77, 2);
    expect(() => guidedFlangeCompliance(0.0175, 0, 207e9, 0.3)).toThrow(ArgumentError);
  });

  it('pass everything far below resonance and 12 dB per octave less above', () => {
    expect(transmissibility(1, 100, 0.1)).toBeCloseTo(1, 3);
    expect(20 * Math.log10(transmissibility(4000, 100, 0.01) / transmissibility(8000, 100, 0.01))).toBeCloseTo(12, 1);
  });

  it('absorption of a cavity is that of two faces and of its rim', () => {
    expect(cavityAbsorptionRatio(0.1, { width: 2, height: 2 }, { face: 0.5, rim: 1 })).toBeCloseTo(1.2, 12);
  });

  it('a leaf has the stiffness its critical frequency says', () => {
    expect(
      wallLeafOf({ thickness: 0.01, density: 700, youngsModulus: 3e9, poissonRatio: 0.2, lossFactor: 0.01 }, air)
        .criticalFrequency,
    ).toBeGreaterThan(2000);
    expect(singlePanelOfLeaf(limp, air).stiffness).toBe(0);
  });
});

describe('chooseDoubleLeafModel(wall, air)', () => {
  const wall = { ...davyWall, leafCount: 2, layersKnown: true, connection: null };
  const lines = { kind: 'lines', spacing: 0.6, compliance: 0 } as const;

  it.each([
    ['three leaves', { ...wall, leafCount: 3 }, 'transfer-matrix'],
    ['no connections, layers known', wall, 'transfer-matrix'],
    ['no connections, layers unknown', { ...wall, layersKnown: false }, 'closed-form'],
    ['rigid lines, layers known', { ...wall, connection: lines }, 'transfer-matrix'],
    ['rigid lines, layers unknown', { ...wall, connection: lines, layersKnown: false }, 'connections'],
    ['lines that yield a little', { ...wall, connection: { ...lines, compliance: 1e-7 } }, 'transfer-matrix'],
    [
      'lines that yield, layers unknown',
      { ...wall, connection: { ...lines, compliance: 1e-7 }, layersKnown: false },
      'connections',
    ],
    ['rigid points', { ...wall, connection: { kind: 'points', spacing: 0.3, compliance: 0 } }, 'connections'],
    ['very soft points', { ...wall, connection: { kind: 'points', spacing: 0.6, compliance: 1 } }, 'transfer-matrix'],
  ] as const)('%s', (_name, question, model) => {
    const found = chooseDoubleLeafModel(question, air);
    expect(found.model).toBe(model);
    expect(found.reasons.length).toBeGreaterThan(0);
    for (const reason of found.reasons) expect(reason).not.toMatch(/\.$/);
  });

  it('says of yielding lines and of points why', () => {
    const yielding = chooseDoubleLeafModel({ ...wall, connection: { ...lines, compliance: 1e-7 } }, air);
    expect(yielding.reasons.join('; ')).toContain('yielding lines and every layer is known');
    const points = { kind: 'points', spacing: 0.3, compliance: 0 } as const;
    const onPoints = chooseDoubleLeafModel({ ...wall, connection: points }, air);
    expect(onPoints.reasons.join('; ')).toContain('along lines only, these are points');
  });

  it('judges by closed forms, whose studs pass 1 to 4 dB less and whose air 5 to 15 dB more than the transfer matrices', () => {
    const sheet = {
      kind: 'plate',
      thickness: 0.0125,
      density: 680,
      youngsModulus: 2.5e9,
      poissonRatio: 0.3,
      lossFactor: 0.03,
    } as const;
    const leaf = wallLeafOf(sheet, air);
    const size = { width: 4, height: 2.5 };
    const closed = davyDoubleLeaf(
      {
        leaves: [leaf, leaf],
        cavity: { depth: 0.09, fillDepth: 0.09 },
        cavityAbsorption: 1,
        size,
        largestAngleDeg: davyLargestAngleDeg,
      },
      { air },
    );
    for (const compliance of [0, 1e-6]) {
      const { airborne, connections } = wallTransmissionLoss(
        {
          layers: [sheet, { kind: 'porous', thickness: 0.09, flowResistivity: 9000 }, sheet],
          connections: [{ between: [0, 2], spacing: 0.6, compliance }],
        },
        { air, field: { kind: 'finite', size } },
      );
      thirdOctaveBands.forEach(({ exact, nominal }, band) => {
        if (nominal < 200 || nominal > 2000) return;
        const path = connectionPathTransmission([leaf, leaf], { ...lines, compliance }, exact, air);
        const weaker = -10 * Math.log10(path) - connections![band]!;
        expect(weaker, `studs at ${nominal} Hz`).toBeGreaterThan(1);
        expect(weaker, `studs at ${nominal} Hz`).toBeLessThan(4);
        const stronger = airborne[band]! - closed[band]!;
        expect(stronger, `air at ${nominal} Hz`).toBeGreaterThan(5);
        expect(stronger, `air at ${nominal} Hz`).toBeLessThan(15);
      });
    }
  });
});

it('names what cannot be', () => {
  expect(() => davyDoubleLeaf({ ...davyWall, cavityAbsorption: 0 }, { air })).toThrow(ArgumentError);
  expect(() => sharpDoubleLeaf({ ...sharpWall, cavity: { depth: 0.1, fillDepth: 0.2 } }, { air })).toThrow(
    /depth of the fill is 0.2/,
  );
  expect(() => sharpDoubleLeaf({ ...sharpWall, leaves: [board, { ...board, surfaceMass: 0 }] }, { air })).toThrow(
    /surface mass of the second leaf is 0/,
  );
  expect(() => sharpDoubleLeaf(sharpWall, { air, frequencies: [0] })).toThrow(/frequency is 0/);
  expect(() =>
    multiLeafTransmissionLoss({ leaves: [board], cavities: [{ ...filled, lossFactor: 0 }] }, 78, { air }),
  ).toThrow(/number of cavities is 1, expected 0/);
});
