import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { diffuseTransmissionLoss } from '../../src/layered/diffuse-transmission-loss.js';
import { finiteRadiationFactor } from '../../src/layered/finite-radiation-factor.js';
import { gaussLegendre } from '../../src/math/gauss-legendre.js';
import { cremerTransmissionLoss } from '../../src/panels/cremer-transmission-loss.js';
import { criticalFrequency, criticalFrequencyOf } from '../../src/panels/critical-frequency.js';
import { davyRadiationFactor } from '../../src/panels/davy-radiation-factor.js';
import { davyTransmissionLoss } from '../../src/panels/davy-transmission-loss.js';
import { edgeLossFactor } from '../../src/panels/edge-loss-factor.js';
import { forcedRadiationFactor } from '../../src/panels/forced-radiation-factor.js';
import { limitingAngle } from '../../src/panels/limiting-angle.js';
import { lowFrequencyTransmissionLoss, panelStaticStiffness } from '../../src/panels/low-frequency-panel.js';
import {
  massLawField,
  massLawLimited,
  massLawNormal,
  massLawOblique,
  massLawRandom,
  massLawRuleOfThumb,
} from '../../src/panels/mass-law.js';
import { monolithicTransmissionLoss, thickCriticalFrequency } from '../../src/panels/monolithic-transmission-loss.js';
import { orthotropicTransmissionLoss } from '../../src/panels/orthotropic-transmission-loss.js';
import { plateauMaterials, plateauTransmissionLoss } from '../../src/panels/plateau-transmission-loss.js';
import { sewellTransmissionLoss } from '../../src/panels/sewell-transmission-loss.js';
import { sharpCoincidenceLoss, sharpTransmissionLoss } from '../../src/panels/sharp-transmission-loss.js';
import { type SinglePanel, singlePanelOf } from '../../src/panels/single-panel.js';
import { laboratoryLossFactor, totalLossFactor } from '../../src/panels/total-loss-factor.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const glass = { thickness: 0.006, density: 2500, youngsModulus: 6.2e10, poissonRatio: 0.24, lossFactor: 0.024 };
const panel = singlePanelOf(glass);
const fcGlass = criticalFrequency(glass, air);
const size = { width: 1.25, height: 1.5 };
/** The exact integral over all directions of an infinite thin plate. */
const thinPlate = (hz: number) =>
  orthotropicTransmissionLoss(
    { surfaceMass: 15, stiffnessAlong: panel.stiffness, stiffnessAcross: panel.stiffness, lossFactor: 0.024 },
    90,
    hz,
    air,
  );
const frequency = fc.double({ min: 20, max: 10_000, noNaN: true });
const mass = fc.double({ min: 0.5, max: 800, noNaN: true });
const rule = gaussLegendre(40);
/** Mean over the cosine of the angle: the diffuse field of a forced radiation factor. */
const overCosine = (of: (u: number) => number) =>
  rule.nodes.reduce((sum, node, i) => sum + (rule.weights[i]! / 2) * of((node + 1) / 2), 0);

describe('mass laws', () => {
  it('oblique is normal at 0 degrees, 0 dB at 90, and never rises with the angle', () => {
    expect(massLawOblique(500, 20, 0, air)).toBe(massLawNormal(500, 20, air));
    expect(massLawOblique(500, 20, 90, air)).toBeCloseTo(0, 9);
    fc.assert(
      fc.property(frequency, mass, fc.double({ min: 0, max: 80, noNaN: true }), (hz, m, angle) => {
        expect(massLawOblique(hz, m, angle + 10, air)).toBeLessThanOrEqual(massLawOblique(hz, m, angle, air));
      }),
    );
    expect(() => massLawOblique(500, 20, 91, air)).toThrow(ArgumentError);
  });

  it('limited is the mean of the oblique one over sin^2, and normal for a narrow cone', () => {
    for (const limit of [30, 78, 90]) {
      const sine = Math.sin((limit * Math.PI) / 180) ** 2;
      const mean = rule.nodes.reduce((sum, node, i) => {
        const angle = (Math.asin(Math.sqrt((sine * (node + 1)) / 2)) * 180) / Math.PI;
        return sum + (rule.weights[i]! / 2) * 10 ** (-massLawOblique(100, 5, angle, air) / 10);
      }, 0);
      expect(massLawLimited(100, 5, limit, air)).toBeCloseTo(-10 * Math.log10(mean), 3);
    }
    expect(massLawLimited(500, 20, 0.01, air)).toBeCloseTo(massLawNormal(500, 20, air), 4);
  });

  it('random is close to R0 - 10 lg(0.23 R0), and between 0 dB and the normal one', () => {
    const normal = massLawNormal(500, 20, air);
    expect(massLawRandom(500, 20, air)).toBeCloseTo(normal - 10 * Math.log10(0.23 * normal), 1);
    fc.assert(
      fc.property(frequency, mass, (hz, m) => {
        expect(massLawRandom(hz, m, air)).toBeGreaterThanOrEqual(0);
        expect(massLawRandom(hz, m, air)).toBeLessThanOrEqual(massLawNormal(hz, m, air) + 1e-9);
      }),
    );
    expect(massLawRandom(500, 0, air)).toBe(0);
  });

  // A regression fixture of a public acoustics library; it contains the 1 of 1 + x^2.
  it.each([
    [200, 10, 0, 1.225, 343, 23.514371494],
    [150, 16, 20, 1.18, 345, 24.827231087],
  ])(
    'oblique meets 20 lg(pi f m cos(theta)/(rho c)) of a common fixture: %d Hz',
    (hz, m, angle, density, soundSpeed, db) => {
      const other = { ...air, density, soundSpeed, impedance: density * soundSpeed };
      expect(massLawOblique(hz, m, angle, other)).toBeCloseTo(db, 4);
    },
  );

  it('the rule of thumb gains 6 dB per doubling', () => {
    expect(massLawRuleOfThumb(500, 40) - massLawRuleOfThumb(500, 20)).toBeCloseTo(6.02, 2);
    expect(() => massLawRuleOfThumb(0, 20)).toThrow('frequency is 0');
  });
});

describe('every single-panel model', () => {
  const limp = (surfaceMass: number): SinglePanel => ({ surfaceMass, stiffness: 0, lossFactor: 0.02 });
  const models: [string, (p: SinglePanel, hz: number) => number][] = [
    ['Sharp', (p, hz) => sharpTransmissionLoss(p, hz, air)],
    ['Sewell', (p, hz) => sewellTransmissionLoss(p, size, hz, air)],
    ['Davy', (p, hz) => davyTransmissionLoss(p, size, hz, air)],
    ['monolithic', (p, hz) => monolithicTransmissionLoss({ panel: p, size, totalLossFactor: 0.02 }, hz, air)],
  ];

  it.each(models)('%s rises with the mass of a limp panel', (_, model) => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 5000, noNaN: true }), mass, (hz, m) => {
        expect(model(limp(m * 1.5), hz)).toBeGreaterThanOrEqual(model(limp(m), hz));
      }),
      { numRuns: 40 },
    );
  });

  it.each(models)(
    '%s is within 3 dB of the field-incidence mass law far below fc, at 500 Hz for 15 kg/m2',
    (_, model) => {
      expect(Math.abs(model(limp(15), 500) - massLawField(500, 15, air))).toBeLessThan(3);
      expect(Math.abs(model({ ...panel, stiffness: 1 }, 500) - model(limp(15), 500))).toBeLessThan(0.5);
    },
  );

  it('Sharp, Davy and monolithic are never negative and finite from 20 Hz to 10 kHz', () => {
    fc.assert(
      fc.property(frequency, mass, fc.double({ min: 1, max: 1e7, noNaN: true }), (hz, surfaceMass, stiffness) => {
        const any = { surfaceMass, stiffness, lossFactor: 0.01 };
        for (const [name, model] of models) {
          if (name === 'Sewell') continue;
          const found = model(any, hz);
          expect(Number.isFinite(found)).toBe(true);
          expect(found).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('refuses a panel without mass', () => {
    for (const [, model] of models) expect(() => model(limp(0), 500)).toThrow('surface mass of the panel is 0');
  });
});

describe('sharpTransmissionLoss(panel, hz, air)', () => {
  it('is the mass law up to fc/2, the stated value at fc, and rises by 9 dB per octave above', () => {
    expect(sharpTransmissionLoss(panel, fcGlass / 2, air)).toBe(massLawField(fcGlass / 2, 15, air));
    expect(sharpTransmissionLoss(panel, fcGlass, air)).toBeCloseTo(sharpCoincidenceLoss(panel, air), 9);
    const above = [1.2, 2.4].map((ratio) => sharpTransmissionLoss(panel, fcGlass * ratio, air));
    expect(above[1]! - above[0]!).toBeCloseTo(9.03, 2);
  });

  it('ends at the normal-incidence mass law', () => {
    expect(sharpTransmissionLoss(panel, 1e7, air)).toBe(massLawNormal(1e7, 15, air));
  });
});

describe('cremerTransmissionLoss(panel, hz, air)', () => {
  it('meets the integral over all directions within 0.6 dB at 1.2 fc and 0.3 dB from 1.5 fc on', () => {
    for (const ratio of [1.2, 1.5, 2, 4]) {
      const exact = thinPlate(fcGlass * ratio);
      expect(Math.abs(cremerTransmissionLoss(panel, fcGlass * ratio, air) - exact), `${ratio}`).toBeLessThan(
        ratio < 1.5 ? 0.6 : 0.3,
      );
    }
  });

  it('is R0 + 10 lg[(2 eta/pi)(f/fc - 1)] where damping rules', () => {
    const heavy = { ...panel, surfaceMass: 1e5, stiffness: panel.stiffness * 1e4, lossFactor: 0.1 };
    const hz = 2 * criticalFrequencyOf(heavy.surfaceMass, heavy.stiffness, air);
    const expected = massLawNormal(hz, heavy.surfaceMass, air) + 10 * Math.log10(0.2 / Math.PI);
    expect(cremerTransmissionLoss(heavy, hz, air)).toBeCloseTo(expected, 1);
  });

  it('has no answer at fc', () => {
    expect(() => cremerTransmissionLoss(panel, fcGlass, air)).toThrow('above the critical frequency');
    expect(() => sewellTransmissionLoss(panel, size, fcGlass, air)).toThrow('below the critical frequency');
  });
});

describe('forced radiation of a finite panel', () => {
  const sizes = [size, { width: 4, height: 1 }, { width: 5, height: 2 }];

  it('forcedRadiationFactor is within 1 % of the exact window from k sqrt(S) = 3 on, until it is capped at 2', () => {
    for (const window of sizes) {
      for (const hz of [200, 500, 1000]) {
        const k = (2 * Math.PI * hz) / air.soundSpeed;
        const exact = overCosine((u) => finiteRadiationFactor(k, Math.sqrt(1 - u * u), window));
        expect(Math.abs(forcedRadiationFactor(hz, window, air) / Math.min(2, exact) - 1)).toBeLessThan(0.01);
      }
    }
  });

  it('forcedRadiationFactor is within 0 and 2 for every panel, and that of a piston when tiny', () => {
    const side = fc.double({ min: 0.02, max: 20, noNaN: true });
    fc.assert(
      fc.property(frequency, side, side, (hz, width, height) => {
        const found = forcedRadiationFactor(hz, { width, height }, air);
        expect(found).toBeGreaterThan(0);
        expect(found).toBeLessThanOrEqual(2);
      }),
    );
    const k = (2 * Math.PI * 50) / air.soundSpeed;
    expect(forcedRadiationFactor(50, { width: 0.1, height: 0.1 }, air)).toBeCloseTo((k * 0.1) ** 2 / (2 * Math.PI), 9);
  });

  it('davyRadiationFactor is within 0.7 dB of the exact window at every angle', () => {
    for (const window of sizes) {
      for (const hz of [50, 100, 200, 500, 1000, 3000]) {
        const k = (2 * Math.PI * hz) / air.soundSpeed;
        for (const u of [0, 0.1, 0.3, 0.6, 1]) {
          const exact = finiteRadiationFactor(k, Math.sqrt(1 - u * u), window);
          expect(Math.abs(10 * Math.log10(davyRadiationFactor(hz, u, window, air) / exact))).toBeLessThan(0.7);
        }
      }
    }
  });

  it('limitingAngle gives the mass law of a finite panel within 1 dB, and 0 for a panel smaller than the sound', () => {
    for (const hz of [100, 250, 500, 1000]) {
      const cut = massLawLimited(hz, 40, limitingAngle(hz, size, air, 90), air);
      const sine = Math.sin((limitingAngle(hz, size, air, 90) * Math.PI) / 180) ** 2;
      // Davy counts the directions left out as sent back: the energy is that of the whole field.
      const forced = sewellTransmissionLoss({ surfaceMass: 40, stiffness: 0, lossFactor: 0 }, size, hz, air);
      expect(Math.abs(cut - 10 * Math.log10(sine) - forced)).toBeLessThan(1);
    }
    expect(limitingAngle(20, { width: 0.3, height: 0.3 }, air)).toBe(0);
    expect(limitingAngle(5000, size, air)).toBe(80);
  });
});

describe('davyTransmissionLoss(panel, size, hz, air)', () => {
  it('is within 0.5 dB of the spatial windowing of the layered model from 125 Hz to fc/1.3 and above 1.2 fc', () => {
    for (const hz of [125, 250, 500, 1000, 1600, 2600, 4000, 8000]) {
      const [windowed] = diffuseTransmissionLoss([{ kind: 'plate', ...glass }], [hz], {
        air,
        field: { kind: 'finite', size },
      });
      expect(Math.abs(davyTransmissionLoss(panel, size, hz, air) - windowed!), `${hz}`).toBeLessThan(0.5);
    }
  });

  it('of a very large panel is the infinite one', () => {
    expect(davyTransmissionLoss(panel, { width: 1000, height: 1000 }, 4000, air)).toBeCloseTo(thinPlate(4000), 1);
  });
});

describe('monolithicTransmissionLoss({ panel, size, totalLossFactor }, hz, air)', () => {
  const wall = singlePanelOf({
    thickness: 0.15,
    density: 2300,
    youngsModulus: 2.6e10,
    poissonRatio: 0.2,
    lossFactor: 0.005,
  });
  const opening = { width: 4, height: 2.5 };

  it('above fc is Cremer far above it, for the same loss factor', () => {
    const found = monolithicTransmissionLoss({ panel: wall, size: opening, totalLossFactor: 0.05 }, 2000, air);
    expect(Math.abs(found - cremerTransmissionLoss({ ...wall, lossFactor: 0.05 }, 2000, air))).toBeLessThan(0.5);
  });

  it('rises by 10 lg 2 per doubling of the loss factor above fc', () => {
    const at = (totalLossFactor: number) =>
      monolithicTransmissionLoss({ panel: wall, size: opening, totalLossFactor }, 1000, air);
    expect(at(0.04) - at(0.02)).toBeCloseTo(3.01, 2);
    expect(() => at(0)).toThrow('total loss factor is 0');
  });

  it('is lower with shear in a thick wall at high frequencies', () => {
    const thick = { thickness: 0.15, longitudinalSpeed: 3430 };
    const at = (extra: object) =>
      monolithicTransmissionLoss({ panel: wall, size: opening, totalLossFactor: 0.02, ...extra }, 2000, air);
    expect(at({ thick })).toBeLessThan(at({}));
    expect(thickCriticalFrequency(100, 0, 3000, 2000)).toBe(100);
  });

  it('the two branches of the thick critical frequency meet within 2 %', () => {
    const limit = 3000 / (5.5 * 0.2);
    const [below, above] = [0.999999, 1.000001].map((ratio) => thickCriticalFrequency(100, 0.2, 3000, limit * ratio));
    expect(Math.abs(above! / below! - 1)).toBeLessThan(0.02);
  });
});

describe('total loss factors', () => {
  it('add inner, radiated and border loss, and fall towards the inner one', () => {
    expect(totalLossFactor(panel, size, 0, 100, air)).toBeGreaterThan(panel.lossFactor);
    expect(totalLossFactor(panel, size, 0.2, 100, air)).toBeGreaterThan(totalLossFactor(panel, size, 0.1, 100, air));
    for (const surfaceMass of [10, 240, 800, 5000]) {
      const added = laboratoryLossFactor({ ...panel, surfaceMass }, 500) - panel.lossFactor;
      expect(added).toBeCloseTo(edgeLossFactor(surfaceMass, 500), 12);
    }
    expect(laboratoryLossFactor(panel, 1e12)).toBeCloseTo(panel.lossFactor, 6);
    expect(() => totalLossFactor(panel, size, 1.1, 100, air)).toThrow('absorption of the borders is 1.1');
  });
});

describe('lowFrequencyTransmissionLoss(panel, size, edges, hz, air)', () => {
  const small = { width: 0.5, height: 0.4 };

  it('below resonance is 20 lg(K/(4 pi f rho c)), 6 dB less per octave', () => {
    const at = (hz: number) => lowFrequencyTransmissionLoss(panel, small, 'clamped', hz, air);
    const stiffness = panelStaticStiffness(panel, small, 'clamped');
    expect(at(2)).toBeCloseTo(20 * Math.log10(stiffness / (8 * Math.PI * air.impedance)), 1);
    expect(at(2) - at(4)).toBeCloseTo(6.02, 1);
  });

  it('of a limp panel is the normal-incidence mass law', () => {
    const limp = { ...panel, stiffness: 0 };
    expect(lowFrequencyTransmissionLoss(limp, small, 'clamped', 100, air)).toBeCloseTo(massLawNormal(100, 15, air), 9);
    expect(panelStaticStiffness(limp, small, 'clamped')).toBe(0);
  });

  it('is never negative: a passive panel', () => {
    fc.assert(
      fc.property(frequency, mass, (hz, surfaceMass) => {
        const any = { surfaceMass, stiffness: 1000, lossFactor: 0.01 };
        expect(lowFrequencyTransmissionLoss(any, small, 'simply-supported', hz, air)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('plateauTransmissionLoss(material, thickness, hz, air)', () => {
  it('is continuous at both ends of the plateau and rises by 10 dB per octave above', () => {
    const at = (hz: number) => plateauTransmissionLoss(plateauMaterials.glass, 0.006, hz, air);
    const hz = Array.from({ length: 400 }, (_, i) => 50 * 1.02 ** i);
    for (let i = 1; i < hz.length; i++) {
      expect(at(hz[i]!) - at(hz[i - 1]!)).toBeLessThan(0.3);
      expect(at(hz[i]!)).toBeGreaterThanOrEqual(at(hz[i - 1]!) - 1e-9);
    }
    expect(at(40_000) - at(20_000)).toBeCloseTo(10, 9);
  });
});
