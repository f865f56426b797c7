// Figures are as transcribed: read in a public transcription, the printed page was not opened. No page that prints a number for
// `openingFlowNoise` was found; its equation was read on a help page for CIBSE Guide B, 2005, section 5.A2.5.
import { openingFlowNoise } from '@boothwright/acoustics';
import { expect, test } from 'vitest';

test('M. Long, Architectural Acoustics, 2nd ed. (2014), Table 14.9, grille of 24 x 24 in at 563 cfm: shape of the spectrum', () => {
  const area = (24 * 0.0254) ** 2;
  const speed = (563 * 0.3048 ** 3) / 60 / area;
  const printed = [30, 29, 26, 20, 12, 1];
  // The pressure is not printed; that with which both have the same mean from 63 Hz to 1 kHz is 5 to 10 Pa, as grilles take.
  const at = (pressure: number) =>
    [63, 125, 250, 500, 1000, 2000].map((hz) => openingFlowNoise(hz, { speed, area, pressure }));
  const mean = (levels: readonly number[]) => levels.slice(0, 5).reduce((sum, level) => sum + level, 0) / 5;
  const pressure = 10 ** ((mean(printed) - mean(at(1))) / 30);
  expect(pressure).toBeGreaterThan(5);
  expect(pressure).toBeLessThan(10);
  const found = at(pressure);
  printed.slice(0, 5).forEach((level, octave) => {
    expect(Math.abs(found[octave]! - level)).toBeLessThan(4);
  });
  // Further up the rule used here is the louder one: a straight line where the sheet's curve bends down.
  expect(found[5]! - printed[5]!).toBeGreaterThan(5);
});
