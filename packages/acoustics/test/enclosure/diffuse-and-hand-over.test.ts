import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { boxRadiationImpedance } from '../../src/enclosure/box-radiation-impedance.js';
import { diffuseEnclosureLevelDifference, enclosureInsertionLoss } from '../../src/enclosure/diffuse-enclosure.js';
import { enclosureModels, handOverLevelDifference } from '../../src/enclosure/enclosure-models.js';
import { smallEnclosureLevelDifference } from '../../src/enclosure/small-enclosure-level-difference.js';
import { asTransmissionLoss } from '../../src/quantities/transmission-loss.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

describe('diffuse enclosure', () => {
  it('the level difference is R + 10 lg(A/S), the insertion loss the same for a good shell and never negative', () => {
    const positive = fc.double({ min: 0.1, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), positive, positive, (loss, area, absorption) => {
        const shell = { area, transmissionLoss: asTransmissionLoss([loss]), absorptionArea: [absorption] };
        const [difference] = diffuseEnclosureLevelDifference(shell);
        const [insertion] = enclosureInsertionLoss(shell);
        expect(difference).toBeCloseTo(loss + 10 * Math.log10(absorption / area), 9);
        expect(insertion!).toBeGreaterThanOrEqual(0);
        expect(insertion!).toBeGreaterThanOrEqual(difference!);
        if (difference! > 20) expect(insertion! - difference!).toBeLessThan(0.05);
      }),
    );
    expect(() =>
      enclosureInsertionLoss({ area: 1, transmissionLoss: asTransmissionLoss([3]), absorptionArea: [1, 2] }),
    ).toThrow('number of bands of the absorption is 2');
  });
});

describe('enclosureModels and handOverLevelDifference', () => {
  it('hand over from half the first mode to the band that holds it, and take the smaller difference there', () => {
    const models = enclosureModels(75, 150, 300);
    expect(models.slice(1, 9)).toEqual([
      'small-enclosure',
      'hand-over',
      'hand-over',
      'hand-over',
      'hand-over',
      'few-modes',
      'few-modes',
      'statistical',
    ]);
    expect(handOverLevelDifference('small-enclosure', 30, 20)).toBe(30);
    expect(handOverLevelDifference('hand-over', 30, 20)).toBe(20);
    expect(handOverLevelDifference('few-modes', 10, 20)).toBe(20);
    expect(() => enclosureModels(-1, 150, 300)).toThrow('limit of the closed box is -1');
  });
});

describe('air outside a small enclosure', () => {
  const [volume, area, mass] = [3.8, 14, 10];
  const elements = [{ kind: 'wall', layers: [{ kind: 'limp-sheet', surfaceMass: mass }], area }] as const;

  it('is rho a per wall area far from surfaces, and twice the load per volume on a floor of the same radius', () => {
    const found = boxRadiationImpedance(area, 'free', 1, air);
    const radius = Math.sqrt(area / (4 * Math.PI));
    expect((found.im * area) / (2 * Math.PI)).toBeCloseTo(air.density * radius, 2);
    const floor = boxRadiationImpedance(area / 2, 'floor', 30, air);
    expect(floor.im / boxRadiationImpedance(area, 'free', 30, air).im).toBeCloseTo(2, 9);
  });

  it('adds that mass to limp walls and damps their resonance', () => {
    const at = (hz: number, outside?: { freeSurface: number; surrounding: 'free' }) =>
      smallEnclosureLevelDifference({ volume, elements, air, hz: [hz], ...(outside && { outside }) })[0]!;
    const outside = { freeSurface: area, surrounding: 'free' } as const;
    const heavier = smallEnclosureLevelDifference({
      volume,
      air,
      hz: [80],
      elements: [
        {
          kind: 'wall',
          layers: [{ kind: 'limp-sheet', surfaceMass: mass + air.density * Math.sqrt(area / (4 * Math.PI)) }],
          area,
        },
      ],
    })[0]!;
    // Above k a = 1 the sphere gives less mass and more radiation.
    expect(Math.abs(at(80, outside) - heavier)).toBeLessThan(1.5);
    const resonance = Math.sqrt((air.density * air.soundSpeed ** 2 * area) / (mass * volume)) / (2 * Math.PI);
    expect(at(resonance)).toBeLessThan(-60);
    expect(at(resonance, outside)).toBeGreaterThan(-30);
  });
});
