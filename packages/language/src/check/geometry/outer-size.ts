import type { Booth, Face } from '../../model/booth-spec.js';
import { assemblyThickness } from '../read-assembly.js';

/** Metres over the structure: as given, or the inside and the layers of both faces, as far as they are known. */
export function outerSize({ outside, inside, faces }: Booth): Record<'width' | 'depth' | 'height', number> {
  if (outside) return { width: outside.width.value, depth: outside.depth.value, height: outside.height.value };
  const layers = (face: Face): number => {
    const made = faces[face];
    return (made && assemblyThickness(made.assembly.layers)) ?? 0;
  };
  return {
    width: inside.width.value + layers('left') + layers('right'),
    depth: inside.depth.value + layers('front') + layers('back'),
    height: inside.height.value + layers('roof') + layers('floor'),
  };
}
