import { type Air, levelInRoom } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { perBand } from '../bands/grid.js';
import { levelsOnGrid } from '../bands/level-table.js';
import type { AbsorptionArea } from '../booth/absorption-area.js';
import type { EquipmentNoise } from '../result/noise-result.js';
import type { BandModel } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { fanPowerHalfWidth } from '../uncertainty/model-uncertainty.js';
import { insideFieldHalfWidth } from './fan.js';
import { levelTotals } from './level-totals.js';

/** Nearer than this the direct sound is that of this distance, m: no machine is a point. */
const nearestDistance = 0.1;

/**
 * Sound of what stands inside, at the microphone.
 *
 * Equation: L_p = L_W + 10 lg(1 / (4 pi r^2) + 4 / R), R = A / (1 - a): direct and reverberant. Without a microphone the
 * distance is unknown and the reverberant part alone counts. Units: dB re 1 pW, m, m2.
 * Source: `levelInRoom` (common practice). Valid: above the Schroeder frequency; below it with a wider range. It is alike in
 * all directions; a machine on a shelf or floor also shakes it, which is left out.
 */
export function equipmentNoise(
  booth: Booth,
  area: AbsorptionArea,
  bandModels: readonly BandModel[],
  air: Air,
): EquipmentNoise[] {
  const halfWidth = equipmentHalfWidth(bandModels);
  return booth.equipment.flatMap(({ name, nameRange, soundPower, position }) => {
    if (soundPower === undefined) return [];
    const microphone = booth.microphone?.position;
    const distance =
      microphone === undefined
        ? null
        : Math.hypot(
            microphone.x.value - position.x.value,
            microphone.y.value - position.y.value,
            microphone.z.value - position.z.value,
          );
    const byBand = levelsOnGrid(soundPower.value).map((level, band) => {
      if (level === null) return null;
      const constant = (area.total[band] as number) / (1 - (area.mean[band] as number));
      const far = distance === null ? Number.MAX_SAFE_INTEGER : Math.max(distance, nearestDistance);
      return levelInRoom(level, far, 1, constant, air);
    });
    return [
      {
        name,
        range: textRange(nameRange),
        atMicrophone: levelTotals(byBand, halfWidth, `${name} inside`),
        distanceM: distance,
      },
    ];
  });
}

export function equipmentHalfWidth(bandModels: readonly BandModel[]): number[] {
  return perBand((band) => combinedHalfWidth(fanPowerHalfWidth, insideFieldHalfWidth(bandModels[band])));
}
