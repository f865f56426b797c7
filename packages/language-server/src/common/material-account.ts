import type { Material, Sourced } from '@boothwright/language';
import { escapeMarkdown, evidenceText, tradeForm } from '@boothwright/presentation';

type TradeDimension = Parameters<typeof tradeForm>[1];

/** Every figure of a material with what it rests on, as a list: the panel beside a completion list is narrow. */
export function materialAccount(material: Material): string {
  const figures: readonly [string, Sourced<number> | undefined, TradeDimension][] = [
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
  ];
  const lines = figures.flatMap(([label, figure, dimension]) =>
    figure === undefined ? [] : [`- ${label} **${tradeForm(figure, dimension)}**${backing(figure)}`],
  );
  const source = material.source === undefined ? '' : `\n\nSource: ${escapeMarkdown(material.source.value)}`;
  return `${escapeMarkdown(material.title ?? material.name)}\n\n${lines.join('\n')}${source}`;
}

function backing({ origin }: Sourced<number>): string {
  return origin.kind === 'given' ? '' : ` (${evidenceText(origin.evidence)})`;
}
