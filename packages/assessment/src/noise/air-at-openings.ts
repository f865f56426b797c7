import { type Air, exactDuctOctaves, octaveLevelsToThirds, openingFlowNoise } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { ventEnd } from '../air/vent-end.js';
import type { Memo } from '../memo/memo.js';
import type { AirPart, FanSettingName } from '../result/noise-result.js';
import type { BandModel } from '../result/result-document.js';
import { openingNoiseHalfWidth } from '../uncertainty/model-uncertainty.js';
import { type AirNoise, airNoiseOf, spreadInside } from './air-noise.js';
import { ductFlows } from './duct-flows.js';

/**
 * Hiss of the air where it enters and leaves the booth, dB by band; undefined when no air is known to move.
 *
 * Equation: L_p = L_W + 10 lg(4 / A), L_W of the grille or of the plain end of the duct. Both ends count, that of the air in and that of
 * the air out. Units: m3/s, m2, dB. Source: `openingFlowNoise`; room acoustics, common practice.
 * Valid: a microphone further from the opening than some widths of it; the place of a vent is not in the text, so that the direct
 * sound is left out. Dampers, filters and narrow bars are louder. A plain end is taken as rough as a grille of its loss, which is more than a
 * smooth jet makes. The far end, beyond the duct, is left out.
 */
export function airAtOpenings(
  booth: Booth,
  setting: FanSettingName,
  absorptionArea: readonly number[],
  bandModels: readonly BandModel[],
  air: Air,
  memo: Memo,
): AirNoise | undefined {
  const parts = ductFlows(booth, setting, air, memo)
    .filter(({ flow }) => flow > 0)
    .map(({ vent, direction, flow }): AirPart => {
      const end = ventEnd(vent, direction, flow, air);
      // The working grid ends with the octave of 4 kHz.
      const octaves = exactDuctOctaves.slice(0, 7).map((hz) => openingFlowNoise(hz, end));
      return {
        vent: vent.name,
        way: vent.grille === undefined ? 'duct-end' : 'grille',
        byBand: spreadInside(octaveLevelsToThirds(octaves), absorptionArea),
      };
    });
  return airNoiseOf(parts, openingNoiseHalfWidth, bandModels);
}
