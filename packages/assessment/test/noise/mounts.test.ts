import { expect, it } from 'vitest';
import { mountsResult } from '../../src/noise/mounts.js';
import { onlyBooth } from '../fixtures/assessed.js';
import { booth, given, impact, place, shell, site, spec } from '../fixtures/spec-builder.js';

const mounts = (count: number, stiffness: number) => ({
  range: place(),
  count: given(count),
  stiffness: given(stiffness),
});

it('mountsResult(booth, mass) has the frequency and deflection of all springs under the whole mass', () => {
  const result = mountsResult(booth(shell, { mounts: mounts(16, 200e3) }), 500);
  expect(result?.naturalHz).toBeCloseTo(Math.sqrt((16 * 200e3) / 500) / (2 * Math.PI), 9);
  expect(result?.deflectionM).toBeCloseTo((500 * 9.80665) / (16 * 200e3), 12);
  expect(result?.gainsAboveHz).toBeCloseTo(Math.SQRT2 * (result?.naturalHz as number), 9);
  expect(result?.text).toContain('light timber floor');
  expect(mountsResult(booth(), 500)).toBeNull();
});

it('mountsResult(booth, mass) says when mounts are too stiff to do anything at 63 Hz', () => {
  const stiff = mountsResult(booth(shell, { mounts: mounts(40, 3e6) }), 500);
  expect(stiff?.gainsAboveHz).toBeGreaterThan(63);
  expect(stiff?.text).toContain('dB more than a rigid contact');
  expect(mountsResult(booth(shell, { mounts: mounts(16, 200e3) }), 500)?.text).toContain(
    'dB less than a rigid contact',
  );
});

it('footfall on a booth with mounts is told with their frequency, from the mass of the loaded booth', () => {
  const standing = booth(shell, { mounts: mounts(16, 200e3) });
  const { noise, build } = onlyBooth(spec({ booths: [standing], site: site({ sources: [impact('steps')] }) }));
  expect(noise.mounts?.loadedMassKg).toBe(build.loadedMassKg);
  expect(noise.notPredicted[0]).toMatchObject({ kind: 'structure', name: 'steps' });
  expect(noise.notPredicted[0]?.why).toContain('16 mounts of 200 N/mm');
});
