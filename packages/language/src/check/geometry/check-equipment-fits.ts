import type { Booth } from '../../model/booth-spec.js';
import type { Equipment } from '../../model/inside-the-booth.js';
import { type CheckContext, warn } from '../context.js';
import { millimetres } from '../millimetres.js';
import { SLACK } from './slack.js';

const AXES = [
  { axis: 'x', size: 'width', near: 'left', far: 'right' },
  { axis: 'y', size: 'depth', near: 'front', far: 'back' },
  { axis: 'z', size: 'height', near: 'floor', far: 'roof' },
] as const;

/** A thing with a size reaches no farther than the faces; one message for each is enough. */
export function checkEquipmentFits(ctx: CheckContext, booth: Booth): void {
  for (const thing of booth.equipment) checkThing(ctx, booth, thing);
}

function checkThing(ctx: CheckContext, { inside }: Booth, { name, position, size, tilt }: Equipment): void {
  if (!size) return;
  const extent = tiltedExtent(size, tilt.value);
  for (const { axis, size: side, near, far } of AXES) {
    const middle = position[axis];
    const room = inside[side];
    // Its middle is outside, which is told already.
    if (middle.value <= 0 || middle.value >= room.value) return;
    const beyondNear = extent[axis] / 2 - middle.value;
    const beyondFar = middle.value + extent[axis] / 2 - room.value;
    const beyond = Math.max(beyondNear, beyondFar);
    if (beyond <= SLACK) continue;
    warn(
      ctx,
      'equipment-beyond-face',
      middle.range,
      `\`${name}\`, ${millimetres(extent[axis])} in ${side}${tilt.value === 0 ? '' : ' as it leans'}, would reach ${millimetres(beyond)} into \`${beyondNear >= beyondFar ? near : far}\``,
      {
        hint: 'its place is that of its middle',
        related: [{ range: size[side].range, message: 'it is this large' }],
      },
    );
    return;
  }
}

/** Room that a box takes along each axis when its top leans back by `degrees`. */
function tiltedExtent(
  { width, depth, height }: NonNullable<Equipment['size']>,
  degrees: number,
): Record<'x' | 'y' | 'z', number> {
  const [sin, cos] = [Math.abs(Math.sin((degrees * Math.PI) / 180)), Math.abs(Math.cos((degrees * Math.PI) / 180))];
  return {
    x: width.value,
    y: depth.value * cos + height.value * sin,
    z: height.value * cos + depth.value * sin,
  };
}
