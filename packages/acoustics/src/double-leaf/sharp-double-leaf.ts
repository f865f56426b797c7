import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { massLawField } from '../panels/mass-law.js';
import { sharpTransmissionLoss } from '../panels/sharp-transmission-loss.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { cavityLimitFrequency, doubleLeafResonance } from './double-leaf-resonance.js';
import type { LeafCavity } from './leaf-cavity.js';
import { type LeafConditions, lossAtFrequencies } from './leaf-conditions.js';
import { checkWallLeaf, singlePanelOfLeaf, type WallLeaf } from './wall-leaf.js';

/** A wall as B.H. Sharp's model sees it. */
export type SharpWall = {
  readonly leaves: readonly [WallLeaf, WallLeaf];
  readonly cavity: LeafCavity;
  /** Absorption area of the cavity over the area of the wall, see `cavityAbsorptionRatio`; 2 with lined faces. */
  readonly absorptionRatio: number;
};

/** From here on, both faces lined, a cavity counts as the damped one of the model. */
const fullAbsorptionRatio = 2;

/**
 * Transmission loss of two leaves without connections by B.H. Sharp's three ranges, dB.
 *
 * Equation: below f0 the field-incidence mass law of m1 + m2; from f0 to fl = c/(2 pi d) R1 + R2 + 20 lg(2 k d); above fl
 * R1 + R2 + 6. R1, R2 of `sharpTransmissionLoss`; never below the mass law of both leaves where both follow theirs.
 * With an absorption A/S below 2 the cavity term is no more than 10 lg(A/S): the cavity is then a room of its own.
 * Units: Hz, m, kg/m2. Source: M. Long: Architectural Acoustics, Eqs. 9.46 to 9.51, D.A. Bies, C.H. Hansen, C.Q. Howard:
 * Engineering Noise Control, 5th ed. (2017), Sect. 7.2.6 (both read in transcriptions); the damped cavity is theirs, the
 * term for less absorption is an energy balance of the cavity (derived) joined to it here.
 * Valid for leaves without studs; without absorption it is a rough guide. f0 of `doubleLeafResonance`.
 * Errors: ArgumentError for leaves, cavity or frequencies that cannot be.
 */
export function sharpDoubleLeaf(wall: SharpWall, conditions: LeafConditions): TransmissionLoss {
  checkSharpWall(wall);
  return lossAtFrequencies(conditions, (hz) => sharpDoubleLeafAt(wall, hz, conditions.air));
}

/** The same at one frequency, unchecked. */
export function sharpDoubleLeafAt({ leaves, cavity, absorptionRatio }: SharpWall, hz: number, air: Air): number {
  const [first, second] = leaves;
  const together = massLawField(hz, first.surfaceMass + second.surfaceMass, air);
  if (hz < doubleLeafResonance(first.surfaceMass, second.surfaceMass, cavity, air)) return together;
  const one = sharpTransmissionLoss(singlePanelOfLeaf(first, air), hz, air);
  const two = sharpTransmissionLoss(singlePanelOfLeaf(second, air), hz, air);
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  const spring =
    hz < cavityLimitFrequency(cavity.depth, air) ? 20 * Math.log10(2 * k * cavity.depth) : 20 * Math.log10(2);
  const room = 10 * Math.log10(Math.max(absorptionRatio, 1e-6));
  const coupling = absorptionRatio >= fullAbsorptionRatio ? spring : Math.min(spring, room);
  // Just above f0 the straight line starts below the mass law; a plate at coincidence may well lie below it.
  const dips = first.criticalFrequency / 2 < hz || second.criticalFrequency / 2 < hz;
  return Math.max(0, dips ? one + two + coupling : Math.max(together, one + two + coupling));
}

export function checkSharpWall({ leaves, absorptionRatio }: SharpWall): void {
  checkWallLeaf(leaves[0], 'the first leaf');
  checkWallLeaf(leaves[1], 'the second leaf');
  requireNumber('absorption ratio of the cavity', absorptionRatio, { atLeast: 0 });
}
