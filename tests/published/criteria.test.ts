// Two published families of NC curves differ by 1 dB in a few cells. The classic one is used, because all of it was seen;
// of ANSI/ASA S12.2-2019 Table 1 only the NC-30 row, the speech interference level of NC-40 and the NC-70 value at 4 kHz
// were. The disagreements are asserted below, so that they stay known. The bands 16, 31.5 and 8000 Hz are not assessed.
import {
  noiseCriterion,
  noiseCriterionBySpeechInterference,
  noiseCriterionCurve,
  noiseCriterionCurveOf,
  octaveBandsBetween,
  roomCriterionCurve,
  speechInterferenceLevel,
  weightedTotalOfBands,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const classic: readonly (readonly [number, readonly number[]])[] = [
  [15, [47, 36, 29, 22, 17, 14, 12]],
  [20, [51, 40, 33, 26, 22, 19, 17]],
  [25, [54, 44, 37, 31, 27, 24, 22]],
  [30, [57, 48, 41, 35, 31, 29, 28]],
  [35, [60, 52, 45, 40, 36, 34, 33]],
  [40, [64, 56, 50, 45, 41, 39, 38]],
  [45, [67, 60, 54, 49, 46, 44, 43]],
  [50, [71, 64, 58, 54, 51, 49, 48]],
  [55, [74, 67, 62, 58, 56, 54, 53]],
  [60, [77, 71, 67, 63, 61, 59, 58]],
  [65, [80, 75, 71, 68, 66, 64, 63]],
  [70, [83, 79, 75, 72, 71, 70, 69]],
];

describe('NC curves, table page "Noise Criteria (NC) Curves", 2018 (classic family, Beranek 1957)', () => {
  test.each(classic)('a spectrum equal to curve NC-%i rates just that', (nc, levels) => {
    expect(noiseCriterionCurve(nc)).toEqual(levels);
    expect(noiseCriterion(levels)).toMatchObject({ value: nc, text: `NC ${nc}` });
  });
});

describe('NC curves at 8 kHz, table page "Noise Criteria (NC) Curves", 2018', () => {
  test('NC-15 to NC-70 end at 11, 16, 21 and so on up to 57, 62 and 68 dB', () => {
    const printed = [11, 16, 21, 27, 32, 37, 42, 47, 52, 57, 62, 68];
    expect(classic.map(([nc]) => noiseCriterionCurveOf('classic', nc)[7])).toEqual(printed);
    classic.forEach(([nc, levels], row) => {
      expect(noiseCriterion([...levels, printed[row]!]).value).toBe(nc);
    });
  });
});

describe('M. J. Crocker, Engineering Acoustics (2021), example 6.3', () => {
  test('octaves 61, 56, 54, 50, 44, 43, 39 dB rate NC 46, governed by 500 Hz', () => {
    // The example goes on to 8 kHz with 34 dB, which lies below NC 46 (about 43 dB) and doesn't decide.
    expect(noiseCriterion([61, 56, 54, 50, 44, 43, 39, 34])).toMatchObject({ text: 'NC 46', governingHz: 500 });
    const rating = noiseCriterion([61, 56, 54, 50, 44, 43, 39]);
    expect(rating).toMatchObject({ text: 'NC 46', governingHz: 500 });
    expect(rating.value).toBeCloseTo(46, 9);
  });
});

describe('M. Long, Architectural Acoustics, 2nd ed. (2014), Table 14.9, as transcribed', () => {
  test('the received spectrum 55, 45, 32, 26, 23, 25, 22 dB meets NC 30, as the table says', () => {
    const { value } = noiseCriterion([55, 45, 32, 26, 23, 25, 22]);
    expect(value).not.toBeNull();
    expect(value!).toBeLessThanOrEqual(30);
  });
});

describe('ANSI/ASA S12.2-2019 Table 1, as transcribed: disagreements with the classic family', () => {
  test('NC-30 is 32 dB at 1 kHz there and 31 here, the other six bands agree', () => {
    const newer = [57, 48, 41, 35, 32, 29, 28];
    expect(noiseCriterionCurve(30).map((level, band) => newer[band]! - level)).toEqual([0, 0, 0, 0, 1, 0, 0]);
  });
  test('the mean of NC-40 over 500 Hz to 4 kHz is 40.5 dB there and 40.75 here', () => {
    expect(
      noiseCriterionCurve(40)
        .slice(3)
        .reduce((sum, level) => sum + level, 0) / 4,
    ).toBe(40.75);
  });
  test('NC-70 is 68 dB at 4 kHz there and 69 here', () => {
    expect(noiseCriterionCurve(70)[6]).toBe(69);
  });
});

describe('ANSI/ASA S12.2-2019, as transcribed', () => {
  test('Table 1: the row NC-30 from 16 Hz to 8 kHz, and NC-70 at 4 and 8 kHz', () => {
    expect(noiseCriterionCurveOf('s12.2', 30)).toEqual([81, 68, 57, 48, 41, 35, 32, 29, 28, 27]);
    expect(noiseCriterionCurveOf('s12.2', 70).slice(8)).toEqual([68, 68]);
  });
  test('Table 1: the speech interference level of NC-40 is 40.5 dB', () => {
    expect(speechInterferenceLevel(noiseCriterionCurveOf('s12.2', 40))).toBe(40.5);
  });
  test('clause 5.2.2: a spectrum above no band of NC-(SIL) rates by its speech interference level', () => {
    const rating = noiseCriterionBySpeechInterference([0, 0, 0, 0, 30, 40, 40, 40, 30, 0], 's12.2');
    expect(rating).toMatchObject({ speechInterferenceLevel: 37.5, governedBy: 'tangency' });
    const smooth = noiseCriterionBySpeechInterference(noiseCriterionCurveOf('s12.2', 40), 's12.2');
    expect(smooth).toMatchObject({ value: 40.5, governedBy: 'speech interference level', governingHz: null });
  });
  test('clause 5.2.3: Crocker example 6.3 exceeds NC-(SIL) at low frequencies, so that tangency rates it 46', () => {
    const rating = noiseCriterionBySpeechInterference([61, 56, 54, 50, 44, 43, 39, 34], 'classic');
    expect(rating).toMatchObject({ speechInterferenceLevel: 44, governedBy: 'tangency', text: 'NC 46' });
  });
  test('clause 3.2: there is no rating below NC-15 or above NC-70', () => {
    expect(noiseCriterionBySpeechInterference(Array(8).fill(0), 's12.2').text).toBe('below NC 15');
    expect(noiseCriterionBySpeechInterference(Array(8).fill(90), 's12.2').text).toBe('above NC 70');
  });
  test.each([
    [25, [55, 55, 45, 40, 35, 30, 25, 20, 15, 10]],
    [30, [55, 55, 50, 45, 40, 35, 30, 25, 20, 15]],
    [31, [56, 56, 51, 46, 41, 36, 31, 26, 21, 16]],
    [38, [63, 63, 58, 53, 48, 43, 38, 33, 28, 23]],
    [50, [75, 75, 70, 65, 60, 55, 50, 45, 40, 35]],
  ])('Table D.1: the neutral curve RC-%i', (rc, levels) => {
    expect(roomCriterionCurve(rc)).toEqual(levels);
  });
});

describe('recommended background noise, as quoted in public tables', () => {
  // The rows recommend a number for a room; no function gives recommendations. One row puts two numbers side by side.
  // They disagree: a spectrum that fills the curve in every octave has 31.4 dBA. A real one touches it in one octave only
  // and has less, which is how both numbers can hold for one room.
  test('NC 20 filled in every octave is 31.4 dBA, where a table (av-info.eu) says less than 30 dBA for studios', () => {
    const total = weightedTotalOfBands(noiseCriterionCurveOf('classic', 20), octaveBandsBetween(63, 8000), 'A');
    expect(total).toBeCloseTo(31.36, 2);
  });
});
