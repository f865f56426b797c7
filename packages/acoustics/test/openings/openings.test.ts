import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { airViscosity, heatRatio } from '../../src/openings/air-friction.js';
import { apertureTransmissionLoss, pistonImpedance } from '../../src/openings/aperture-transmission-loss.js';
import { narrowGapMedium } from '../../src/openings/narrow-gap-medium.js';
import { inviscidSlitTransmissionLoss, slitTransmissionLoss } from '../../src/openings/slit-transmission-loss.js';
import { equivalentFluid } from '../../src/porous/porous-medium.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

/** The formula of Gomperts and Kihlman, Acustica 18 (1967) 144 (from memory), diffuse field. */
function gompertsKihlman(gap: number, depth: number, position: 'mid' | 'edge', hz: number): number {
  const k = (2 * Math.PI * hz * gap) / air.soundSpeed;
  const x = depth / gap;
  const e = (Math.log(8 / k) - 0.57722) / Math.PI;
  const n = position === 'mid' ? 1 : 0.5;
  const sine = Math.sin(k * (x + 2 * e)) ** 2 / Math.cos(k * e) ** 2;
  const edge = (k ** 2 / (2 * n ** 2)) * (1 + Math.cos(k * (x + 2 * e)) * Math.cos(k * x));
  return -10 * Math.log10((8 * k * Math.cos(k * e) ** 2) / (2 * n ** 2 * (sine + edge)));
}

describe('airViscosity(air) and heatRatio(air)', () => {
  it('are 1.81e-5 Pa s and 1.4 at room temperature', () => {
    expect(airViscosity(air)).toBeCloseTo(1.81e-5, 7);
    expect(heatRatio(air)).toBeCloseTo(1.4, 2);
  });
});

describe('narrowGapMedium(gap, hz, air)', () => {
  it('resists steady flow with 12 mu/w^2', () => {
    const { density } = equivalentFluid(narrowGapMedium(1e-4, 5, air), 5);
    expect((-density.im * 2 * Math.PI * 5) / ((12 * airViscosity(air)) / 1e-8)).toBeCloseTo(1, 3);
    expect(density.re / air.density).toBeCloseTo(6 / 5, 2);
  });

  it('is isothermal when narrow and free air when wide', () => {
    const narrow = equivalentFluid(narrowGapMedium(1e-4, 5, air), 5);
    expect(narrow.bulkModulus.re / air.pressure).toBeCloseTo(1, 3);
    const wide = narrowGapMedium(0.5, 2000, air);
    expect(wide.characteristicImpedance.re / air.impedance).toBeCloseTo(1, 2);
  });

  it('rubs like a single wall on each side when wide: attenuation sqrt(omega mu/2 rho)(1 + (gamma - 1)/sqrt(Pr))/(c w)', () => {
    const [gap, hz] = [0.01, 1000];
    const omega = 2 * Math.PI * hz;
    const expected =
      (Math.sqrt((omega * airViscosity(air)) / (2 * air.density)) * (1 + (heatRatio(air) - 1) / Math.sqrt(0.71))) /
      (air.soundSpeed * gap);
    expect(-narrowGapMedium(gap, hz, air).wavenumber.im / expected).toBeCloseTo(1, 1);
  });
});

describe('slitTransmissionLoss({ gap, depth, position }, hz, air)', () => {
  // At an edge the formula keeps the end correction of the middle; the mirrored mouth is wider and carries more air.
  for (const [position, tolerance] of [
    ['mid', 0.6],
    ['edge', 2.5],
  ] as const) {
    it(`tends to the formula of Gomperts and Kihlman for wide slits (${position}), within ${tolerance} dB`, () => {
      for (const [gap, depth] of [
        [0.005, 0.1],
        [0.01, 0.05],
      ] as const) {
        for (const hz of [125, 250, 500, 1000]) {
          const found = slitTransmissionLoss({ gap, depth, position }, hz, air);
          expect(Math.abs(found - gompertsKihlman(gap, depth, position, hz)), `${gap} ${hz}`).toBeLessThan(tolerance);
        }
      }
    });
  }

  it('without friction is the formula of Gomperts and Kihlman within 0.1 dB while k w is small', () => {
    for (const hz of [125, 500, 2000]) {
      const slit = { gap: 0.001, depth: 0.05, position: 'mid' } as const;
      const found = inviscidSlitTransmissionLoss(slit, hz, air);
      expect(Math.abs(found - gompertsKihlman(0.001, 0.05, 'mid', hz))).toBeLessThan(0.1);
    }
  });

  it('lies far above the frictionless value for a slit of 0.1 mm', () => {
    const slit = { gap: 1e-4, depth: 0.04, position: 'mid' } as const;
    expect(slitTransmissionLoss(slit, 250, air) - inviscidSlitTransmissionLoss(slit, 250, air)).toBeGreaterThan(6);
  });

  it('of a very narrow slit is that of its steady flow resistance', () => {
    // Two blocked faces, resistance R = 12 mu d/w^2 between them: tau = 8 rho c Re(Zr)/R^2.
    const [gap, depth, hz] = [2e-5, 0.02, 60];
    const resistance = (12 * airViscosity(air) * depth) / gap ** 2;
    const k = (2 * Math.PI * hz * gap) / air.soundSpeed;
    const expected = -10 * Math.log10((8 * air.impedance ** 2 * (k / 2)) / resistance ** 2);
    expect(Math.abs(slitTransmissionLoss({ gap, depth, position: 'mid' }, hz, air) - expected)).toBeLessThan(1);
  });

  it('passes 6 dB more at an edge than in the middle, away from resonance', () => {
    const [mid, edge] = (['mid', 'edge'] as const).map((position) =>
      slitTransmissionLoss({ gap: 0.0005, depth: 0.06, position }, 500, air),
    );
    expect(mid! - edge!).toBeGreaterThan(5);
    expect(mid! - edge!).toBeLessThan(6.5);
  });

  it('never passes more than a mouth can draw from the field, and becomes an open area when wide', () => {
    for (const gap of [0.0005, 0.005, 0.05, 0.5]) {
      for (let hz = 50; hz < 6000; hz *= 1.1) {
        const k = (2 * Math.PI * hz * gap) / air.soundSpeed;
        const found = slitTransmissionLoss({ gap, depth: 0.1, position: 'mid' }, hz, air);
        expect(found).toBeGreaterThanOrEqual(Math.min(0, 10 * Math.log10(k / 4)) - 1e-9);
        if (k >= 4) expect(found).toBe(0);
      }
    }
  });

  it('of a closed slit is infinite', () => {
    expect(slitTransmissionLoss({ gap: 0, depth: 0.1, position: 'mid' }, 500, air)).toBe(Number.POSITIVE_INFINITY);
  });

  it('names what is wrong with the slit', () => {
    expect(() => slitTransmissionLoss({ gap: -1, depth: 0.1, position: 'mid' }, 500, air)).toThrow(
      'width of the slit is -1',
    );
    expect(() => slitTransmissionLoss({ gap: 0.1, depth: Number.NaN, position: 'mid' }, 500, air)).toThrow(
      'depth of the slit is NaN',
    );
  });
});

describe('apertureTransmissionLoss({ radius, depth, incidence }, hz, air)', () => {
  it('tends to 0 dB for a hole many wavelengths wide', () => {
    for (const incidence of ['normal', 'diffuse'] as const) {
      expect(Math.abs(apertureTransmissionLoss({ radius: 1, depth: 0.05, incidence }, 5000, air))).toBeLessThan(0.1);
    }
  });

  it('of a small hole in a thin wall is near the 8/pi^2 of Rayleigh at normal incidence, whatever its size', () => {
    // Resistance (ka)^2/2 and reactance 8 ka/(3 pi) of each mouth: tau = 4 R/(2 X)^2 = (3 pi/8)^2/2.
    for (const radius of [0.0005, 0.002]) {
      const found = apertureTransmissionLoss({ radius, depth: 0, incidence: 'normal' }, 200, air);
      expect(found).toBeCloseTo(-10 * Math.log10((3 * Math.PI) ** 2 / 128), 2);
      expect(Math.abs(found + 10 * Math.log10(8 / Math.PI ** 2))).toBeLessThan(0.7);
    }
  });

  it('of a small deep hole is that of the mass of air in it, the same at all low frequencies', () => {
    // Mass of air rho (d + 16 a/(3 pi)) between two mouths: tau = 8 (ka)^2/2/(k (d + 16 a/(3 pi)))^2.
    const [radius, depth] = [0.005, 0.05];
    const length = depth + (16 * radius) / (3 * Math.PI);
    expect(apertureTransmissionLoss({ radius, depth }, 100, air)).toBeCloseTo(
      -20 * Math.log10((2 * radius) / length),
      1,
    );
  });

  it('passes 3 dB more of a diffuse field than of a normal wave when small', () => {
    const hole = { radius: 0.005, depth: 0.05 };
    const normal = apertureTransmissionLoss({ ...hole, incidence: 'normal' }, 200, air);
    expect(normal - apertureTransmissionLoss({ ...hole, incidence: 'diffuse' }, 200, air)).toBeCloseTo(3.01, 1);
  });

  it('is smallest near the half-wave resonance of the hole with its two mouths', () => {
    const hole = { radius: 0.01, depth: 0.15, incidence: 'normal' } as const;
    const hz = Array.from({ length: 400 }, (_, i) => 600 + 2 * i);
    const loss = hz.map((f) => apertureTransmissionLoss(hole, f, air));
    const lowest = hz[loss.indexOf(Math.min(...loss))]!;
    const expected = air.soundSpeed / 2 / (0.15 + (2 * 8 * 0.01) / (3 * Math.PI));
    expect(Math.abs(lowest / expected - 1)).toBeLessThan(0.01);
  });

  it('of a closed hole is infinite', () => {
    expect(apertureTransmissionLoss({ radius: 0, depth: 0.1 }, 500, air)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('pistonImpedance(ka)', () => {
  it('is (ka)^2/2 + j 8 ka/(3 pi) for small ka and 1 for large', () => {
    expect(pistonImpedance(0.001).re / 0.5e-6).toBeCloseTo(1, 4);
    expect(pistonImpedance(0.001).im / ((8 * 0.001) / (3 * Math.PI))).toBeCloseTo(1, 4);
    expect(pistonImpedance(200).re).toBeCloseTo(1, 2);
    expect(pistonImpedance(200).im).toBeCloseTo(0, 2);
  });

  it('is continuous where the series takes over', () => {
    expect(pistonImpedance(0.01 - 1e-12).re / pistonImpedance(0.01 + 1e-12).re).toBeCloseTo(1, 6);
  });
});
