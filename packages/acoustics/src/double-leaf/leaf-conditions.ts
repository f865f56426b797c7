import type { Air } from '../air/air-properties.js';
import { thirdOctaveBands } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';

/** What the closed-form models need beside the wall. */
export type LeafConditions = {
  readonly air: Air;
  /** Hz; without it the middles of the 21 third-octave bands. */
  readonly frequencies?: readonly number[];
};

/** Hz, exact middles of the working grid. */
const middles = thirdOctaveBands.map(({ exact }) => exact);

/** The transmission loss at each frequency asked for, from a function that gives one. */
export function lossAtFrequencies(
  { frequencies = middles }: LeafConditions,
  lossAt: (hz: number) => number,
): TransmissionLoss {
  return asTransmissionLoss(
    frequencies.map((hz) => {
      requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
      return lossAt(hz);
    }),
  );
}
