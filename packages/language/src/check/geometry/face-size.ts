import type { Booth, Face, Size2 } from '../../model/booth-spec.js';

/** Width and height of a face as it is seen from outside. */
export function faceSize(booth: Pick<Booth, 'outside' | 'inside'>, face: Face): Size2 {
  const size = booth.outside ?? booth.inside;
  if (face === 'front' || face === 'back') return { width: size.width, height: size.height };
  if (face === 'left' || face === 'right') return { width: size.depth, height: size.height };
  return { width: size.width, height: size.depth };
}
