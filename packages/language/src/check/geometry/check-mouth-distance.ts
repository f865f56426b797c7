import type { Booth } from '../../model/booth-spec.js';
import { type CheckContext, warn } from '../context.js';
import { millimetres } from '../millimetres.js';

/** A distance that is off by this factor changes the level of the voice by 2 dB: more than a tape measure explains. */
const noticeable = 10 ** (2 / 20);

/** Where mouth and microphone both have a place, the stated distance is the one between them. */
export function checkMouthDistance(ctx: CheckContext, { mouth, microphone }: Booth): void {
  if (mouth === undefined || microphone === undefined || microphone.distance.origin.kind !== 'given') return;
  const { position, distance } = microphone;
  const between = Math.hypot(
    mouth.x.value - position.x.value,
    mouth.y.value - position.y.value,
    mouth.z.value - position.z.value,
  );
  if (between <= distance.value * noticeable && between >= distance.value / noticeable) return;
  warn(
    ctx,
    'distances-disagree',
    distance.range,
    `\`distance\` says ${millimetres(distance.value)} from the mouth, but \`mouth at\` and \`mic at\` are ${millimetres(between)} apart`,
    {
      hint: 'the level of the voice follows `distance`, the reflections follow the places',
      related: [{ range: mouth.range, message: 'the mouth is here' }],
    },
  );
}
