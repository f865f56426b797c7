import type { Booth } from '@boothwright/language';
import type { Vector } from '../reflections/vectors.js';
import { insideSize } from './geometry.js';

/**
 * Where the mouth is: as stated, or else at the stated distance of the microphone, level with it, along the depth on the side
 * of the middle of the booth, where a person has room; at the middle itself on the side of the back.
 */
export function mouthPlace(booth: Booth): { readonly at: Vector; readonly stated: boolean } | undefined {
  const { mouth, microphone } = booth;
  if (microphone === undefined) return undefined;
  if (mouth !== undefined) return { at: [mouth.x.value, mouth.y.value, mouth.z.value], stated: true };
  const { x, y, z } = microphone.position;
  const depth = insideSize(booth)[1];
  const towards = y.value <= depth / 2 ? 1 : -1;
  const along = Math.min(Math.max(y.value + towards * microphone.distance.value, 0), depth);
  return { at: [x.value, along, z.value], stated: false };
}
