import { type Air, levelOf, sabineConstant, speechBasis, speechSpectrum } from '@boothwright/acoustics';
import type { Session, Site } from '@boothwright/language';
import { knownBands } from '../bands/band-names.js';
import { perBand } from '../bands/grid.js';
import type { BoothPath } from '../booth/booth-path.js';
import { levelTotals } from '../noise/level-totals.js';
import type { BandModel, BoothResult } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { fieldHalfWidth, voiceLevelHalfWidth } from '../uncertainty/model-uncertainty.js';

/**
 * Sound power of a talker less the level at 1 m, dB: 10 lg(4 pi), a point source in free air. Published figures for a
 * real talker are near 10.8 dB (a table after ANSI), so the rounding is kept.
 */
export const powerAboveLevelAtOneMetre = 11;

/**
 * Level of the talker in the room around the booth.
 *
 * Equation: all power of the talker falls on the inside again and again until it is absorbed or passes, so the power that
 * passes is W_t = W * sum(S_i tau_i) / A_inside; outside L = L_Wt + 10 lg(4 / A_room), A_room = k V / T with Sabine's constant k.
 * Units: m2, m3, s, dB. Source: Sabine's energy balance of two rooms (common practice).
 * Valid: above the Schroeder frequency of the booth; below it the range is wider. The floor face is counted as if it
 * radiated into the room. Bands in which the voice is unknown stay unknown.
 */
export function voiceOutside(
  paths: readonly BoothPath[],
  absorptionArea: readonly number[],
  shares: readonly (readonly (number | null)[])[],
  bandModels: readonly BandModel[],
  site: Site | undefined,
  session: Session | undefined,
  air: Air,
): BoothResult['voiceOutside'] {
  if (site?.room === undefined || session === undefined) return null;
  const { width, depth, height } = site.room;
  const roomArea = (sabineConstant(air) * width.value * depth.value * height.value) / site.reverberation.value;
  const effort = session.effort.value;
  const speech = speechSpectrum(effort);
  const outside = perBand((band) => {
    const level = speech[band];
    if (level === null || level === undefined) return null;
    const passed = paths.reduce(
      (sum, { result }) => sum + result.areaM2 * 10 ** (-(result.transmissionLossDb[band] as number) / 10),
      0,
    );
    const power = level + powerAboveLevelAtOneMetre;
    return power + levelOf(passed / (absorptionArea[band] as number)) + levelOf(4 / roomArea);
  });
  const halfWidth = perBand((band) => {
    const path = paths.reduce(
      (sum, { halfWidth: width_ }, index) => sum + (shares[index]?.[band] ?? 0) * (width_[band] as number),
      0,
    );
    const model = bandModels[band];
    const field = model === undefined || model === 'not-assessed' ? 'few-modes' : model;
    return combinedHalfWidth(path, voiceLevelHalfWidth, fieldHalfWidth[field]);
  });
  return {
    ...levelTotals(outside, halfWidth, `${effort} voice through the booth`),
    effort,
    where: site.title ?? 'the room around the booth',
    note: `Levels from ${knownBands(outside)}: the standard speech spectrum says nothing below 160 Hz, where a low voice still has energy. Walls between this room and the next are not counted. Voice: ${speechBasis(effort).text}.`,
  };
}
