import { type Air, bandSamples, slitTransmissionLoss, thirdOctaveBands } from '@boothwright/acoustics';
import type { Memo } from '../../memo/memo.js';

/** Frequencies per third over which the resonances of a slit or hole are averaged. */
export const openingSamples = 9;

/** Band means of the energy that passes a slit, dB re its own area; negative where it passes more than falls on it. */
export function slitBandLoss(
  slit: { readonly gap: number; readonly depth: number; readonly position: 'mid' | 'edge' },
  air: Air,
  memo: Memo,
): number[] {
  return memo.of(`slit ${JSON.stringify([slit, air])}`, () =>
    thirdOctaveBands.map((band) => {
      const passed = bandSamples(band, openingSamples).map((hz) => 10 ** (-slitTransmissionLoss(slit, hz, air) / 10));
      return -10 * Math.log10(passed.reduce((sum, tau) => sum + tau, 0) / passed.length);
    }),
  );
}
