import { fullShoutReading } from '@boothwright/acoustics';
import type { BoothSpec } from '@boothwright/language';
import type { DefaultUsed } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { effortBasis } from '../voice/voice-efforts.js';
import { ventsWithFan } from './fan-settings.js';
import { mountLossFactor } from './mounts.js';
import { selfNoiseShape } from './room-tone.js';

/** What the noise and the voice assume where the text can't say it or does not. */
export function noiseAssumptions({ booths, session }: BoothSpec): DefaultUsed[] {
  const fan = booths.flatMap(ventsWithFan).find((vent) => vent.fan.place === undefined);
  const microphone = booths.find((booth) => booth.microphone?.selfNoise !== undefined)?.microphone;
  const placeless = booths.find(({ vents }) => vents.length > 0)?.vents[0];
  const plainEnd = booths.flatMap(({ vents }) => vents).find(({ grille }) => grille === undefined);
  const mounts = booths.find((booth) => booth.mounts !== undefined)?.mounts;
  return [
    ...(fan === undefined
      ? []
      : [
          {
            name: 'fan-place',
            value: 'outside, at the far end of its duct, its other side open to the room',
            evidence: 'common-practice',
            source: 'where a quiet booth has its fan; the text can say `place`',
            range: textRange(fan.fan.range),
          },
        ]),
    ...(placeless === undefined
      ? []
      : [
          {
            name: 'vent-place',
            value: 'anywhere on its face, away from the microphone',
            evidence: 'common-practice',
            source:
              'our own: the text gives a vent no place, so that its sound and that of its fan and air are taken spread through the booth; near an opening the microphone hears more',
            range: textRange(placeless.nameRange),
          },
        ]),
    ...(plainEnd === undefined
      ? []
      : [
          {
            name: 'plain-duct-end',
            value: 'hisses like a grille that takes the pressure of its end',
            evidence: 'common-practice',
            source:
              'our own, on the loud side: a smooth end lets out a jet, which makes less, but no source was found that tells how much less',
            range: textRange(plainEnd.nameRange),
          },
        ]),
    ...(microphone === undefined
      ? []
      : [
          {
            name: 'microphone-noise-shape',
            value: `${selfNoiseShape} noise from 20 Hz to 20 kHz`,
            evidence: 'common-practice',
            source: 'a single figure in dBA says nothing of the spectrum; the hiss of an amplifier',
            range: textRange(microphone.range),
          },
        ]),
    ...(mounts === undefined
      ? []
      : [
          {
            name: 'mount-loss-factor',
            value: String(mountLossFactor),
            evidence: 'from-memory',
            source: 'rubber for mounts, 0.05 to 0.2 by compound',
            range: textRange(mounts.range),
          },
        ]),
    ...(session?.effort.value === 'shout'
      ? [
          {
            name: 'full-shout',
            value: `${fullShoutReading} dBA at 1 m, for what is heard outside`,
            evidence: 'from-memory',
            source: effortBasis('full-shout'),
            range: textRange(session.effort.range),
          },
        ]
      : []),
  ];
}
