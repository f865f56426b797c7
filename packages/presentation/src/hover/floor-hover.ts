import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { formatQuantity } from '../numbers/format-quantity.js';
import { isImperial } from '../numbers/shown.js';
import { areaText, imperialPer, roomLengthText } from '../numbers/trade-units.js';
import { bullets, escapeMarkdown, paragraphs, table } from './markdown.js';

/** What the booth weighs and how it presses on the floor. Nothing here is a check of a floor. */
export function floorHover(boothName: string, { build }: BoothResult): string {
  const { structure } = build;
  const knowsJoists = structure.lineLoads.some(({ joists }) => joists !== null);
  return paragraphs(
    `**${formatQuantity(build.floorLoadPa, 'Pa')}** over ${areaText(build.footprintM2)} under ${escapeMarkdown(boothName)}: ${formatQuantity(build.loadedMassKg, 'kg')} in use`,
    escapeMarkdown(structure.words),
    structure.joistWords && escapeMarkdown(structure.joistWords),
    table(
      ['often quoted for', isImperial() ? 'lb/ft²' : 'kPa', 'the booth is'],
      structure.beside.map(({ name, pa, ratio }) => [
        escapeMarkdown(name),
        isImperial() ? formatNumber(pa * imperialPer.psf) : formatNumber(pa / 1000, 2),
        `${formatNumber(ratio, 1)} times that`,
      ]),
    ),
    structure.lineLoads.length > 0 &&
      table(
        ['under the wall', 'long', 'carries', isImperial() ? 'lb/ft' : 'kN/m', ...(knowsJoists ? ['joists run'] : [])],
        structure.lineLoads.map(({ face, lengthM, massKg, nPerM, joists }) => [
          face,
          roomLengthText(lengthM),
          formatQuantity(massKg, 'kg'),
          isImperial() ? formatNumber(nPerM * imperialPer.poundsForcePerFoot) : formatNumber(nPerM / 1000, 2),
          ...(knowsJoists ? [joists ?? '–'] : []),
        ]),
      ),
    structure.notCounted.length > 0 && 'Not counted:',
    bullets(structure.notCounted.map(escapeMarkdown)),
  );
}

/** What the booth weighs, part by part, the heaviest first. */
export function massHover(boothName: string, { build }: BoothResult): string {
  const parts = build.massByPart.filter(({ kg }) => kg > 0).toSorted((a, b) => b.kg - a.kg);
  return paragraphs(
    `**${formatQuantity(build.massKg, 'kg')} empty**, ${formatQuantity(build.loadedMassKg, 'kg')} in use: ${escapeMarkdown(boothName)}`,
    table(
      ['part', 'mass'],
      parts.map(({ part, kg }) => [escapeMarkdown(part), formatQuantity(kg, 'kg')]),
    ),
  );
}
