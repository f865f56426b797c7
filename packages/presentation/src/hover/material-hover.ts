import type { Material, Sourced } from '@boothwright/language';
import { bandName } from '../numbers/format-frequency.js';
import { formatFigures, formatNumber } from '../numbers/format-number.js';
import { materialFigures } from '../numbers/material-figures.js';
import { backing, originText } from './evidence-text.js';
import { escapeMarkdown, paragraphs, textTable } from './markdown.js';

const kinds: Readonly<Record<Material['kind'], string>> = {
  panel: 'stiff board',
  limp: 'sheet without stiffness',
  porous: 'porous filling or lining',
  cloth: 'thin permeable sheet',
  covering: 'floor covering or mat',
  lumber: 'frame stock',
};

/** Every figure of a material in the trade's units, with where it comes from and how strongly it is backed. */
export function materialHover(material: Material): string {
  const figures: [string, Sourced<unknown> | undefined, string][] = [
    ...materialFigures(material).map(({ label, figure, text }): [string, Sourced<unknown>, string] => [
      label,
      figure,
      text,
    ]),
    ['absorption', material.absorption, absorptionText(material)],
    ['price', material.price, priceText(material)],
    ['fire class', material.fireClass, material.fireClass?.value ?? ''],
  ];
  const rows = figures.flatMap(([label, value, text]) => {
    if (!value) return [];
    const { evidence, source } = backing(value.origin, material.source);
    return [[label, escapeMarkdown(text), originText(value.origin), evidence, escapeMarkdown(source)]];
  });
  return paragraphs(
    `**${escapeMarkdown(material.name)}**${material.title ? ` ${escapeMarkdown(material.title)}` : ''} (${kinds[material.kind]})`,
    rows.length > 0 && textTable(['figure', 'value', 'origin', 'backing', 'source'], rows),
    material.source && `Source of the material: ${escapeMarkdown(material.source.value)}`,
  );
}

function absorptionText(material: Material): string {
  const table = material.absorption?.value;
  return table ? table.values.map(({ hz, value }) => `${bandName(hz)} ${formatNumber(value, 2)}`).join(', ') : '';
}

function priceText(material: Material): string {
  const price = material.price?.value;
  if (!price) return '';
  return `${formatFigures(price.amount, 4)} ${price.currency}${price.per ? ` per ${price.per}` : ''}`;
}
