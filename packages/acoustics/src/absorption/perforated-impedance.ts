import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { add, type Complex, complex, divide, multiply, scale, squareRoot, subtract } from '../math/complex.js';
import { airViscosity } from '../openings/air-friction.js';
import { narrowGapMedium } from '../openings/narrow-gap-medium.js';
import { equivalentFluid } from '../porous/porous-medium.js';
import type { PerforatedSheet, SlottedSheet } from './absorber-layer.js';
import { besselRatio } from './bessel-ratio.js';
import { holeInteraction, touchingHoles } from './hole-interaction.js';

/** Effective densities, kg/m3, of what the two mouths of a hole open into: air, or fibre that touches the sheet. */
export type MouthDensities = { readonly front: Complex; readonly back: Complex };

/**
 * Impedance of a sheet with round holes, pressure difference over mean velocity, Pa s/m; small holes give a
 * microperforated sheet.
 *
 * Equation: z = [j omega t rho/(1 - 2 J1(x)/(x J0(x))) + j omega d_e (rho_front + rho_back) + R_s]/p with
 * x = (d/2) sqrt(-j omega rho/mu), d_e = (4/(3 pi)) d psi(p) the added length at each mouth, psi of `holeInteraction`, and
 * R_s = sqrt(2 mu rho omega)/2 the friction on the sheet around both mouths. t thickness and d hole diameter in m, p open
 * share, f in Hz.
 * Source: D.-Y. Maa, J. Acoust. Soc. Am. 104 (1998) 2861 (from memory), with the exact Bessel functions instead of his
 * approximations; end correction of a piston in a baffle (common practice); fibre that touches the sheet loads a mouth with its
 * own effective density (derived: the near field of a hole moves what is there).
 * Valid for holes and spacings far smaller than a wavelength, low sound levels (no jets) and no flow along the sheet.
 * Errors: ArgumentError for a size or frequency that cannot be, or an open share above pi/4, where the holes touch.
 */
export function perforatedImpedance(
  { thickness, holeDiameter, openArea }: Omit<PerforatedSheet, 'kind'>,
  hz: number,
  air: Air,
  mouths: MouthDensities = inAir(air),
): Complex {
  requireNumber('hole diameter', holeDiameter, { above: 0, unit: 'metres' });
  requireNumber('open area', openArea, { above: 0, atMost: touchingHoles });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const omega = 2 * Math.PI * hz;
  const x = scale(squareRoot(complex(0, (-omega * air.density) / airViscosity(air))), holeDiameter / 2);
  const moving = subtract(complex(1), scale(divide(besselRatio(x), x), 2));
  const inHole = divide(complex(air.density * thickness), moving);
  const added = (4 / (3 * Math.PI)) * holeDiameter * holeInteraction(openArea);
  return throughOpenings(inHole, added, omega, openArea, air, mouths);
}

/**
 * Impedance of a sheet with long parallel slots, pressure difference over mean velocity, Pa s/m.
 *
 * Equation: z = [j omega t rho_slot + j omega d_e (rho_front + rho_back) + R_s]/p, rho_slot of `narrowGapMedium`,
 * d_e = (w/pi) ln(1/sin(pi p/2)) the added length at each mouth; R_s as for `perforatedImpedance`. w slot width in m.
 * Source: d_e from the potential flow through a grating, J.M.A. Smits, C.W. Kosten, Acustica 1 (1951) 114 (from memory; the
 * tests hold it against the sum over the modes of a row of pistons); friction in the slot exact, at the mouths as for
 * round holes (an assumption).
 * Valid for slots and spacings far smaller than a wavelength, and slots far longer than wide.
 * Errors: ArgumentError for a size that cannot be.
 */
export function slottedImpedance(
  { thickness, slotWidth, openArea }: Omit<SlottedSheet, 'kind'>,
  hz: number,
  air: Air,
  mouths: MouthDensities = inAir(air),
): Complex {
  requireNumber('slot width', slotWidth, { above: 0, unit: 'metres' });
  requireNumber('open area', openArea, { above: 0, atMost: 1 });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const omega = 2 * Math.PI * hz;
  const inSlot = scale(equivalentFluid(narrowGapMedium(slotWidth, hz, air), hz).density, thickness);
  const added = (slotWidth / Math.PI) * Math.log(1 / Math.sin((Math.PI * openArea) / 2));
  return throughOpenings(inSlot, added, omega, openArea, air, mouths);
}

/** Both mouths in air. */
function inAir(air: Air): MouthDensities {
  return { front: complex(air.density), back: complex(air.density) };
}

function throughOpenings(
  massInside: Complex,
  addedLength: number,
  omega: number,
  openArea: number,
  air: Air,
  { front, back }: MouthDensities,
): Complex {
  const mass = add(massInside, scale(add(front, back), addedLength));
  const friction = 0.5 * Math.sqrt(2 * airViscosity(air) * air.density * omega);
  return scale(add(multiply(complex(0, omega), mass), complex(friction)), 1 / openArea);
}
