import type { Layer } from '@boothwright/acoustics';
import { figureOf, type OpenData } from './open-data.js';

/** Makes layers of the materials of the catalogue and of shared/open-data/test-wall-materials.json, by name. */
export interface Materials {
  /** A plate of a thickness in mm. A surface mass that the source prints, kg/m2, takes the place of the density. */
  readonly plate: (material: string, millimetres: number, surfaceMass?: number) => Layer;
  /** A board of wood with its grain. */
  readonly grained: (material: string, millimetres: number, surfaceMass?: number) => Layer;
  /** A steel sheet with a damping layer of this mass in all. */
  readonly dampedSteel: (millimetres: number, surfaceMass: number) => Layer;
  readonly fibre: (material: string, millimetres: number) => Layer;
}

/** See `Materials`. */
export function materialsOf({ catalogue, testWallMaterials }: OpenData): Materials {
  const plateOf = (rows: OpenData['catalogue'], name: string, millimetres: number, surfaceMass?: number) => {
    const thickness = millimetres / 1000;
    return {
      kind: 'plate',
      thickness,
      density: surfaceMass === undefined ? figureOf(rows, name, 'density') : surfaceMass / thickness,
      youngsModulus: figureOf(rows, name, 'modulus'),
      poissonRatio: figureOf(rows, name, 'poisson'),
      lossFactor: figureOf(rows, name, 'lossFactor'),
    } as const;
  };
  const plate: Materials['plate'] = (name, millimetres, mass) => plateOf(catalogue, name, millimetres, mass);
  return {
    plate,
    grained: (name, millimetres, mass) => {
      const board = plateOf(catalogue, name, millimetres, mass);
      return {
        ...board,
        crossModulus: board.youngsModulus * figureOf(testWallMaterials, name, 'crossModulusRatio'),
        shearModulus: board.youngsModulus * figureOf(testWallMaterials, name, 'shearModulusRatio'),
      };
    },
    dampedSteel: (millimetres, mass) => ({
      ...plateOf(catalogue, 'steel-sheet', millimetres, mass),
      lossFactor: figureOf(testWallMaterials, 'damped-steel', 'lossFactor'),
    }),
    fibre: (name, millimetres) => ({
      kind: 'porous',
      thickness: millimetres / 1000,
      flowResistivity: figureOf(catalogue, name, 'resistivity'),
      density: figureOf(catalogue, name, 'density'),
    }),
  };
}
