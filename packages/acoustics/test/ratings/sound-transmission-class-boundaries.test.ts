import { describe, expect, test } from 'vitest';
import { soundTransmissionClass } from '../../src/ratings/sound-transmission-class.js';

const shape = [-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4];
const contour = (stc: number) => shape.map((relative) => stc + relative);
const at1000 = 9;

describe('ASTM E413 rules, constructed boundary cases', () => {
  test('constructed: two decibels below contour 45 in all bands sum to 32 and rate 45, governed by the sum', () => {
    const fit = soundTransmissionClass(contour(45).map((value) => value - 2));
    expect(fit).toMatchObject({ stc: 45, deficiencySum: 32, governedBy: 'sum' });
    expect(fit.contour).toEqual(contour(45));
  });
  test('constructed: one decibel more in one band costs a class', () => {
    const lower = contour(45).map((value, band) => value - (band === 0 ? 3 : 2));
    expect(soundTransmissionClass(lower).stc).toBe(44);
  });
  test('constructed: one band 8 dB below contour 45 rates 45 and the 8 dB rule governs', () => {
    const notch = contour(45).map((value, band) => (band === at1000 ? value - 8 : value + 20));
    expect(soundTransmissionClass(notch)).toMatchObject({
      stc: 45,
      deficiencySum: 8,
      governedBy: 'single-band',
      governingHz: 1000,
    });
  });
  test('constructed: one band 9 dB below contour 45 rates 44 although the sum is only 9', () => {
    const notch = contour(45).map((value, band) => (band === at1000 ? value - 9 : value + 20));
    expect(soundTransmissionClass(notch)).toMatchObject({ stc: 44, deficiencySum: 8, governedBy: 'single-band' });
  });
  test('constructed: four bands 8 dB below the contour meet both limits, and the sum is named', () => {
    const four = contour(45).map((value, band) => (band < 4 ? value - 8 : value + 20));
    expect(soundTransmissionClass(four)).toMatchObject({ stc: 45, deficiencySum: 32, governedBy: 'sum' });
  });
  test('constructed: the transmission loss is rounded half up before the fit', () => {
    const half = contour(45).map((value) => value - 2.5);
    expect(soundTransmissionClass(half)).toMatchObject({ stc: 45, deficiencySum: 32 });
    expect(soundTransmissionClass(half.map((value) => value - 0.01)).stc).toBe(44);
  });
});
