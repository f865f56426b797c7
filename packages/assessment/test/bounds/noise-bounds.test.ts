import { expect, it } from 'vitest';
import { noiseOutOfBounds } from '../../src/bounds/noise-bounds.js';
import { booth, given, place, quietFan, shell, site, vent } from '../fixtures/spec-builder.js';

it('noiseOutOfBounds(booth, site) names what no formula can take, and passes what can be built', () => {
  const mounts = (count: number, stiffness: number) => ({
    range: place(),
    count: given(count),
    stiffness: given(stiffness),
  });
  expect(noiseOutOfBounds(booth(shell, { mounts: mounts(16, 2e5) }), site())).toBeNull();
  expect(noiseOutOfBounds(booth(shell, { mounts: mounts(16, 0) }), site())).toContain('stiffness of the mounts');
  const still = booth(shell, { vents: [vent('in', { fan: { ...quietFan, lowSpeed: given(0) } })] });
  expect(noiseOutOfBounds(still, site())).toContain('low speed of the fan of in');
});

it('noiseOutOfBounds(booth, site) looks at neighbours', () => {
  const flat = {
    name: 'flat',
    nameRange: place(),
    range: place(),
    side: given('beside' as const),
    separation: undefined,
    area: given(0),
    volume: given(30),
    reverberation: given(0.5),
    distance: undefined,
  };
  expect(noiseOutOfBounds(booth(), site({ neighbours: [flat] }))).toContain('area towards flat');
  expect(noiseOutOfBounds(booth(), site({ neighbours: [{ ...flat, area: given(8) }] }))).toBeNull();
});
