import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { bendingStiffness } from '../../src/panels/bending-stiffness.js';
import { criticalFrequency } from '../../src/panels/critical-frequency.js';
import { firstPanelResonance } from '../../src/panels/first-panel-resonance.js';
import { massLawField, massLawNormal } from '../../src/panels/mass-law.js';
import { panelVolumeImpedance } from '../../src/panels/panel-volume-impedance.js';
import type { Plate } from '../../src/panels/plate.js';
import { checkPlate } from '../../src/panels/plate.js';
import { plateImpedance } from '../../src/panels/plate-impedance.js';
import { radiationEfficiency } from '../../src/panels/radiation-efficiency.js';
import { shearParameter } from '../../src/panels/shear-parameter.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const plate: Plate = { thickness: 0.01, density: 1000, youngsModulus: 12e9, poissonRatio: 0, lossFactor: 0.02 };

describe('bendingStiffness(plate)', () => {
  it('is E h^3/12 without Poisson ratio and more with it', () => {
    expect(bendingStiffness(plate)).toBeCloseTo(1000, 9);
    expect(bendingStiffness({ ...plate, poissonRatio: 0.5 })).toBeCloseTo(1000 / 0.75, 9);
  });
});

describe('criticalFrequency(plate, air)', () => {
  it('is where the bending wave is as fast as sound', () => {
    const fc = criticalFrequency(plate, air);
    const bendingSpeed = ((1000 * (2 * Math.PI * fc) ** 2) / 10) ** 0.25;
    expect(bendingSpeed).toBeCloseTo(air.soundSpeed, 9);
  });

  it('is infinite for a plate without stiffness', () => {
    expect(criticalFrequency({ ...plate, youngsModulus: 0 }, air)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('shearParameter(plate, hz, air)', () => {
  it('is B k^2/(kappa G h), worked by hand', () => {
    // B = 1000 N m, G = 6 GPa, h = 10 mm, kappa = 5/6: s = 1000 k^2/5e7.
    const k = (2 * Math.PI * 1000) / air.soundSpeed;
    expect(shearParameter(plate, 1000, air)).toBeCloseTo((1000 * k * k) / 5e7, 12);
  });

  it('of an isotropic plate without Poisson ratio is (k h)^2/5, whatever its modulus', () => {
    const kh = ((2 * Math.PI * 1000) / air.soundSpeed) * 0.01;
    for (const youngsModulus of [1e8, 12e9, 2e11]) {
      expect(shearParameter({ ...plate, youngsModulus }, 1000, air)).toBeCloseTo((kh * kh) / 5, 12);
    }
  });

  it('goes with the inverse of a stated shear modulus, and is 0 without stiffness', () => {
    const soft = shearParameter({ ...plate, shearModulus: 6e7 }, 1000, air);
    expect(soft / shearParameter(plate, 1000, air)).toBeCloseTo(100, 9);
    expect(shearParameter({ ...plate, youngsModulus: 0 }, 1000, air)).toBe(0);
  });
});

describe('plateImpedance(plate, hz, sinTheta, air)', () => {
  const fc = criticalFrequency(plate, air);

  it('is a mass at normal incidence and pure loss at coincidence, which shear moves to where sin^4 = (fc/f)^2 (1 + s sin^2)', () => {
    const normal = plateImpedance(plate, 500, 0, air);
    expect(normal.re).toBe(0);
    expect(normal.im).toBeCloseTo(2 * Math.PI * 500 * 10, 6);
    const ratio = 1 / 4;
    const shear = shearParameter(plate, 2 * fc, air);
    const sineSquared = (ratio * shear + Math.sqrt((ratio * shear) ** 2 + 4 * ratio)) / 2;
    const found = plateImpedance(plate, 2 * fc, Math.sqrt(sineSquared), air);
    expect(found.im / (2 * Math.PI * 2 * fc * 10)).toBeCloseTo(0, 9);
    expect(found.re / (2 * Math.PI * 2 * fc * 10)).toBeCloseTo(0.02, 9);
  });

  it('is that of a thin plate, with coincidence at sin^2 = fc/f, when it does not yield in shear', () => {
    const found = plateImpedance({ ...plate, shearModulus: 1e20 }, 2 * fc, Math.SQRT1_2, air);
    expect(found.im / (2 * Math.PI * 2 * fc * 10)).toBeCloseTo(0, 9);
    expect(found.re / (2 * Math.PI * 2 * fc * 10)).toBeCloseTo(0.02, 9);
  });

  it('tends to that of a membrane held by G h when shear is all that gives way', () => {
    // kappa G h k_t^2/(j omega) in place of B k_t^4/(j omega).
    const soft = { ...plate, shearModulus: 1e3, lossFactor: 0 };
    const omega = 2 * Math.PI * 4000;
    const trace = (omega / air.soundSpeed) * 0.8;
    const expected = omega * 10 - ((5 / 6) * 1e3 * 0.01 * trace ** 2) / omega;
    expect(plateImpedance(soft, 4000, 0.8, air).im / expected).toBeCloseTo(1, 9);
  });

  it('is never active and has no more bending with shear than without', () => {
    for (const sine of [0.1, 0.5, 0.9, 1]) {
      for (const hz of [50, 500, 5000]) {
        const found = plateImpedance(plate, hz, sine, air);
        const stiff = plateImpedance({ ...plate, shearModulus: 1e20 }, hz, sine, air);
        expect(found.re).toBeGreaterThanOrEqual(0);
        expect(found.re).toBeLessThanOrEqual(stiff.re);
        expect(found.im).toBeGreaterThanOrEqual(stiff.im);
      }
    }
  });
});

describe('massLawNormal and massLawField(hz, surfaceMass, air)', () => {
  it('rise by 6 dB per doubling of mass or frequency once the mass is heavy', () => {
    expect(massLawNormal(1000, 20, air) - massLawNormal(500, 20, air)).toBeCloseTo(6.02, 2);
    expect(massLawNormal(500, 40, air) - massLawNormal(500, 20, air)).toBeCloseTo(6.02, 2);
  });

  it('differ by the correction but never go below 0', () => {
    expect(massLawNormal(500, 20, air) - massLawField(500, 20, air, 5)).toBeCloseTo(5, 9);
    expect(massLawField(50, 0.1, air)).toBe(0);
  });
});

describe('firstPanelResonance(plate, a, b, edges)', () => {
  it('of a simply supported square is pi sqrt(B/m)/a^2', () => {
    const found = firstPanelResonance(plate, 2, 2, 'simply-supported');
    expect(found).toBeCloseTo((Math.PI * Math.sqrt(1000 / 10)) / 4, 9);
  });

  it('of a clamped square is 35.99/(2 pi a^2) sqrt(B/m) within 1 % (A.W. Leissa: Vibration of Plates, 1969, from memory)', () => {
    const found = firstPanelResonance(plate, 1, 1, 'clamped');
    expect(Math.abs(found / ((35.99 / (2 * Math.PI)) * Math.sqrt(100)) - 1)).toBeLessThan(0.01);
  });

  it('of a clamped long strip tends to that of a clamped beam, 22.37/(2 pi a^2) sqrt(B/m)', () => {
    const found = firstPanelResonance(plate, 1, 100, 'clamped');
    expect(Math.abs(found / ((22.37 / (2 * Math.PI)) * Math.sqrt(100)) - 1)).toBeLessThan(0.01);
  });

  it('between the two is their geometric mean', () => {
    const [low, high] = (['simply-supported', 'clamped'] as const).map((edges) =>
      firstPanelResonance(plate, 1, 0.7, edges),
    );
    expect(firstPanelResonance(plate, 1, 0.7, 'between')).toBeCloseTo(Math.sqrt(low! * high!), 9);
  });
});

describe('panelVolumeImpedance(panel, a, b, edges, hz)', () => {
  const panel = { surfaceMass: 10, stiffness: 1000, lossFactor: 0.02 };
  const first = firstPanelResonance(plate, 1, 0.8, 'simply-supported');

  it('is a stiffness far below the first resonance: that of a uniformly loaded plate', () => {
    // Static mean deflection of a simply supported square plate under pressure p: Navier's series, summed here to high order.
    let sum = 0;
    for (let m = 1; m < 200; m += 2) {
      for (let n = 1; n < 200; n += 2) {
        sum += 64 / (Math.PI ** 8 * m * m * n * n * (m * m + (n * n) / 0.64) ** 2);
      }
    }
    const stiffness = 1000 / sum;
    const hz = first / 50;
    const found = panelVolumeImpedance(panel, 1, 0.8, 'simply-supported', hz);
    expect((-found.im * 2 * Math.PI * hz) / stiffness).toBeCloseTo(1, 2);
  });

  it('is nearly resistive at the first resonance and a mass far above it, on average', () => {
    const at = panelVolumeImpedance(panel, 1, 0.8, 'simply-supported', first);
    expect(Math.abs(at.im)).toBeLessThan(at.re);
    // Between its higher resonances the impedance swings around that of the mass.
    const limp = panelVolumeImpedance({ ...panel, stiffness: 0 }, 1, 0.8, 'simply-supported', 1000);
    expect(limp).toEqual({ re: 0, im: 2 * Math.PI * 1000 * 10 });
  });
});

describe('radiationEfficiency(hz, criticalHz, size, air)', () => {
  const size = { width: 4, height: 2.5 };

  it('is 1/sqrt(1 - fc/f) above the critical frequency and tends to 1', () => {
    expect(radiationEfficiency(2000, 1000, size, air)).toBeCloseTo(Math.SQRT2, 9);
    expect(radiationEfficiency(50_000, 1000, size, air)).toBeCloseTo(1, 1);
  });

  it('is small far below the critical frequency and grows towards it', () => {
    const values = [100, 200, 400, 800, 1600].map((hz) => radiationEfficiency(hz, 2500, size, air));
    expect(values[0]).toBeLessThan(0.05);
    for (let i = 1; i < values.length; i++) expect(values[i]!).toBeGreaterThan(values[i - 1]!);
  });

  it('is never above 2 and never below 0', () => {
    for (let hz = 20; hz < 10_000; hz *= 1.05) {
      for (const fc of [60, 300, 2500, 20_000]) {
        const found = radiationEfficiency(hz, fc, size, air);
        expect(found).toBeGreaterThanOrEqual(0);
        expect(found).toBeLessThanOrEqual(2);
      }
    }
  });

  it('is 0 for a leaf without stiffness, which has no free bending waves', () => {
    expect(radiationEfficiency(1000, Number.POSITIVE_INFINITY, size, air)).toBe(0);
  });
});

describe('checkPlate(plate)', () => {
  it('names the property that cannot be', () => {
    expect(() => checkPlate({ ...plate, thickness: -1 })).toThrow('plate thickness is -1');
    expect(() => checkPlate({ ...plate, density: 0 })).toThrow('plate density is 0');
    expect(() => checkPlate({ ...plate, youngsModulus: Number.NaN })).toThrow('plate modulus is NaN');
    expect(() => checkPlate({ ...plate, thickness: 12.5 })).toThrow('plate thickness is 12.5');
    expect(() => checkPlate({ ...plate, poissonRatio: 0.51 })).toThrow("Poisson's ratio is 0.51");
    expect(() => checkPlate({ ...plate, lossFactor: 1.01 })).toThrow('loss factor is 1.01');
    expect(() => checkPlate({ ...plate, lossFactor: -0.1 })).toThrow('loss factor is -0.1');
    expect(() => checkPlate({ ...plate, shearModulus: 0 })).toThrow('shear modulus is 0');
    expect(() => checkPlate({ ...plate, crossModulus: -1 })).toThrow('modulus across the grain is -1');
  });
});
