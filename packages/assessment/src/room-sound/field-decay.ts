import { type Air, airAttenuation, boxRayDecay, eyringTime, listWalls } from '@boothwright/acoustics';
import { exactHz } from '../bands/grid.js';
import { surfaceOf, volumeOf } from '../booth/geometry.js';
import { mostMeanAbsorption } from '../booth/reverberation.js';
import { reverberationShare } from '../uncertainty/model-uncertainty.js';
import type { AcousticBox } from './acoustic-box.js';
import type { Decay } from './modal-decay.js';

/** The decay of a band as a field, and whether it is too dry for one. */
export interface FieldDecay extends Decay {
  readonly dry: boolean;
}

/**
 * Decay of one band (index of the grid) of many reflections. Sound that is mixed at every wall decays by Eyring, sound that
 * is mirrored and never scattered more slowly by `boxRayDecay`; a booth lies between, so the range goes from a quarter below
 * the first to a quarter above the first or up to the second. The figure is Eyring's up to a mean absorption of a half;
 * beyond it goes over to the geometric mean of both where all is absorbed, since too few reflections are left to mix.
 */
export function fieldDecay(box: AcousticBox, band: number, air: Air): FieldDecay {
  const { size } = box;
  const walls = listWalls(box.absorption[band]!);
  const pairs = [size[1] * size[2], size[0] * size[2], size[0] * size[1]];
  const surface = surfaceOf(size);
  const area = walls.reduce((sum, alpha, wall) => sum + alpha * pairs[Math.floor(wall / 2)]!, 0) + box.objects[band]!;
  const mean = Math.min(area / surface, 0.99);
  const attenuation = airAttenuation(exactHz[band]!, air);
  const mixed = eyringTime(volumeOf(size), surface, mean, attenuation, air);
  const mirrored = Math.max(
    mixed,
    boxRayDecay(size, box.absorption[band]!, attenuation, box.objects[band]!, air)?.t20 ?? mixed,
  );
  const dry = mean > mostMeanAbsorption;
  const weight = dry ? (0.5 * (mean - mostMeanAbsorption)) / (1 - mostMeanAbsorption) : 0;
  return {
    seconds: mixed ** (1 - weight) * mirrored ** weight,
    lowS: mixed * (1 - reverberationShare),
    highS: Math.max(mixed * (1 + reverberationShare), mirrored),
    dry,
  };
}
