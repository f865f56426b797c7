import type { Booth, Site } from '@boothwright/language';
import { assemblyOutOfBounds } from './assembly-bounds.js';
import { firstReason, outOfBounds } from './bounds.js';

/** Why what hums inside, what a booth stands on or who lives beside it cannot be assessed; null when it can. */
export function noiseOutOfBounds(booth: Booth, site: Site | undefined): string | null {
  return firstReason(
    ...booth.vents.map(({ name, fan }) =>
      fan === undefined ? null : outOfBounds(`the low speed of the fan of ${name}`, fan.lowSpeed.value, 'speedShare'),
    ),
    ...booth.equipment.flatMap(({ name, position, soundPower }) => [
      ...[position.x, position.y, position.z].map(({ value }) =>
        outOfBounds(`the place of ${name}`, value, 'place', 'm'),
      ),
      ...(soundPower?.value.values ?? []).map(({ value }) =>
        outOfBounds(`the sound power of ${name}`, value, 'level', 'dB'),
      ),
    ]),
    ...(booth.mounts === undefined
      ? []
      : [
          outOfBounds(`the number of mounts of ${booth.name}`, booth.mounts.count.value, 'mounts'),
          outOfBounds(`the stiffness of the mounts of ${booth.name}`, booth.mounts.stiffness.value, 'stiffness', 'N/m'),
        ]),
    ...(site?.neighbours ?? []).flatMap(({ name, separation, area, volume, reverberation, distance }) => [
      area === undefined ? null : outOfBounds(`the area towards ${name}`, area.value, 'area', 'm2'),
      volume === undefined ? null : outOfBounds(`the volume of ${name}`, volume.value, 'volume', 'm3'),
      outOfBounds(`the reverberation of ${name}`, reverberation.value, 'reverberation', 's'),
      distance === undefined ? null : outOfBounds(`the distance to ${name}`, distance.value, 'distance', 'm'),
      separation?.kind === 'assembly' ? assemblyOutOfBounds(`what parts ${name}`, separation.assembly.layers) : null,
      ...(separation?.kind === 'loss' ? separation.loss.value.values : []).map(({ value }) =>
        outOfBounds(`the loss towards ${name}`, value, 'level', 'dB'),
      ),
    ]),
  );
}
