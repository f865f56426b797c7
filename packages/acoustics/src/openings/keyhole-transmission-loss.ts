import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { apertureTransmissionLoss } from './aperture-transmission-loss.js';

/** A keyhole: a round part of a diameter and a slot below it, m. */
export type Keyhole = {
  readonly diameter: number;
  readonly slotWidth: number;
  readonly slotLength: number;
  readonly depth: number;
};

/** Clear area of a keyhole, m2: the circle and the slot below it. */
export function keyholeArea({ diameter, slotWidth, slotLength }: Keyhole): number {
  requireNumber('diameter of the keyhole', diameter, { atLeast: 0, unit: 'metres' });
  requireNumber('width of the slot', slotWidth, { atLeast: 0, unit: 'metres' });
  requireNumber('length of the slot', slotLength, { atLeast: 0, unit: 'metres' });
  return (Math.PI / 4) * diameter ** 2 + slotWidth * slotLength;
}

/**
 * Transmission loss of a keyhole, dB, referred to its own area: that of a round hole of the same area.
 *
 * Source: derived; a mouth far smaller than the wavelength is known by its area and by the air it carries along, which for
 * a compact shape is within some percent that of the circle.
 * Valid for shapes up to about three times as long as wide, with a free way through the lock; a key or a cover is left out.
 * Units: m, Hz. Errors: ArgumentError for lengths below 0.
 */
export function keyholeTransmissionLoss(keyhole: Keyhole, hz: number, air: Air): number {
  const radius = Math.sqrt(keyholeArea(keyhole) / Math.PI);
  return apertureTransmissionLoss({ radius, depth: keyhole.depth }, hz, air);
}
