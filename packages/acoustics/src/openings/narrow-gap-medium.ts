import type { Air } from '../air/air-properties.js';
import { complex, divide, hyperbolicTangent, multiply, scale, squareRoot, subtract } from '../math/complex.js';
import { type PorousMedium, porousMedium } from '../porous/porous-medium.js';
import { airViscosity, heatRatio, prandtlNumber } from './air-friction.js';

/**
 * Air between two parallel walls, slowed by friction and kept warm by the walls, as an equivalent fluid.
 *
 * Equations, with s = (w/2) sqrt(j omega rho/mu) and g(s) = tanh(s)/s: rho_eff = rho/(1 - g(s)),
 * K_eff = gamma P0/(1 + (gamma - 1) g(s sqrt(Pr))). Gap w in m, f in Hz.
 * Source: exact solution of laminar oscillating flow between plates; M.R. Stinson, J. Acoust. Soc. Am. 89 (1991) 550 for
 * the form with two functions (from memory). Limits: a wide gap gives free air, a narrow one the steady flow resistance
 * 12 mu/w^2.
 * Valid for gaps far narrower than a wavelength and wider than about 1e-5 m.
 */
export function narrowGapMedium(gap: number, hz: number, air: Air): PorousMedium {
  const omega = 2 * Math.PI * hz;
  const viscous = scale(squareRoot(complex(0, (omega * air.density) / airViscosity(air))), gap / 2);
  const share = (s: { re: number; im: number }) => divide(hyperbolicTangent(s), s);
  const one = complex(1);
  const gamma = heatRatio(air);
  const thermal = scale(share(scale(viscous, Math.sqrt(prandtlNumber))), gamma - 1);
  return porousMedium(
    {
      density: divide(complex(air.density), subtract(one, share(viscous))),
      bulkModulus: divide(complex(gamma * air.pressure), { re: 1 + thermal.re, im: thermal.im }),
    },
    hz,
  );
}

/** [p, v] at the near end over [p, v] at the far end of a channel filled with `medium`, `depth` in m. */
export function channelMatrix(medium: PorousMedium, depth: number) {
  const phase = scale(medium.wavenumber, depth);
  // sin and cos of a complex phase.
  const sin = complex(Math.sin(phase.re) * Math.cosh(phase.im), Math.cos(phase.re) * Math.sinh(phase.im));
  const cos = complex(Math.cos(phase.re) * Math.cosh(phase.im), -Math.sin(phase.re) * Math.sinh(phase.im));
  const turned = multiply(complex(0, 1), sin);
  return {
    a: cos,
    b: multiply(medium.characteristicImpedance, turned),
    c: divide(turned, medium.characteristicImpedance),
    d: cos,
  };
}
