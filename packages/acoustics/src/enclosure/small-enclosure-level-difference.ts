import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { complex, multiply } from '../math/complex.js';
import { heatRatio } from '../openings/air-friction.js';
import type { LevelDifference } from '../quantities/level-difference.js';
import { boxRadiationImpedance, type Surrounding } from './box-radiation-impedance.js';
import type { Cancellation, EnclosureElement } from './enclosure-element.js';
import { addFlow, createFlows, driveOf, levelDifferenceOf } from './enclosure-flows.js';
import { checkElement, enclosureParts } from './enclosure-parts.js';

export { type Cancellation, defaultPanelEdges, type EnclosureElement } from './enclosure-element.js';

/** An enclosure small against the wavelength: its air and the parts of its skin. */
export type SmallEnclosure = {
  /** m3 of air inside */
  readonly volume: number;
  readonly elements: readonly EnclosureElement[];
  readonly air: Air;
  /** Hz */
  readonly hz: readonly number[];
  /** 0..1, share of the volume that fibre keeps at one temperature; `defaultIsothermalShare` when absent. */
  readonly isothermalShare?: number;
  /** Whether flows of opposite phase may cancel; `defaultCancellation` when absent. */
  readonly cancellation?: Cancellation;
  /**
   * Free outer surface, m2, and what stands round the box; with it the air outside loads the walls, see
   * `boxRadiationImpedance`. Without it that load is left out.
   */
  readonly outside?: { readonly freeSurface: number; readonly surrounding: Surrounding };
};

/** Without knowledge of linings the air inside is taken as adiabatic. */
export const defaultIsothermalShare = 0;
/** The model as it is, for one pressure all over the outside. */
export const defaultCancellation: Cancellation = 'full';

/**
 * Level outside minus level inside of a box small against the wavelength, dB per frequency.
 *
 * Model: one pressure p_o all over the outside, one pressure p_i inside. Every wall is the two-port [A B; C D] of its
 * layers at normal incidence, so v_in = (p_o - A p_i)/B; holes and slits likewise. What flows in compresses the air:
 * Sum S v_in = j omega V/(rho c^2) p_i (1 + s (gamma - 1)) with s the isothermal share. Hence
 * p_o/p_i = (j omega V/(rho c^2) (1 + s (gamma - 1)) + Sum S A/B) / Sum S/B.
 * With `cancellation: 'none'` what the outside drives in, |Sum q|^2, is taken as the sum of four squares: of all parts of q
 * in step with the pressure, against it, a quarter turn before and a quarter turn behind. It equals |Sum q|^2 where all
 * flows are alike and is never below it. Panels above and below their first resonance, and the air in a duct, move in
 * opposite phase, and how well they cancel depends on
 * pressures outside that are never quite equal. A leak's `attenuation` takes 10^(-a/20) off its q; what flows out again
 * is left as it is. At an edge the second surface mirrors the slit: its mouths are those of twice the width, and the
 * square of the pressure that drives it is doubled.
 * Leaves of a wall of known size are panels by `panelVolumeImpedance`; round holes and slits are plugs of air with the
 * mass and radiation of both mouths and with friction (`narrowGapMedium`; a round hole as a slit as wide as its radius,
 * exact while the boundary layer is thin and half too much in holes below 1 mm).
 * Units: volume m3, areas m2, hz in Hz.
 * With `outside` the difference is that to the pressure which the same outside field would have on rigid walls, and the air
 * that the walls carry and the sound that they radiate are counted; openings count their own mouths besides. Without it
 * about 1 kg/m2 is left out, which matters for walls below 10 kg/m2 and for the depth of the breathing resonance.
 * Source: derived; the close-fitting enclosure of the handbooks is the case of a single limp wall.
 * Valid below about half the first mode of the inside (`smallEnclosureLimit`), which this function does not know; above it
 * the pressure inside is not uniform and the result is meaningless. Positive means quieter inside; at the resonances of
 * the box it is negative.
 * Errors: ArgumentError for a quantity that can't be, a word that is not known, or an enclosure without elements.
 * See also: `smallEnclosureByPath` for the same with each part of the skin alone beside it.
 */
export function smallEnclosureLevelDifference({
  volume,
  elements,
  air,
  hz,
  isothermalShare = defaultIsothermalShare,
  cancellation = defaultCancellation,
  outside,
}: SmallEnclosure): LevelDifference {
  requireNumber('volume of the enclosure', volume, { above: 0, unit: 'cubic metres' });
  requireNumber('isothermal share', isothermalShare, { atLeast: 0, atMost: 1 });
  requireOneOf('cancellation', cancellation, ['full', 'none']);
  if (elements.length === 0)
    throw new ArgumentError('number of elements', 0, '1 or more, as sound gets in through them');
  elements.forEach(checkElement);
  for (const frequency of hz) requireNumber('frequency', frequency, { above: 0, unit: 'Hz' });
  const parts = enclosureParts(elements, air);
  const compliance = (volume / (air.density * air.soundSpeed ** 2)) * (1 + isothermalShare * (heatRatio(air) - 1));
  const differences: readonly number[] = hz.map((frequency) => {
    const flows = createFlows(frequency, compliance);
    parts.forEach(({ area, twoPort }, index) => {
      if (area > 0) addFlow(flows, area, driveOf(elements[index]!), twoPort(frequency));
    });
    if (outside !== undefined) {
      // All that flows in compresses the air, and the air outside must bring it: p_o = p_blocked - Z_outside Q.
      const load = boxRadiationImpedance(outside.freeSurface, outside.surrounding, frequency, air);
      const taken = multiply(load, complex(0, 2 * Math.PI * frequency * compliance));
      const lost = multiply(complex(flows.drivenRe, flows.drivenIm), taken);
      flows.loadingRe += lost.re;
      flows.loadingIm += lost.im;
    }
    return levelDifferenceOf(flows, cancellation);
  });
  return differences as LevelDifference;
}
