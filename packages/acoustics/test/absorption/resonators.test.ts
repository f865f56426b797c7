import { describe, expect, it } from 'vitest';
import { absorberAbsorptionAt } from '../../src/absorption/absorber-absorption.js';
import type { AbsorberLayer } from '../../src/absorption/absorber-layer.js';
import { besselRatio } from '../../src/absorption/bessel-ratio.js';
import { curtainAbsorption } from '../../src/absorption/curtain-absorption.js';
import { helmholtzAbsorptionArea, helmholtzFrequency } from '../../src/absorption/helmholtz-resonator.js';
import { holeInteraction } from '../../src/absorption/hole-interaction.js';
import { perforatedImpedance, slottedImpedance } from '../../src/absorption/perforated-impedance.js';
import { panelAbsorberFrequency, perforatedAbsorberFrequency } from '../../src/absorption/resonance-frequencies.js';
import { sampleRadiationImpedance, sampleRadiationTable } from '../../src/absorption/sample-radiation-impedance.js';
import { airProperties } from '../../src/air/air-properties.js';
import { finiteRadiationFactor } from '../../src/layered/finite-radiation-factor.js';
import { besselJ0, besselJ1 } from '../../src/math/bessel.js';
import { complex, divide, multiply, scale } from '../../src/math/complex.js';
import { airViscosity } from '../../src/openings/air-friction.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const straight = { air, backing: 'rigid' as const, incidence: { kind: 'plane' as const, angleDeg: 0 } };
const peakOf = (layers: readonly AbsorberLayer[], from: number, to: number) => {
  const hz = Array.from({ length: 400 }, (_, i) => from + ((to - from) * i) / 399);
  const alpha = hz.map((f) => absorberAbsorptionAt(layers, f, straight));
  return hz[alpha.indexOf(Math.max(...alpha))]!;
};

describe('besselRatio(z)', () => {
  it('is J1/J0 on the real axis', () => {
    for (const x of [0.1, 1, 2, 5, 9]) expect(besselRatio(complex(x)).re).toBeCloseTo(besselJ1(x) / besselJ0(x), 8);
  });

  it('is the quotient of the power series on the diagonal of the plane', () => {
    for (const size of [0.5, 2, 6]) {
      const z = scale(complex(1, -1), size / Math.SQRT2);
      const quarter = scale(multiply(z, z), -0.25);
      let term = complex(1);
      let j0 = complex(0);
      let j1 = complex(0);
      for (let k = 0; k < 60; k++) {
        j0 = complex(j0.re + term.re, j0.im + term.im);
        const part = scale(multiply(term, z), 0.5 / (k + 1));
        j1 = complex(j1.re + part.re, j1.im + part.im);
        term = scale(multiply(term, quarter), 1 / (k + 1) ** 2);
      }
      const expected = divide(j1, j0);
      expect(besselRatio(z).re).toBeCloseTo(expected.re, 9);
      expect(besselRatio(z).im).toBeCloseTo(expected.im, 9);
    }
  });
});

describe('holeInteraction(openArea)', () => {
  /** Added length of a square lattice of round pistons over that of one alone, by the sum over the modes of the lattice. */
  const lattice = (share: number) => {
    const radius = Math.sqrt(share / Math.PI);
    const most = 120;
    let sum = 0;
    for (let m = -most; m <= most; m++) {
      for (let n = -most; n <= most; n++) {
        if (m === 0 && n === 0) continue;
        const g = 2 * Math.PI * Math.sqrt(m * m + n * n);
        sum += ((2 * besselJ1(g * radius)) / (g * radius)) ** 2 / g;
      }
    }
    return (share * sum) / ((8 * radius) / (3 * Math.PI));
  };

  it('is close to the lattice of pistons, which moves a little more air than holes do', () => {
    for (const share of [0.05, 0.1, 0.2, 0.3]) {
      expect(Math.abs(holeInteraction(share) - lattice(share))).toBeLessThan(0.06);
    }
  });

  it('falls from 1 to about 0 as the holes come to touch', () => {
    expect(holeInteraction(0)).toBe(1);
    let last = 1;
    for (let share = 0.02; share < 0.78; share += 0.02) {
      expect(holeInteraction(share)).toBeLessThanOrEqual(last);
      last = holeInteraction(share);
    }
    expect(last).toBeLessThan(0.06);
  });
});

describe('perforatedImpedance(sheet, hz, air)', () => {
  it('of very small holes is the steady flow resistance 32 mu t/(d^2 p) and 4/3 of the mass of the air', () => {
    const sheet = { thickness: 0.01, holeDiameter: 5e-5, openArea: 0.01 };
    const found = perforatedImpedance(sheet, 50, air);
    const steady = (32 * airViscosity(air) * 0.01) / (5e-5 ** 2 * 0.01);
    expect(found.re / steady).toBeCloseTo(1, 2);
    expect(found.im / ((2 * Math.PI * 50 * air.density * (4 / 3) * 0.01) / 0.01)).toBeCloseTo(1, 1);
  });

  it('of wide holes is the mass of the air in and around them', () => {
    const found = perforatedImpedance({ thickness: 0.01, holeDiameter: 0.01, openArea: 0.01 }, 500, air);
    const length = 0.01 + 0.85 * 0.01 * holeInteraction(0.01);
    expect(found.im / ((2 * Math.PI * 500 * air.density * length) / 0.01)).toBeCloseTo(1, 1);
    expect(found.re).toBeLessThan(0.1 * found.im);
  });
});

describe('slottedImpedance(sheet, hz, air)', () => {
  it('has the added mass of a grating, somewhat below that of a row of pistons', () => {
    const [hz, slotWidth, openArea] = [500, 0.01, 0.1];
    const omega = 2 * Math.PI * hz;
    const found = slottedImpedance({ thickness: 0, slotWidth, openArea }, hz, air);
    let sum = 0;
    for (let n = 1; n < 5000; n++) sum += (Math.sin(n * Math.PI * openArea) / (n * Math.PI * openArea)) ** 2 / n;
    const pistons = (2 * omega * air.density * (slotWidth / Math.PI) * sum) / openArea;
    expect(found.im).toBeLessThan(pistons);
    expect(found.im).toBeGreaterThan(0.9 * pistons);
  });
});

describe('resonance frequencies', () => {
  it('of a panel are 60/sqrt(m d) with air and 50/sqrt(m d) with fibre', () => {
    expect(panelAbsorberFrequency(1, 1, 'air', air)).toBeCloseTo(60, 0);
    expect(panelAbsorberFrequency(1, 1, 'fibre', air)).toBeCloseTo(50.8, 0);
    const layers: AbsorberLayer[] = [
      { kind: 'porous', model: 'miki', flowResistivity: 3000, thickness: 0.05 },
      { kind: 'limp-sheet', surfaceMass: 4 },
    ];
    const peak = peakOf(layers, 80, 200);
    expect(peak).toBeGreaterThan(panelAbsorberFrequency(4, 0.05, 'fibre', air) * 0.97);
    expect(peak).toBeLessThan(panelAbsorberFrequency(4, 0.05, 'air', air) * 1.03);
  });

  it('of a perforated sheet is where its absorption peaks', () => {
    const sheet = { thickness: 0.012, holeDiameter: 0.006, openArea: 0.02 };
    const expected = perforatedAbsorberFrequency(sheet, 0.05, air);
    const layers: AbsorberLayer[] = [
      { kind: 'air-gap', thickness: 0.05 },
      { kind: 'perforated', ...sheet },
    ];
    expect(Math.abs(peakOf(layers, 150, 700) / expected - 1)).toBeLessThan(0.05);
  });
});

describe('helmholtzAbsorptionArea(resonator, hz, air)', () => {
  const resonator = { volume: 0.002, neckRadius: 0.01, neckLength: 0.03, neckFlowResistance: 0 };

  it('peaks at the resonance', () => {
    const expected = helmholtzFrequency(resonator, air);
    const hz = Array.from({ length: 2000 }, (_, i) => expected * (0.8 + (0.4 * i) / 2000));
    const area = helmholtzAbsorptionArea(resonator, hz, air);
    expect(hz[area.indexOf(Math.max(...area))]! / expected).toBeCloseTo(1, 1);
  });

  it('never exceeds lambda^2/pi and comes near it when losses equal radiation', () => {
    const f0 = helmholtzFrequency(resonator, air);
    let most = 0;
    for (let f = f0 * 0.95; f < f0 * 1.05; f += f0 * 1e-4) {
      for (const neckFlowResistance of [0, 0.2, 1, 5]) {
        const area = helmholtzAbsorptionArea({ ...resonator, neckFlowResistance }, [f], air)[0]!;
        most = Math.max(most, (area * Math.PI) / (air.soundSpeed / f) ** 2);
      }
    }
    expect(most).toBeLessThanOrEqual(1);
    expect(most).toBeGreaterThan(0.3);
  });

  it('rejects what cannot be', () => {
    expect(() => helmholtzFrequency({ ...resonator, volume: 0 }, air)).toThrow('volume of the cavity is 0');
  });
});

describe('sampleRadiationImpedance(k, sinTheta, size)', () => {
  const size = { width: 3.6, height: 2.8 };

  it('has the radiation factor of the window as its real part', () => {
    for (const k of [1, 5, 20]) {
      for (const sine of [0, 0.6, 1]) {
        expect(sampleRadiationImpedance(k, sine, size).re).toBeCloseTo(finiteRadiationFactor(k, sine, size), 9);
      }
    }
  });

  it('of a sample much smaller than a wavelength is the mass of the air before it', () => {
    // A square piston: j k a 0.4732 over rho c (self-integral of 1/r over the unit square 2.9732, over 2 pi).
    const k = 0.01;
    expect(sampleRadiationImpedance(k, 0, { width: 1, height: 1 }).im / k).toBeCloseTo(2.9732 / (2 * Math.PI), 3);
  });

  it('is followed by its table within 1 %', () => {
    for (const k of [1, 5, 20, 60]) {
      const lookUp = sampleRadiationTable(k, size);
      for (const cosine of [0.01, 0.13, 0.37, 0.61, 0.83, 0.99]) {
        const exact = sampleRadiationImpedance(k, Math.sqrt(1 - cosine ** 2), size);
        const found = lookUp(cosine);
        const off = Math.sqrt((found.re - exact.re) ** 2 + (found.im - exact.im) ** 2);
        expect(off / Math.sqrt(exact.re ** 2 + exact.im ** 2)).toBeLessThan(0.01);
      }
    }
  });
});

describe('curtainAbsorption(curtain, conditions)', () => {
  const conditions = { air, backing: 'rigid' as const, incidence: { kind: 'diffuse' as const } };
  const curtain = { flowResistance: 800, surfaceMass: 0.4, fullness: 1, distance: 0.1, foldDepth: 0 };

  it('absorbs little against the wall and more away from it at low frequencies', () => {
    const close = curtainAbsorption({ ...curtain, distance: 0.01 }, conditions);
    const away = curtainAbsorption({ ...curtain, distance: 0.2 }, conditions);
    expect(close[7]!).toBeLessThan(0.1);
    expect(away[7]!).toBeGreaterThan(close[7]! + 0.2);
  });

  it('with folds has no dip where the gap is half a wavelength deep', () => {
    const flat = curtainAbsorption(curtain, conditions);
    const folded = curtainAbsorption({ ...curtain, foldDepth: 0.1 }, conditions);
    expect(Math.min(...folded.slice(14))).toBeGreaterThan(Math.min(...flat.slice(14)));
  });

  it('finds more cloth beside each other when gathered', () => {
    const single = curtainAbsorption({ ...curtain, flowResistance: 400, surfaceMass: 0.8 }, conditions);
    expect(curtainAbsorption({ ...curtain, fullness: 2 }, conditions)).toEqual(single);
  });

  it('rejects folds that reach behind the wall', () => {
    expect(() => curtainAbsorption({ ...curtain, foldDepth: 0.3 }, conditions)).toThrow('depth of the folds is 0.3');
  });
});
