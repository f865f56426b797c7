import type { Air } from '../air/air-properties.js';
import { type Complex, complex, divide, multiply, scale, squareRoot, subtract } from '../math/complex.js';
import { axisEigenvalues } from './axis-eigenvalues.js';
import { type BoxDimensions, listWalls, requireBox } from './box-geometry.js';
import { requireAdmittances, type WallAdmittances } from './require-admittance.js';
import { requireNotNegative } from './require-positive.js';

/** A mode of a box whose walls take energy from it. */
export type DampedMode = {
  readonly order: readonly [number, number, number];
  /** With hard walls, Hz. */
  readonly hardHz: number;
  /** With the walls given, Hz; null where the search found no mode of this order. */
  readonly hz: number | null;
  /** The pressure falls as exp(-damping t), 1/s. */
  readonly damping: number | null;
  /** Time of a decay by 60 dB, s; infinite without damping. */
  readonly decayTime: number | null;
};

/**
 * Modes of a box whose walls have an admittance: complex eigenfrequencies, damping constants and decay times.
 *
 * Equation: omega^2 = c^2 sum over axes w_n(omega) / L^2, w_n the eigenvalue of each axis (`axisEigenvalues`) at the
 * complex wavenumber k = omega / c; solved for omega by the secant method from the hard wall. The admittance is taken at
 * the real part of the frequency.
 * Units: sides m, specific admittance of each wall as a function of Hz, `upTo` Hz. The modes are those whose frequency
 * with hard walls is at most `upTo`, lowest first; the uniform pressure at 0 Hz is left out.
 * Source: derived, locally reacting walls of even admittance.
 * Valid: flat walls that react locally: thin porous linings on a hard wall, not panels that carry bending waves.
 * Near |beta| = 1 a mode may lie far from its hard-wall frequency: some are not found, and the search may end at that of
 * another order; such modes die within a few periods, and `boxModalTransfer` does not depend on the search.
 * Errors: ArgumentError for a side or an admittance that can't be.
 */
export function dampedModes(
  size: BoxDimensions,
  admittances: (hz: number) => WallAdmittances,
  upTo: number,
  air: Air,
): DampedMode[] {
  requireBox(size);
  requireNotNegative('upper frequency', upTo, 'Hz');
  const half = air.soundSpeed / 2;
  const most = size.map((side) => Math.floor((upTo * side) / half));
  const modes: DampedMode[] = [];
  for (let x = 0; x <= most[0]!; x++) {
    for (let y = 0; y <= most[1]!; y++) {
      for (let z = 0; z <= most[2]!; z++) {
        const hardHz = half * Math.hypot(x / size[0], y / size[1], z / size[2]);
        if (hardHz > 0 && hardHz <= upTo) modes.push(solve(size, [x, y, z], hardHz, admittances, air));
      }
    }
  }
  return modes.sort((a, b) => a.hardHz - b.hardHz);
}

function solve(
  size: BoxDimensions,
  order: readonly [number, number, number],
  hardHz: number,
  admittances: (hz: number) => WallAdmittances,
  air: Air,
): DampedMode {
  const perHz = (2 * Math.PI) / air.soundSpeed;
  const image = (k: Complex): Complex => {
    const walls = listWalls(requireAdmittances(admittances(Math.max(k.re / perHz, hardHz / 10))));
    let sum = complex(0);
    for (let axis = 0; axis < 3; axis++) {
      const side = size[axis]!;
      const turn = scale({ re: -k.im, im: k.re }, side);
      const w = axisEigenvalues(
        multiply(turn, walls[2 * axis]!),
        multiply(turn, walls[2 * axis + 1]!),
        order[axis]!,
        order[axis]!,
      );
      sum = { re: sum.re + w[0]! / side ** 2, im: sum.im + w[1]! / side ** 2 };
    }
    return squareRoot(sum);
  };
  let previous = complex(hardHz * perHz);
  let offPrevious = subtract(image(previous), previous);
  let k = { re: previous.re + offPrevious.re, im: previous.im + offPrevious.im };
  const close = 1e-12 * hardHz * perHz;
  for (let turn = 0; turn < 60; turn++) {
    const off = subtract(image(k), k);
    if (Math.hypot(off.re, off.im) <= close && k.re > 0) {
      // A root on the real axis but for rounding has no damping.
      const damping = Math.max(0, k.im) * air.soundSpeed;
      return { order, hardHz, hz: k.re / perHz, damping, decayTime: (3 * Math.LN10) / damping };
    }
    const change = subtract(off, offPrevious);
    if (change.re === 0 && change.im === 0) break;
    const move = divide(multiply(off, subtract(k, previous)), change);
    previous = k;
    offPrevious = off;
    k = subtract(k, move);
    if (!Number.isFinite(k.re + k.im)) break;
  }
  return { order, hardHz, hz: null, damping: null, decayTime: null };
}
