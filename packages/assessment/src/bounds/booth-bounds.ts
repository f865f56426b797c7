import type { Booth, BoothSpec, Size2 } from '@boothwright/language';
import { faceNames } from '../booth/geometry.js';
import { assemblyOutOfBounds } from './assembly-bounds.js';
import { firstReason, outOfBounds } from './bounds.js';
import { noiseOutOfBounds } from './noise-bounds.js';

/** Why a booth, with the site and session around it, cannot be assessed; null when it can. */
export function boothOutOfBounds(booth: Booth, spec: BoothSpec): string | null {
  return firstReason(
    boxReason(booth),
    openingsReason(booth),
    surroundingsReason(booth, spec),
    noiseOutOfBounds(booth, spec.site),
  );
}

function boxReason(booth: Booth): string | null {
  const { inside, outside, name } = booth;
  const sides = ['width', 'depth', 'height'] as const;
  return firstReason(
    ...sides.map((side) => outOfBounds(`the inside ${side} of ${name}`, inside[side].value, 'insideLength', 'm')),
    ...(outside === undefined
      ? []
      : sides.map((side) => outOfBounds(`the outside ${side} of ${name}`, outside[side].value, 'insideLength', 'm'))),
    ...faceNames.map((face) => {
      const assembly = booth.faces[face]?.assembly;
      return assembly === undefined ? null : assemblyOutOfBounds(assembly.name, assembly.layers);
    }),
    ...booth.linings.flatMap((lining) => [
      assemblyOutOfBounds(`the lining of ${name}`, lining.layers),
      outOfBounds(`the covered share of a lining of ${name}`, lining.cover.value, 'share'),
    ]),
    outOfBounds(`the contents of ${name}`, booth.contents.value, 'mass', 'kg'),
  );
}

function openingsReason(booth: Booth): string | null {
  const size = (name: string, { width, height }: Size2) =>
    firstReason(
      outOfBounds(`the width of ${name}`, width.value, 'openingLength', 'm'),
      outOfBounds(`the height of ${name}`, height.value, 'openingLength', 'm'),
    );
  return firstReason(
    ...booth.doors.flatMap((door) => [
      size(door.name, door.size),
      assemblyOutOfBounds(`the leaf of ${door.name}`, door.leaf.layers),
      outOfBounds(`the perimeter gap of ${door.name}`, door.perimeterGap.value, 'gap', 'm'),
      outOfBounds(`the threshold gap of ${door.name}`, door.thresholdGap.value, 'gap', 'm'),
    ]),
    ...booth.windows.flatMap((window) => [
      size(window.name, window.size),
      assemblyOutOfBounds(`the pane of ${window.name}`, window.pane.layers),
    ]),
    ...booth.vents.flatMap((vent) => [
      ...(vent.duct.kind === 'round'
        ? [outOfBounds(`the duct of ${vent.name}`, vent.duct.diameter.value, 'ductLength', 'm')]
        : [
            outOfBounds(`the duct width of ${vent.name}`, vent.duct.width.value, 'ductLength', 'm'),
            outOfBounds(`the duct height of ${vent.name}`, vent.duct.height.value, 'ductLength', 'm'),
          ]),
      outOfBounds(`the run of ${vent.name}`, vent.run.value, 'length', 'm'),
      outOfBounds(`the number of bends of ${vent.name}`, vent.bends.value, 'bends'),
      vent.lining === undefined ? null : assemblyOutOfBounds(`the lining of ${vent.name}`, [vent.lining]),
      vent.fan === undefined ? null : outOfBounds(`the flow of ${vent.name}`, vent.fan.flow.value, 'flow', 'm3/s'),
      ...(vent.fan?.soundPower?.value.values ?? []).map((entry) =>
        outOfBounds(`the sound power of ${vent.name}`, entry.value, 'level', 'dB'),
      ),
      ...(vent.insertionLoss?.value.values ?? []).map((entry) =>
        outOfBounds(`the insertion loss of ${vent.name}`, entry.value, 'level', 'dB'),
      ),
    ]),
    ...booth.slits.flatMap((slit) => [
      outOfBounds(`the length of ${slit.name}`, slit.length.value, 'length', 'm'),
      outOfBounds(`the gap of ${slit.name}`, slit.gap.value, 'gap', 'm'),
      outOfBounds(`the depth of ${slit.name}`, slit.depth.value, 'layerThickness', 'm'),
    ]),
    ...booth.holes.flatMap((hole) => [
      outOfBounds(`the diameter of ${hole.name}`, hole.diameter.value, 'gap', 'm'),
      outOfBounds(`the depth of ${hole.name}`, hole.depth.value, 'layerThickness', 'm'),
    ]),
  );
}

function surroundingsReason(booth: Booth, { site, session }: BoothSpec): string | null {
  const room = site?.room;
  const microphone = booth.microphone;
  return firstReason(
    site === undefined
      ? null
      : outOfBounds('the reverberation of the room', site.reverberation.value, 'reverberation', 's'),
    ...(room === undefined
      ? []
      : (['width', 'depth', 'height'] as const).map((side) =>
          outOfBounds(`the ${side} of the room`, room[side].value, 'roomLength', 'm'),
        )),
    ...(site?.sources ?? []).flatMap((source) => {
      if (source.kind === 'impact') return [];
      const levels =
        source.kind === 'bands'
          ? source.levels.value.values.map((entry) => entry.value)
          : [source.reading.value.decibels];
      return levels.map((level) => outOfBounds(`the level of ${source.name}`, level, 'level', 'dB'));
    }),
    ...(session === undefined
      ? []
      : [
          outOfBounds('the number of people', session.people.value, 'people'),
          outOfBounds('the body mass', session.bodyMass.value, 'mass', 'kg'),
          outOfBounds('the length of the session', session.length.value, 'seconds', 's'),
          outOfBounds('the CO2 of the supply air', session.supplyAir.value, 'ppm', 'ppm'),
          outOfBounds('the CO2 rate per person', session.co2Rate.value, 'share', 'm3/s'),
          outOfBounds('the level of the voice', session.voiceLevel.value.decibels, 'level', 'dBFS'),
          outOfBounds('the heat inside', session.heat.value, 'mass', 'W'),
        ]),
    ...(microphone === undefined
      ? []
      : [
          outOfBounds('the distance of the microphone', microphone.distance.value, 'micDistance', 'm'),
          microphone.selfNoise === undefined
            ? null
            : outOfBounds('the self-noise of the microphone', microphone.selfNoise.value.decibels, 'level', 'dBA'),
          microphone.highPass === undefined
            ? null
            : outOfBounds('the high-pass', microphone.highPass.value, 'frequency', 'Hz'),
        ]),
  );
}
