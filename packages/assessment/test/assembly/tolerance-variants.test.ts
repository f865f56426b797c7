import { expect, it } from 'vitest';
import { toleranceVariants } from '../../src/assembly/tolerance-variants.js';
import { byMass, given, gypsum, plywood, sheet, vinyl } from '../fixtures/spec-builder.js';

it('toleranceVariants(layers) moves one figure at a time, up and down', () => {
  const variants = toleranceVariants([sheet(plywood, 0.5, 0.25), byMass(vinyl, 4, 0.5), sheet(gypsum, 0.0125)]);
  expect(variants).toHaveLength(2);
  const [thickness, mass] = variants;
  expect(thickness?.up[0]).toMatchObject({ thickness: { value: 0.75 } });
  expect(thickness?.down[0]).toMatchObject({ thickness: { value: 0.25 } });
  expect(thickness?.up[1]).toMatchObject({ surfaceMass: { value: 4 } });
  expect(mass?.up[1]).toMatchObject({ surfaceMass: { value: 4.5 } });
});

it('toleranceVariants(layers) finds tolerances of the material', () => {
  const soft = { ...plywood, modulus: given(7e9, 1e9), density: given(550, 50) };
  expect(toleranceVariants([sheet(soft, 0.012)])).toHaveLength(2);
});

it('toleranceVariants(layers) is empty where nothing has a tolerance', () => {
  expect(toleranceVariants([sheet(plywood, 0.012)])).toEqual([]);
});

it('toleranceVariants(layers) keeps loss factor and Poisson ratio within what a plate can have', () => {
  const soft = { ...plywood, lossFactor: given(0.9, 0.3), poisson: given(0.45, 0.1) };
  const [poisson, lossFactor] = toleranceVariants([sheet(soft, 0.012)]);
  expect(poisson?.up[0]).toMatchObject({ material: { poisson: { value: 0.49 } } });
  expect(lossFactor?.up[0]).toMatchObject({ material: { lossFactor: { value: 1 } } });
});
