import type { BoothResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../numbers/format-number.js';
import { formatQuantity } from '../numbers/format-quantity.js';
import { escapeMarkdown, paragraphs } from './markdown.js';

/** What springs under the booth are worth with the mass that stands on them. Undefined without springs. */
export function mountsHover(boothName: string, { noise, build }: BoothResult): string | undefined {
  const { mounts } = noise;
  if (mounts === null) return undefined;
  const { perMountN } = build.structure;
  return paragraphs(
    `**Helps above ${formatNumber(mounts.gainsAboveHz)} Hz**: ${escapeMarkdown(boothName)} swings on them at ${formatFigures(mounts.naturalHz, 2)} Hz`,
    `${mounts.count} springs of ${formatFigures(mounts.stiffnessNPerM / 1000)} N/mm under ${formatQuantity(mounts.loadedMassKg, 'kg')} give way by ${formatFigures(mounts.deflectionM * 1000, 2)} mm${
      perMountN === null ? '' : `, ${formatNumber(perMountN / 1000, 2)} kN on each`
    }`,
    escapeMarkdown(mounts.text),
  );
}
