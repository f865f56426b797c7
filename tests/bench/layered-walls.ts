import { bandTransmissionLoss, fixedRuleTransmissionLoss, thirdOctaveBands } from '@boothwright/acoustics';
import { directionRange } from '../../packages/acoustics/src/layered/field-integral.js';
import { gaussLegendre } from '../../packages/acoustics/src/math/gauss-legendre.js';
import { airViscosity, prandtlNumber } from '../../packages/acoustics/src/openings/air-friction.js';
import { air, benchWalls, field, rule, wallCount, wallNumbers } from './walls.js';

export const walls = benchWalls(wallCount);

/** What was computed, dB by wall and band, and how long it took. */
export type Run = { readonly nanoseconds: number; readonly losses: readonly (readonly number[])[] };

function timed(work: () => readonly (readonly number[])[]): Run {
  const start = performance.now();
  const losses = work();
  return { nanoseconds: (performance.now() - start) * 1e6, losses };
}

export const fixed = (): Run =>
  timed(() => walls.map((layers) => fixedRuleTransmissionLoss(layers, { air, field }, rule)));

export const adaptive = (): Run => timed(() => walls.map((layers) => bandTransmissionLoss(layers, { air, field })));

/** Ten times the frequencies and eight times the angles of the fixed rule; slow. */
export const reference = (every: number): Run =>
  timed(() =>
    walls
      .filter((_, index) => index % every === 0)
      .map((layers) => fixedRuleTransmissionLoss(layers, { air, field }, { samplesPerBand: 80, angles: 512 })),
  );

/** The numbers that the programs in other languages read. */
export function inputNumbers(): string {
  const { from, perSine } = directionRange(field);
  const half = (1 - from) / 2;
  const { nodes, weights } = gaussLegendre(rule.angles);
  const cosines = nodes.map((x) => from + half * (1 + x));
  return [
    [air.soundSpeed, air.density, air.pressure, airViscosity(air), prandtlNumber],
    [rule.samplesPerBand, thirdOctaveBands.length],
    thirdOctaveBands.map((band) => band.lower),
    thirdOctaveBands.map((band) => band.upper),
    [rule.angles],
    cosines,
    weights.map((weight, i) => half * weight * perSine * cosines[i]!),
    [walls.length],
    ...walls.map(wallNumbers),
  ]
    .map((row) => row.join(' '))
    .join('\n');
}

/** Largest difference between two runs, dB; `every` when the second holds only every so many walls. */
export function largestDifference(run: Run, other: Run, every = 1): number {
  const differences = run.losses
    .filter((_, index) => index % every === 0)
    .flatMap((row, wall) => row.map((value, band) => Math.abs(value - other.losses[wall]![band]!)));
  return differences.reduce((a, b) => Math.max(a, b));
}
