import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { diffuseTransmissionLoss } from '../../src/layered/diffuse-transmission-loss.js';
import { bendingStiffness } from '../../src/panels/bending-stiffness.js';
import {
  constrainedLayerCriticalFrequency,
  constrainedLayerPanelAt,
  constrainedLayerStiffness,
} from '../../src/panels/constrained-layer.js';
import { corrugatedPanel } from '../../src/panels/corrugated-panel.js';
import { criticalFrequency, criticalFrequencyOf } from '../../src/panels/critical-frequency.js';
import { laminatedPanel } from '../../src/panels/laminated-panel.js';
import { plateLongitudinalSpeed, shearModulus } from '../../src/panels/longitudinal-speed.js';
import { thickCriticalFrequency } from '../../src/panels/monolithic-transmission-loss.js';
import { orthotropicCriticalFrequencies, orthotropicImpedance } from '../../src/panels/orthotropic-panel.js';
import { orthotropicTransmissionLoss } from '../../src/panels/orthotropic-transmission-loss.js';
import { ribbedPanel } from '../../src/panels/ribbed-panel.js';
import { singlePanelOf } from '../../src/panels/single-panel.js';
import {
  mindlinShearFactor,
  thickPlateCriticalFrequency,
  thickPlateImpedance,
} from '../../src/panels/thick-plate-impedance.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const board = { thickness: 0.0125, density: 750, youngsModulus: 2.5e9, poissonRatio: 0.3, lossFactor: 0.02 };
const steel = { thickness: 0.001, density: 7800, youngsModulus: 2.1e11, poissonRatio: 0.3, lossFactor: 0.001 };
const core = { thickness: 0.0005, density: 1200, shearModulus: 1e6, lossFactor: 1 };
const concrete = { thickness: 0.2, density: 2300, youngsModulus: 2.6e10, poissonRatio: 0.2, lossFactor: 0.01 };

describe('laminatedPanel(sheets, bond)', () => {
  it('of two like sheets is twice as stiff sliding and eight times glued, as one sheet of twice the thickness', () => {
    const one = bendingStiffness(board);
    expect(laminatedPanel([board, board], 'sliding').stiffness / one).toBeCloseTo(2, 9);
    expect(laminatedPanel([board, board], 'glued').stiffness / one).toBeCloseTo(8, 9);
    expect(laminatedPanel([board, board], 'glued').stiffness).toBeCloseTo(
      bendingStiffness({ ...board, thickness: 0.025 }),
      6,
    );
  });

  it('glued is never softer than sliding, masses add, the order of sheets does not matter when turned over', () => {
    const sheet = fc.record({
      thickness: fc.double({ min: 0.001, max: 0.05, noNaN: true }),
      density: fc.double({ min: 100, max: 8000, noNaN: true }),
      youngsModulus: fc.double({ min: 1e8, max: 2e11, noNaN: true }),
      poissonRatio: fc.constant(0.3),
      lossFactor: fc.double({ min: 0, max: 0.1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(sheet, { minLength: 1, maxLength: 4 }), (sheets) => {
        const glued = laminatedPanel(sheets, 'glued');
        const sliding = laminatedPanel(sheets, 'sliding');
        expect(glued.stiffness).toBeGreaterThanOrEqual(sliding.stiffness * (1 - 1e-12));
        expect(laminatedPanel([...sheets].reverse(), 'glued').stiffness / glued.stiffness).toBeCloseTo(1, 9);
        expect(glued.surfaceMass).toBe(sliding.surfaceMass);
        expect(glued.lossFactor).toBeLessThanOrEqual(0.1 + 1e-12);
      }),
    );
    expect(() => laminatedPanel([], 'glued')).toThrow('number of sheets is 0');
  });
});

describe('constrained-layer panel', () => {
  const panel = { base: steel, cover: steel, core };

  it('slides for short waves and is glued for long ones', () => {
    const thin = { ...core, thickness: 1e-7 };
    const sliding = laminatedPanel([steel, steel], 'sliding');
    expect(constrainedLayerStiffness({ ...panel, core }, 1e6).stiffness / sliding.stiffness).toBeCloseTo(1, 4);
    const glued = laminatedPanel([steel, steel], 'glued');
    expect(constrainedLayerStiffness({ ...panel, core: thin }, 0.01).stiffness / glued.stiffness).toBeCloseTo(1, 3);
  });

  it('is damped most in between, above the damping of its plates and below that of the core', () => {
    const losses = Array.from({ length: 60 }, (_, i) => constrainedLayerPanelAt(panel, 10 * 1.15 ** i).lossFactor);
    const most = Math.max(...losses);
    const at = losses.indexOf(most);
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(59);
    expect(most).toBeGreaterThan(0.2);
    expect(most).toBeLessThan(core.lossFactor);
  });

  it('at a frequency carries the free wave of its own stiffness, softer as the frequency rises', () => {
    const low = constrainedLayerPanelAt(panel, 50);
    const high = constrainedLayerPanelAt(panel, 5000);
    expect(high.stiffness).toBeLessThan(low.stiffness);
    const omega = 2 * Math.PI * 50;
    const k = ((omega ** 2 * low.surfaceMass) / low.stiffness) ** 0.25;
    expect(constrainedLayerStiffness(panel, k).stiffness / low.stiffness).toBeCloseTo(1, 9);
  });

  it('has its critical frequency between those of the glued and the sliding panel, where the wave is as fast as sound', () => {
    const found = constrainedLayerCriticalFrequency(panel, air);
    const { surfaceMass, stiffness } = constrainedLayerPanelAt(panel, found);
    expect(criticalFrequencyOf(surfaceMass, stiffness, air) / found).toBeCloseTo(1, 6);
    expect(found).toBeLessThan(
      criticalFrequencyOf(surfaceMass, laminatedPanel([steel, steel], 'sliding').stiffness, air),
    );
  });

  it('names a core that cannot be', () => {
    expect(() => constrainedLayerStiffness({ ...panel, core: { ...core, shearModulus: -1 } }, 10)).toThrow(
      'shear modulus of the damping layer is -1',
    );
  });
});

describe('thick plate', () => {
  it('is the thin plate when thin, at every angle', () => {
    const thin = { ...steel, thickness: 0.0005 };
    for (const sine of [0, 0.5, 1]) {
      const bending = (500 / criticalFrequency(thin, air)) ** 2 * sine ** 4;
      const reactance = 2 * Math.PI * 500 * thin.density * thin.thickness;
      const b = { re: reactance * bending * thin.lossFactor, im: reactance * (1 - bending) };
      const a = thickPlateImpedance(thin, 500, sine, air);
      expect(a.im / b.im).toBeCloseTo(1, 3);
      expect(Math.abs(a.re - b.re)).toBeLessThan(1e-3 * b.im);
    }
    // At its critical frequency a metal plate is 1/28 of a wavelength thick, whatever its thickness: 1 %.
    expect(Math.abs(thickPlateCriticalFrequency(thin, air) / criticalFrequency(thin, air) - 1)).toBeLessThan(0.01);
  });

  it('has no reactance at grazing incidence at its critical frequency, which lies above that of the thin plate', () => {
    const hz = thickPlateCriticalFrequency(concrete, air);
    expect(hz).toBeGreaterThan(criticalFrequency(concrete, air));
    const found = thickPlateImpedance({ ...concrete, lossFactor: 0 }, hz, 1, air);
    expect(Math.abs(found.im) / (2 * Math.PI * hz * 460)).toBeLessThan(1e-9);
  });

  it('has no critical frequency when shear is slower than sound', () => {
    expect(thickPlateCriticalFrequency({ ...concrete, shearModulus: 1e8 }, air)).toBe(Number.POSITIVE_INFINITY);
  });

  it('confirms the effective critical frequency of the standard within 4 % up to f h = 200 m Hz', () => {
    const [h, mass] = [0.2, 460];
    const stiffness = bendingStiffness(concrete);
    const shear = mindlinShearFactor * shearModulus(concrete) * h;
    for (const hz of [200, 500, 1000]) {
      const omega = 2 * Math.PI * hz;
      const rotary = (2300 * h ** 3) / 12;
      const b = omega ** 2 * ((stiffness * mass) / shear + rotary);
      const c = (rotary * mass * omega ** 4) / shear - mass * omega ** 2;
      const square = (b + Math.sqrt(b * b - 4 * stiffness * c)) / (2 * stiffness);
      const expected = hz * square * (air.soundSpeed / omega) ** 2;
      const found = thickCriticalFrequency(criticalFrequency(concrete, air), h, plateLongitudinalSpeed(concrete), hz);
      expect(Math.abs(found / expected - 1)).toBeLessThan(0.04);
    }
  });
});

describe('orthotropic panel', () => {
  const single = singlePanelOf({ ...board, thickness: 0.02 });
  const even = {
    surfaceMass: 15,
    stiffnessAlong: single.stiffness,
    stiffnessAcross: single.stiffness,
    lossFactor: 0.02,
  };

  it('with equal stiffnesses is the thin isotropic plate whatever the azimuth, below coincidence the layered one', () => {
    const plate = { ...board, thickness: 0.02 };
    const bending = (1000 / criticalFrequency(plate, air)) ** 2 * 0.7 ** 4;
    const found = orthotropicImpedance(even, 1000, 0.7, 37, air);
    expect(found.re).toBeCloseTo(2 * Math.PI * 1000 * 15 * bending * 0.02, 6);
    expect(found.im).toBeCloseTo(2 * Math.PI * 1000 * 15 * (1 - bending), 6);
    const [loss] = diffuseTransmissionLoss([{ kind: 'plate', ...plate }], [500], {
      air,
      field: { kind: 'limited', maximumAngleDeg: 78 },
    });
    expect(Math.abs(orthotropicTransmissionLoss(even, 78, 500, air) - loss!)).toBeLessThan(0.1);
  });

  it('does not mind which way it is turned, and loses between its two critical frequencies', () => {
    const ribbed = { ...even, stiffnessAlong: 30 * even.stiffnessAlong };
    const turned = { ...ribbed, stiffnessAlong: ribbed.stiffnessAcross, stiffnessAcross: ribbed.stiffnessAlong };
    const [low, high] = orthotropicCriticalFrequencies(ribbed, air);
    expect(high / low).toBeCloseTo(Math.sqrt(30), 9);
    for (const hz of [low * 0.7, Math.sqrt(low * high), high * 1.5]) {
      expect(orthotropicTransmissionLoss(turned, 78, hz, air)).toBeCloseTo(
        orthotropicTransmissionLoss(ribbed, 78, hz, air),
        2,
      );
    }
    const middle = Math.sqrt(low * high);
    expect(orthotropicTransmissionLoss(ribbed, 78, middle, air)).toBeLessThan(
      orthotropicTransmissionLoss(even, 78, middle, air) - 3,
    );
  });
});

describe('corrugatedPanel and ribbedPanel', () => {
  it('of a flat profile or without ribs are the plate', () => {
    const flat = corrugatedPanel(steel, [
      { across: 0, height: 0 },
      { across: 0.1, height: 0 },
    ]);
    expect(flat.stiffnessAcross).toBeCloseTo(bendingStiffness(steel), 9);
    // A strip along the folds is free to contract sideways.
    expect(flat.stiffnessAlong).toBeCloseTo(bendingStiffness({ ...steel, poissonRatio: 0 }), 9);
    const bare = ribbedPanel(steel, { spacing: 0.3, width: 0, height: 0.05, density: 7800, youngsModulus: 2.1e11 });
    expect(bare).toEqual({
      surfaceMass: 7.8,
      stiffnessAlong: bendingStiffness(steel),
      stiffnessAcross: bendingStiffness(steel),
      lossFactor: 0.001,
    });
  });

  it('of a zigzag has the second moment h s a^2/3 of its flats', () => {
    const [rise, period] = [0.02, 0.08];
    const profile = [0, 0.02, 0.06, 0.08].map((across, i) => ({ across, height: [0, rise, -rise, 0][i]! }));
    const length = 4 * Math.hypot(0.02, rise);
    const found = corrugatedPanel(steel, profile);
    const expected = (2.1e11 * ((0.001 * length * rise ** 2) / 3)) / period;
    expect(found.stiffnessAlong / expected).toBeCloseTo(1, 3);
    expect(found.surfaceMass / 7.8).toBeCloseTo(length / period, 9);
    expect(found.stiffnessAcross / bendingStiffness(steel)).toBeCloseTo(period / length, 9);
  });

  it('of a rib as wide as its spacing is two glued layers', () => {
    const rib = { spacing: 0.3, width: 0.3, height: 0.02, density: 7800, youngsModulus: 2.1e11 / (1 - 0.09) };
    const glued = laminatedPanel([steel, { ...steel, thickness: 0.02 }], 'glued');
    expect(ribbedPanel(steel, rib).stiffnessAlong / glued.stiffness).toBeCloseTo(1, 9);
  });

  it('name a profile that runs back', () => {
    expect(() =>
      corrugatedPanel(steel, [
        { across: 0.1, height: 0 },
        { across: 0, height: 0 },
      ]),
    ).toThrow('step across of the profile');
  });
});
