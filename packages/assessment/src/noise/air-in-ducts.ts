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
import type { Booth, Maze, Vent } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';
import type { Memo } from '../memo/memo.js';
import type { AirPart, FanSettingName } from '../result/noise-result.js';
import type { BandModel, ByBand } from '../result/result-document.js';
import { airNoiseHalfWidth } from '../uncertainty/model-uncertainty.js';
import { type AirNoise, airNoiseOf, spreadInside } from './air-noise.js';
import { ductFlows } from './duct-flows.js';

/**
 * Noise that the air itself makes in ducts and bends, inside the booth, dB by band; undefined when no air is known to move.
 *
 * Equation: the sound power of the straight run, of each bend and of each right angle that a maze turns, at the speed flow / clear
 * area of that section, less the reflection at the inner end, + 10 lg(4 / A). No lining is credited, as the last bend may
 * stand at the end. Both ducts count, that of the air in and that of the air out. Units: m3/s, m2, dB. Source: `straightDuctFlowNoise`, `bendFlowNoise` (VDI 2081-1 as printed
 * in Bies, Hansen and Howard 2017, as transcribed).
 * Valid: for smooth ducts; flexible ducts with folds are louder. Where the air enters the booth is `airAtOpenings`.
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
  const parts = flows.map(({ vent, flow }): AirPart => {
    const end = endReflectionLoss({ area: lastArea(vent), termination: 'flush' }, air).loss;
    const power = ductFlowPower(vent, flow, air).map((level, band) =>
      level === null ? null : level - (end[band] as number),
    );
    return { vent: vent.name, way: 'duct', byBand: spreadInside(power, absorptionArea) };
  });
  return airNoiseOf(parts, airNoiseHalfWidth, bandModels);
}

function ductFlowPower(vent: Vent, flow: number, air: Air): ByBand {
  const area = ductArea(vent);
  const speed = flow / area;
  const height = vent.duct.kind === 'round' ? vent.duct.diameter.value : vent.duct.height.value;
  const run = straightDuctFlowNoiseOctaves(speed, area);
  const turns = [
    { count: vent.bends.value, speed, area, height },
    ...(vent.maze === undefined ? [] : [mazeTurns(vent.maze, flow)]),
  ].filter(({ count }) => count > 0);
  const octaves = exactDuctOctaves.map((hz, octave) => {
    const bends = turns.map(
      ({ count, ...section }) => bendFlowNoise(hz, { ...section, density: air.density }) + levelOf(count),
    );
    return sumLevels([run[octave] as number, ...bends]);
  });
  // The working grid ends with the octave of 4 kHz.
  return octaveLevelsToThirds(octaves.slice(0, 7));
}

function mazeTurns({ turns, angle, channel }: Maze, flow: number) {
  const height = channel.height.value;
  const area = channel.width.value * height;
  return { count: (turns.value * angle.value) / 90, speed: flow / area, area, height };
}

/** Clear area where the path ends in the booth, m2; a grille is no end of its own. */
function lastArea(vent: Vent): number {
  return vent.maze === undefined ? ductArea(vent) : vent.maze.channel.width.value * vent.maze.channel.height.value;
}
