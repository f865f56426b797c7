import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { add, complex, divide, multiply, subtract } from '../../src/math/complex.js';
import { limpFrame } from '../../src/porous/limp-frame.js';
import { mikiPorous } from '../../src/porous/miki-porous.js';
import { equivalentFluid, keepPassive, porousMedium } from '../../src/porous/porous-medium.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

describe('mikiPorous(flowResistivity, hz, air)', () => {
  it('tends to air when nothing resists the flow', () => {
    const found = mikiPorous(1e-9, 1000, air);
    expect(found.characteristicImpedance.re).toBeCloseTo(air.impedance, 3);
    expect(found.wavenumber.re).toBeCloseTo((2 * Math.PI * 1000) / air.soundSpeed, 6);
    expect(mikiPorous(0, 1000, air).characteristicImpedance.re).toBe(air.impedance);
  });

  it('is passive at all frequencies, also outside the range of the regression', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 2e6, noNaN: true }),
        fc.double({ min: 20, max: 20_000, noNaN: true }),
        (resistivity, hz) => {
          const medium = mikiPorous(resistivity, hz, air);
          const { density, bulkModulus } = equivalentFluid(medium, hz);
          expect(medium.wavenumber.im).toBeLessThanOrEqual(1e-9);
          expect(bulkModulus.im / bulkModulus.re).toBeGreaterThanOrEqual(-1e-9);
          expect(density.im).toBeLessThanOrEqual(1e-9);
        },
      ),
    );
  });
});

describe('limpFrame(medium, hz, density, air)', () => {
  const medium = mikiPorous(20_000, 300, air);

  it('gives back the rigid frame when the frame is very heavy', () => {
    const found = limpFrame(medium, 300, 1e9, air);
    expect(found.characteristicImpedance.re).toBeCloseTo(medium.characteristicImpedance.re, 3);
    expect(found.wavenumber.im).toBeCloseTo(medium.wavenumber.im, 3);
  });

  it('moves as a whole at low frequencies, with the density of fibre and air together', () => {
    const hz = 0.5;
    const fluid = equivalentFluid(limpFrame(mikiPorous(20_000, hz, air), hz, 40, air), hz);
    expect(fluid.density.re / (40 + air.density)).toBeCloseTo(1, 1);
  });

  it("follows from the densities of Biot's theory at a porosity of 1, with a frame that has no stiffness", () => {
    // rho22 = rho_eq, rho12 = rho0 - rho22, rho11 = rho1 - rho12; rho = rho11 - rho12^2/rho22, gamma = rho12/rho22,
    // rho_s = rho + gamma^2 rho_eq; a frame that bears no stress gives rho_limp = rho_eq rho/rho_s.
    const equivalent = equivalentFluid(medium, 300).density;
    const rho12 = subtract(complex(air.density), equivalent);
    const rho11 = subtract(complex(40), rho12);
    const rho = subtract(rho11, divide(multiply(rho12, rho12), equivalent));
    const gamma = divide(rho12, equivalent);
    const rhoS = add(rho, multiply(multiply(gamma, gamma), equivalent));
    const expected = divide(multiply(equivalent, rho), rhoS);
    const found = equivalentFluid(limpFrame(medium, 300, 40, air), 300).density;
    expect(found.re / expected.re).toBeCloseTo(1, 9);
    expect(found.im / expected.im).toBeCloseTo(1, 9);
  });

  it('keeps the bulk modulus', () => {
    const before = equivalentFluid(medium, 300).bulkModulus;
    const after = equivalentFluid(limpFrame(medium, 300, 40, air), 300).bulkModulus;
    expect(after.re / before.re).toBeCloseTo(1, 9);
    expect(after.im / before.im).toBeCloseTo(1, 6);
  });
});

describe('keepPassive(medium, hz)', () => {
  it('leaves a passive medium alone and takes the gain out of another', () => {
    const passive = mikiPorous(9000, 500, air);
    expect(keepPassive(passive, 500)).toBe(passive);
    const active = porousMedium({ density: { re: 2, im: -3 }, bulkModulus: { re: 1e5, im: -2e4 } }, 500);
    expect(equivalentFluid(keepPassive(active, 500), 500).bulkModulus.im).toBeCloseTo(0, 6);
  });
});
