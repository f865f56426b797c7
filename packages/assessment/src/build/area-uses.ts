import type { AssemblyLayer, Booth, Face, Material } from '@boothwright/language';
import { netFaceArea } from '../booth/face-areas.js';
import { faceNames, insideSize, outsideSize, type Size } from '../booth/geometry.js';

/** A material that is known by its area or run and not by pieces. */
export interface AreaUse {
  readonly owner: string;
  readonly material: Material;
  readonly form: 'sheet' | 'stick' | 'soft';
  /** m2; of sticks m */
  readonly amount: number;
  /** m; of sticks the depth of their section */
  readonly thicknessM: number | undefined;
  /** m; of sticks the width of their section, otherwise zero */
  readonly widthM: number;
  readonly massKg: number | null;
}

/** Area halfway between the inside and the outside box, as for the mass by part. */
export function middleSize(booth: Booth): Size {
  const outside = outsideSize(booth);
  return insideSize(booth).map((length, axis) => (length + (outside[axis] as number)) / 2) as unknown as Size;
}

/** Faces as a whole, for a booth whose text does not cut them into panels. */
export function faceUses(booth: Booth): AreaUse[] {
  const middle = middleSize(booth);
  return faceNames.flatMap((face) =>
    usesOf(face, booth.faces[face]?.assembly.layers ?? [], netFaceArea(booth, face, middle)),
  );
}

/** Linings of every face: they are cut to fit in place. */
export function liningUses(booth: Booth): AreaUse[] {
  return faceNames.flatMap((face) => faceLiningUses(booth, face));
}

function faceLiningUses(booth: Booth, face: Face): AreaUse[] {
  const linings = booth.linings.filter((lining) => lining.faces.includes(face));
  const covered = linings.reduce((sum, lining) => sum + lining.cover.value, 0);
  const scale = covered > 1 ? 1 / covered : 1;
  return linings.flatMap((lining) =>
    usesOf(`lining on ${face}`, lining.layers, netFaceArea(booth, face) * lining.cover.value * scale),
  );
}

/** What an area of layers is made of, without air. */
export function usesOf(owner: string, layers: readonly AssemblyLayer[], area: number): AreaUse[] {
  if (area <= 0) return [];
  return layers.flatMap((layer): AreaUse[] => {
    if (layer.kind === 'air') return [];
    if (layer.kind === 'frame') {
      const metres = area / layer.spacing.value;
      const density = layer.lumber.density?.value;
      const section = layer.width.value * layer.depth.value;
      const studs: AreaUse = {
        owner,
        material: layer.lumber,
        form: 'stick',
        amount: metres,
        thicknessM: layer.depth.value,
        widthM: layer.width.value,
        massKg: density === undefined ? null : density * section * metres,
      };
      return [studs, ...(layer.fill === undefined ? [] : usesOf(owner, [layer.fill], area))];
    }
    const { material, thickness, surfaceMass } = layer;
    if (thickness?.value === 0) return [];
    return [
      {
        owner,
        material,
        form: isSoft(material) ? 'soft' : 'sheet',
        amount: area,
        thicknessM: thickness?.value ?? material.thickness?.value,
        widthM: 0,
        massKg: surfaceMass.value * area,
      },
    ];
  });
}

/**
 * Whether it is bought by the square metre and cut with a knife: fibre, cloth, coverings, limp mats and timber laid flat,
 * unless the text says in what sheets it is sold.
 */
export function isSoft(material: Material): boolean {
  return material.kind !== 'panel' && material.sheet === undefined;
}
