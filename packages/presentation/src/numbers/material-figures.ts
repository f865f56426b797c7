import type { Material, Sourced } from '@boothwright/language';
import { tradeForm } from './trade-form.js';

export interface MaterialFigure {
  readonly label: string;
  readonly figure: Sourced<number>;
  /** In the unit of the trade. */
  readonly text: string;
}

/** Every single number of a material that is known, in the order in which it is told everywhere. */
export function materialFigures(material: Material): MaterialFigure[] {
  const all = [
    ['density', material.density, 'density'],
    ['mass per area', material.surfaceMass, 'surface-mass'],
    ['thickness', material.thickness, 'length'],
    ['modulus', material.modulus, 'modulus'],
    ['modulus across the grain', material.modulusAcross, 'modulus'],
    ['shear modulus', material.shearModulus, 'modulus'],
    ['Poisson ratio', material.poisson, 'ratio'],
    ['loss factor', material.lossFactor, 'ratio'],
    ['flow resistivity', material.resistivity, 'resistivity'],
    ['flow resistance', material.flowResistance, 'flow-resistance'],
    ['gauge', material.gauge, 'length'],
    ['stiffness of a stud', material.studStiffness, 'stud-stiffness'],
  ] as const;
  return all.flatMap(([label, figure, dimension]) =>
    figure === undefined ? [] : [{ label, figure, text: tradeForm(figure, dimension) }],
  );
}
