import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import {
  add,
  type Complex,
  complex,
  cosine,
  divide,
  multiply,
  scale,
  sine,
  squareRoot,
  subtract,
} from '../math/complex.js';
import { axisEigenvalues } from './axis-eigenvalues.js';
import { type BoxDimensions, type BoxPoint, listWalls, requireBox, requireInside } from './box-geometry.js';
import { requireAdmittances, type WallAdmittances } from './require-admittance.js';
import { requireNotNegative, requirePositive } from './require-positive.js';

/** Decay of the last cross mode kept between source and receiver, neper: 5e-6. */
const evanescence = 12;

/** Nearest that source and receiver may come along the axis on which they are farthest apart, m. */
const nearest = 0.02;

/** A source and a receiver in a box. */
export type BoxPath = { readonly size: BoxDimensions; readonly source: BoxPoint; readonly receiver: BoxPoint };

/**
 * Transfer from a point source to a receiver in a box by its damped modes.
 *
 * Equation: H = 4 pi G, (laplace + k^2) G = -delta(r - r0). Over two axes G is the sum of the damped modes
 * psi(y) psi(y0) / Lambda of walls with an admittance, psi = cos(q y) + (j k beta_0 / q) sin(q y), Lambda the integral of
 * psi^2; along the third, on which source and receiver are farthest apart, the sum is closed:
 * g = e^(-j q |x - x0|) (1 + r0 e^(-2 j q x<)) (1 + r1 e^(-2 j q (L - x>))) / (2 j q (1 - r0 r1 e^(-2 j q L))),
 * r = (q - k beta) / (q + k beta). This is the full triple sum, without its slow tail.
 * Units: m, Hz, specific admittance per wall as a function of Hz, attenuation of the air dB/m as a function of Hz. The
 * result is the pressure over that of the same source in the free field at 1 m: |H| = 1/r without walls; re and im.
 * Source: derived, locally reacting walls.
 * Valid: exact for flat, locally reacting, even walls, at any frequency; made for small rooms below about 1 kHz, since
 * the work grows as the square of frequency. A resonance with hard walls and no air attenuation has no finite value.
 * Errors: ArgumentError for a side, point, frequency or admittance that can't be, or for points nearer than 0.02 m.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { boxModalTransfer } from '@boothwright/acoustics/rooms';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // Invented: a box of 2 m by 1.5 m by 2.2 m, every wall of the same small admittance.
 * const path = { size: [2, 1.5, 2.2], source: [0.5, 0.7, 1.2], receiver: [1.5, 0.8, 1.5] } as const;
 * const soft = { re: 0.05, im: 0 };
 * const walls = () => ({ left: soft, right: soft, front: soft, back: soft, floor: soft, ceiling: soft });
 * const transfer = boxModalTransfer(path, [50, 100], walls, () => 0, air);
 * transfer.map(({ re, im }) => Math.hypot(re, im)); // [3.19, 1.22]
 * ```
 */
export function boxModalTransfer(
  { size, source, receiver }: BoxPath,
  hz: readonly number[],
  admittances: (hz: number) => WallAdmittances,
  attenuation: (hz: number) => number,
  air: Air,
): Complex[] {
  requireBox(size);
  requireInside('source', source, size);
  requireInside('receiver', receiver, size);
  const apart = size.map((_, axis) => Math.abs(source[axis]! - receiver[axis]!));
  const distance = Math.max(...apart);
  if (!(distance >= nearest)) {
    throw new ArgumentError(
      'distance of source and receiver along the axis where it is largest',
      distance,
      `a number of metres of ${nearest} or more`,
    );
  }
  const along = apart.indexOf(distance);
  const across = [0, 1, 2].filter((axis) => axis !== along) as [number, number];
  const near = Math.min(source[along]!, receiver[along]!);
  const far = Math.max(source[along]!, receiver[along]!);
  return hz.map((frequency) => {
    requirePositive('frequency', frequency, 'Hz');
    const loss = attenuation(frequency);
    requireNotNegative('attenuation of the air', loss, 'dB/m');
    const walls = listWalls(requireAdmittances(admittances(frequency)));
    const k = complex((2 * Math.PI * frequency) / air.soundSpeed, (-loss * Math.LN10) / 20);
    const reach = Math.hypot(k.re, evanescence / distance);
    const [first, second] = across.map((axis) =>
      axisModes(k, size[axis]!, walls[2 * axis]!, walls[2 * axis + 1]!, source[axis]!, receiver[axis]!, reach),
    ) as [AxisMode[], AxisMode[]];
    const squared = multiply(k, k);
    const beta0 = multiply(k, walls[2 * along]!);
    const beta1 = multiply(k, walls[2 * along + 1]!);
    let sum = complex(0);
    for (const a of first) {
      for (const b of second) {
        if (a.hard ** 2 + b.hard ** 2 > reach * reach) break;
        const q = towardsDecay(squareRoot(subtract(squared, add(a.squared, b.squared))));
        const closed = closedAxis(q, beta0, beta1, near, far, size[along]!);
        sum = add(sum, multiply(multiply(a.weight, b.weight), closed));
      }
    }
    return scale(sum, 4 * Math.PI);
  });
}

type AxisMode = {
  /** Wavenumber with hard walls, 1/m. */
  readonly hard: number;
  /** Square of the wavenumber, 1/m2. */
  readonly squared: Complex;
  /** psi(source) psi(receiver) / Lambda, 1/m. */
  readonly weight: Complex;
};

function axisModes(
  k: Complex,
  side: number,
  beta0: Complex,
  beta1: Complex,
  source: number,
  receiver: number,
  reach: number,
): AxisMode[] {
  const last = Math.ceil((reach * side) / Math.PI) + 1;
  const turn = scale({ re: -k.im, im: k.re }, side);
  const b0 = multiply(turn, beta0);
  const eigenvalues = axisEigenvalues(b0, multiply(turn, beta1), 0, last);
  return Array.from({ length: last + 1 }, (_, order) => {
    const w = complex(eigenvalues[2 * order]!, eigenvalues[2 * order + 1]!);
    // Below this the eigenfunction differs from its limit by less than rounding, and dividing by zero is avoided.
    const z = Math.hypot(w.re, w.im) < 1e-8 ? complex(1e-4) : squareRoot(w);
    const ratio = divide(b0, z);
    const psi = (place: number) => {
      const phase = scale(z, place / side);
      return add(cosine(phase), multiply(ratio, sine(phase)));
    };
    const ratioSquared = multiply(ratio, ratio);
    const wave = sine(z);
    const norm = add(
      add(scale(add(complex(1), ratioSquared), 0.5), divide(multiply(ratio, multiply(wave, wave)), z)),
      divide(multiply(subtract(complex(1), ratioSquared), sine(scale(z, 2))), scale(z, 4)),
    );
    return {
      hard: (order * Math.PI) / side,
      squared: scale(w, 1 / side ** 2),
      weight: divide(multiply(psi(source), psi(receiver)), scale(norm, side)),
    };
  });
}

/** The root whose wave exp(-j q x) does not grow. */
function towardsDecay(q: Complex): Complex {
  const root = q.im > 0 || (q.im === 0 && q.re < 0) ? scale(q, -1) : q;
  return root.re === 0 && root.im === 0 ? complex(1e-9) : root;
}

function closedAxis(q: Complex, beta0: Complex, beta1: Complex, near: number, far: number, side: number): Complex {
  const r0 = divide(subtract(q, beta0), add(q, beta0));
  const r1 = divide(subtract(q, beta1), add(q, beta1));
  const one = complex(1);
  const above = multiply(
    multiply(decay(q, far - near), add(one, multiply(r0, decay(q, 2 * near)))),
    add(one, multiply(r1, decay(q, 2 * (side - far)))),
  );
  const round = subtract(one, multiply(multiply(r0, r1), decay(q, 2 * side)));
  return divide(above, multiply({ re: -2 * q.im, im: 2 * q.re }, round));
}

/** exp(-j q x) */
function decay(q: Complex, x: number): Complex {
  const size = Math.exp(q.im * x);
  return { re: size * Math.cos(q.re * x), im: -size * Math.sin(q.re * x) };
}
