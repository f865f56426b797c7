import type { Material, Sourced } from '@boothwright/language';

type Figure = Sourced<number> | undefined;

/** The figures of a material as a reader would write them, with what backs each. */
function figures(material: Material): readonly { readonly name: string; readonly text: string; readonly of: string }[] {
  const number = (
    name: string,
    figure: Figure,
    scale: number,
    unit: string,
  ): { name: string; text: string; of: string }[] =>
    figure
      ? [{ name, text: `${name} ${rounded(figure.value / scale)}${unit && ` ${unit}`}`, of: evidence(figure) }]
      : [];
  const { absorption } = material;
  return [
    ...number('density', material.density, 1, 'kg/m3'),
    ...number('surface-mass', material.surfaceMass, 1, 'kg/m2'),
    ...number('thickness', material.thickness, 0.001, 'mm'),
    ...number('modulus', material.modulus, 1e9, 'GPa'),
    ...number('modulus-across', material.modulusAcross, 1e9, 'GPa'),
    ...number('shear-modulus', material.shearModulus, 1e9, 'GPa'),
    ...number('poisson', material.poisson, 1, ''),
    ...number('loss-factor', material.lossFactor, 1, ''),
    ...number('resistivity', material.resistivity, 1000, 'kPa.s/m2'),
    ...number('flow-resistance', material.flowResistance, 1, 'Pa.s/m'),
    ...number('gauge', material.gauge, 0.001, 'mm'),
    ...(absorption ? [{ name: 'absorption', text: 'absorption by octaves', of: evidence(absorption) }] : []),
  ];
}

function rounded(value: number): string {
  return `${Number(value.toPrecision(6))}`;
}

function evidence({ origin }: Sourced<unknown>): string {
  return origin.kind === 'catalogue' ? origin.evidence : origin.kind;
}

/** `published`, or each figure by name where they are backed in different ways. */
function backing(material: Material): string {
  const groups = new Map<string, string[]>();
  for (const { name, of } of figures(material)) groups.set(of, [...(groups.get(of) ?? []), name]);
  if (groups.size === 1) return [...groups.keys()][0]!;
  return [...groups].map(([kind, names]) => `${names.join(', ')}: ${kind}`).join('; ');
}

/** The catalogue as the language reference lists it. */
export function catalogueTable(materials: readonly Material[]): string {
  const rows = materials.map(
    (material) =>
      `| \`${material.name}\` | ${material.title ?? ''} | ${material.kind} | ${figures(material)
        .map(({ text }) => text)
        .join(', ')} | ${backing(material)} |`,
  );
  return ['| Material | What it is | Kind | Figures | Evidence |', '| --- | --- | --- | --- | --- |', ...rows].join(
    '\n',
  );
}
