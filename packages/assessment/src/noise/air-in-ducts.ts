import {
  type Air,
  bendFlowNoise,
  endReflectionLoss,
  exactDuctOctaves,
  levelOf,
  octaveLevelsToThirds,
  straightDuctFlowNoiseOctaves,
  sumLevels,
} from '@boothwright/acoustics';
import type { Booth, Vent } from '@boothwright/language';
import { perBand } from '../bands/grid.js';
import { ductArea } from '../booth/openings/duct-area.js';
import type { Memo } from '../memo/memo.js';
import type { FanSettingName } from '../result/noise-result.js';
import type { BandModel, ByBand } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { airNoiseHalfWidth } from '../uncertainty/model-uncertainty.js';
import { ductFlows } from './duct-flows.js';
import { insideFieldHalfWidth } from './fan.js';
import { summedSpectra } from './summed-spectra.js';

export interface AirNoise {
  readonly byBand: ByBand;
  readonly halfWidth: readonly number[];
}

/**
 * Noise that the air itself makes in ducts and bends, inside the booth, dB by band; undefined when no air is known to move.
 *
 * Equation: the sound power of the straight run and of each bend, at the speed flow / clear area, less the reflection at the
 * inner end, + 10 lg(4 / A). No lining is credited, as the last bend may stand at the end. Both ducts count, that of the air
 * in and that of the air out. Units: m3/s, m2, dB. Source: `straightDuctFlowNoise`, `bendFlowNoise` (VDI 2081-1 as printed
 * in Bies, Hansen and Howard 2017, as transcribed).
 * Valid: for smooth ducts. Grilles, dampers, flexible ducts with folds and mazes are louder and are left out.
 */
export function airInDucts(
  booth: Booth,
  setting: FanSettingName,
  absorptionArea: readonly number[],
  bandModels: readonly BandModel[],
  air: Air,
  memo: Memo,
): AirNoise | undefined {
  const flows = ductFlows(booth, setting, air, memo).filter(({ flow }) => flow > 0);
  if (flows.length === 0) return undefined;
  const spectra = flows.map(({ vent, flow }) => {
    const end = endReflectionLoss({ area: ductArea(vent), termination: 'flush' }, air).loss;
    return ductFlowPower(vent, flow, air).map((level, band) =>
      level === null ? null : level - (end[band] as number) + levelOf(4 / (absorptionArea[band] as number)),
    );
  });
  return {
    byBand: summedSpectra(spectra),
    halfWidth: perBand((band) => combinedHalfWidth(airNoiseHalfWidth, insideFieldHalfWidth(bandModels[band]))),
  };
}

function ductFlowPower(vent: Vent, flow: number, air: Air): ByBand {
  const area = ductArea(vent);
  const speed = flow / area;
  const height = vent.duct.kind === 'round' ? vent.duct.diameter.value : vent.duct.height.value;
  const run = straightDuctFlowNoiseOctaves(speed, area);
  const bends = vent.bends.value;
  const octaves = exactDuctOctaves.map((hz, octave) => {
    const straight = run[octave] as number;
    if (bends <= 0) return straight;
    const bend = bendFlowNoise(hz, { speed, area, height, density: air.density }) + levelOf(bends);
    return sumLevels([straight, bend]);
  });
  // The working grid ends with the octave of 4 kHz.
  return octaveLevelsToThirds(octaves.slice(0, 7));
}
