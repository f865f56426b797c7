import type { BoothResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../numbers/format-number.js';
import { formatQuantity } from '../numbers/format-quantity.js';
import { forceText, springText, thicknessText } from '../numbers/trade-units.js';
import { escapeMarkdown, paragraphs } from './markdown.js';

/** What springs under the booth are worth with the mass that stands on them. Undefined without springs. */
export function mountsHover(boothName: string, { noise, build }: BoothResult): string | undefined {
  const { mounts } = noise;
  if (mounts === null) return undefined;
  const { perMountN } = build.structure;
  return paragraphs(
    `**Helps above ${formatNumber(mounts.gainsAboveHz)} Hz**: ${escapeMarkdown(boothName)} swings on them at ${formatFigures(mounts.naturalHz, 2)} Hz`,
    `${mounts.count} springs of ${springText(mounts.stiffnessNPerM)} under ${formatQuantity(mounts.loadedMassKg, 'kg')} give way by ${thicknessText(mounts.deflectionM, 2)}${
      perMountN === null ? '' : `, ${forceText(perMountN)} on each`
    }`,
    escapeMarkdown(mounts.text),
  );
}
