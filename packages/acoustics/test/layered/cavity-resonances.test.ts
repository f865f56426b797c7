import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { cavityResonances } from '../../src/layered/cavity-resonances.js';
import { massAirMassFrequency } from '../../src/layered/mass-air-mass-frequency.js';
import { surfaceMass } from '../../src/layered/surface-mass.js';
import { stacks } from './stacks.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

describe('cavityResonances(masses, gaps, air)', () => {
  it('of two leaves is the mass-air-mass resonance', () => {
    const [found] = cavityResonances([8, 12], [{ thickness: 0.1 }], air);
    expect(found).toBeCloseTo(massAirMassFrequency(8, 12, 0.1, air), 9);
  });

  it('of leaves 8.5, 17 and 8.5 kg/m2 in two gaps of 100 mm are 65 and 92 Hz', () => {
    // Symmetric by hand: the outer leaves against each other give sqrt(s/m)/2 pi, the middle against both sqrt(2) more.
    const found = cavityResonances([8.5, 17, 8.5], [{ thickness: 0.1 }, { thickness: 0.1 }], air);
    const lowest = Math.sqrt((air.density * air.soundSpeed ** 2) / 0.1 / 8.5) / (2 * Math.PI);
    expect(found[0]).toBeCloseTo(lowest, 6);
    expect(found[1]).toBeCloseTo(lowest * Math.SQRT2, 6);
    expect(found.map(Math.round)).toEqual([65, 92]);
  });

  it('fall with the square root of the ratio of heats when fibre fills the cavity', () => {
    const adiabatic = cavityResonances([8, 8], [{ thickness: 0.1 }], air)[0]!;
    const isothermal = cavityResonances([8, 8], [{ thickness: 0.1, isothermal: true }], air)[0]!;
    expect(isothermal / adiabatic).toBeCloseTo(Math.sqrt(air.pressure / (air.density * air.soundSpeed ** 2)), 9);
    expect(isothermal / adiabatic).toBeCloseTo(0.845, 2);
  });

  it('of one leaf are none', () => {
    expect(cavityResonances([8], [], air)).toEqual([]);
  });

  it('names what does not fit', () => {
    expect(() => cavityResonances([8, 8], [], air)).toThrow('number of cavities is 0');
    expect(() => cavityResonances([8, 0], [{ thickness: 0.1 }], air)).toThrow('surface mass of leaf 2 is 0');
    expect(() => cavityResonances([8, 8], [{ thickness: 0 }], air)).toThrow('thickness of cavity 1 is 0');
  });
});

describe('surfaceMass(layers)', () => {
  it('adds plates, sheets, cloths and fibre of known density', () => {
    expect(surfaceMass(stacks['seven layers']!)).toBeCloseTo(0.0032 * 900 + 4.9 + 0.05 * 38 + 0.2, 9);
  });
});
