// Every row is "as transcribed": the figures were read in a public transcription of the cited document, whose printed
// pages were not opened.
import { noiseReductionCoefficient, weightedAbsorption } from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

describe('ISO 11654:1997, as transcribed', () => {
  test('Annex A example A.1: alpha_w is 0.60, class C', () => {
    expect(weightedAbsorption([0.35, 0.7, 0.65, 0.6, 0.55])).toMatchObject({
      alphaW: 0.6,
      indicators: '',
      text: '0.60',
      absorptionClass: 'C',
    });
  });
  test('Annex A example A.2: alpha_w is 0.60(M)', () => {
    expect(weightedAbsorption([0.35, 1, 0.65, 0.6, 0.55]).text).toBe('0.60(M)');
  });
  test('clause 4.2: the reference curve is 0.80, 1.00, 1.00, 1.00, 0.90', () => {
    expect(weightedAbsorption([1, 1, 1, 1, 1])).toMatchObject({ alphaW: 1, contour: [0.8, 1, 1, 1, 0.9] });
  });
});

describe('ASTM C423, rounding of the noise reduction coefficient, as quoted in a public page', () => {
  test.each([
    [0.625, 0.65],
    [0.675, 0.7],
  ])('a mean of %f gives %f, the half going up', (mean, nrc) => {
    const rating = noiseReductionCoefficient(Array(4).fill(mean));
    expect(rating.mean).toBeCloseTo(mean, 12);
    expect(rating.value).toBe(nrc);
  });
});
