import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { exactHz } from '../../../src/bands/grid.js';
import { ductEntryGain } from '../../../src/booth/openings/duct-entry.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

it('ductEntryGain(area, endReflection) is 9 dB at low frequency for a piston in a wall', () => {
  // 1 - |r|^2 = 2 (ka)^2 for a small flanged end, by the theory of the piston.
  const radius = 0.05;
  const loss = exactHz.map((hz) => -10 * Math.log10(2 * (((2 * Math.PI * hz) / air.soundSpeed) * radius) ** 2));
  const gain = ductEntryGain(Math.PI * radius ** 2, loss, air);
  expect(gain[0]).toBeCloseTo(10 * Math.log10(8), 6);
});

it('ductEntryGain(area, endReflection) is nothing where the opening is large against the wavelength', () => {
  const gain = ductEntryGain(
    0.25,
    exactHz.map(() => 0),
    air,
  );
  expect(gain.at(-1)).toBe(0);
});
