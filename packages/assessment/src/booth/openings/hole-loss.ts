import { type Air, apertureTransmissionLoss, bandSamples, thirdOctaveBands } from '@boothwright/acoustics';
import type { Memo } from '../../memo/memo.js';
import { openingSamples } from './slit-loss.js';

/** Band means of the energy that passes a round hole, dB re its own area. */
export function holeBandLoss(
  hole: { readonly radius: number; readonly depth: number },
  air: Air,
  memo: Memo,
): number[] {
  return memo.of(`hole ${JSON.stringify([hole, air])}`, () =>
    thirdOctaveBands.map((band) => {
      const passed = bandSamples(band, openingSamples).map(
        (hz) => 10 ** (-apertureTransmissionLoss(hole, hz, air) / 10),
      );
      return -10 * Math.log10(passed.reduce((sum, tau) => sum + tau, 0) / passed.length);
    }),
  );
}
