import { type Complex, complex, divide } from '../math/complex.js';
import { type Edges, edgeFactor, modeFrequency } from './first-panel-resonance.js';

/** Highest order of the modes that are summed in each direction; their share of the moved volume is 99 %. */
const highestOrder = 31;

/** `panelVolumeImpedance` as a function of the frequency in Hz: the modes are worked out once. */
export function panelImpedance(
  {
    surfaceMass,
    stiffness,
    lossFactor,
  }: { readonly surfaceMass: number; readonly stiffness: number; readonly lossFactor: number },
  a: number,
  b: number,
  edges: Edges,
): (hz: number) => Complex {
  if (stiffness === 0) return (hz) => complex(0, 2 * Math.PI * hz * surfaceMass);
  const speed = Math.sqrt(stiffness / surfaceMass);
  const raise = edgeFactor(a, b, edges);
  const orders = (highestOrder + 1) / 2;
  const squares = new Float64Array(orders * orders);
  const shares = new Float64Array(orders * orders);
  for (let m = 1, at = 0; m <= highestOrder; m += 2) {
    for (let n = 1; n <= highestOrder; n += 2, at++) {
      squares[at] = (2 * Math.PI * modeFrequency(speed, a, b, m, n) * raise) ** 2;
      shares[at] = 64 / (Math.PI ** 4 * m * m * n * n);
    }
  }
  return (hz) => {
    const omega = 2 * Math.PI * hz;
    const square = omega * omega;
    let re = 0;
    let im = 0;
    for (let at = 0; at < squares.length; at++) {
      const modal = squares[at]!;
      // j omega share over (x + j y).
      const x = surfaceMass * (modal - square);
      const y = surfaceMass * modal * lossFactor;
      const scale = (omega * shares[at]!) / (x * x + y * y);
      re += scale * y;
      im += scale * x;
    }
    return divide(complex(1), complex(re, im));
  };
}
