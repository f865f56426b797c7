import { expect, test } from 'vitest';
import { mountDeflection } from '../../src/enclosure/mount-deflection.js';
import { mountFrequency } from '../../src/enclosure/mount-frequency.js';
import { mountTransmissibility } from '../../src/enclosure/mount-transmissibility.js';

test('mountFrequency and mountDeflection keep f = sqrt(g/d)/(2 pi)', () => {
  // 16 mounts of 200 N/mm under 500 kg.
  const stiffness = 16 * 200e3;
  expect(mountFrequency(stiffness, 500)).toBeCloseTo(Math.sqrt(3.2e6 / 500) / (2 * Math.PI), 12);
  const deflection = mountDeflection(stiffness, 500);
  expect(deflection).toBeCloseTo(1.532e-3, 6);
  expect(mountFrequency(stiffness, 500)).toBeCloseTo(Math.sqrt(9.80665 / deflection) / (2 * Math.PI), 9);
});

test('mountTransmissibility is 0 dB at 1.41 f0 without damping, above it at f0, and falls by 12 dB per octave', () => {
  expect(mountTransmissibility(Math.SQRT2 * 10, 10, 1e-9)).toBeCloseTo(0, 6);
  expect(mountTransmissibility(10, 10, 0.1)).toBeCloseTo(10 * Math.log10(1.01 / 0.01), 9);
  expect(mountTransmissibility(400, 10, 1e-6) - mountTransmissibility(800, 10, 1e-6)).toBeCloseTo(12.04, 1);
});

test('mounts that cannot be are told', () => {
  expect(() => mountFrequency(0, 500)).toThrow('stiffness of the mounts is 0');
  expect(() => mountDeflection(1, 0)).toThrow('mass on the mounts is 0');
  expect(() => mountTransmissibility(63, 10, 0)).toThrow('loss factor of the mounts is 0');
});
