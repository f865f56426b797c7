import type { Report } from './blocks.js';
import { noFigures } from './figures.js';
import type { ReportInput } from './report-input.js';
import { assumptionsSection } from './sections/assumptions.js';
import { behindSection } from './sections/behind.js';
import { cautionsSection } from './sections/cautions.js';
import { cuttingSection } from './sections/cutting.js';
import { drawingsSection } from './sections/drawings.js';
import { figuresSection } from './sections/figures.js';
import { frontBlocks } from './sections/front.js';
import { landlordSection } from './sections/landlord.js';
import { leavesOutSection } from './sections/leaves-out.js';
import { movingSection } from './sections/moving.js';
import { shoppingSection } from './sections/shopping.js';
import { variantsSection } from './sections/variants.js';
import { verdictSection } from './sections/verdict.js';

/** The whole report as blocks: same text, same report. */
export function reportOf(input: ReportInput): Report {
  const { result, variant } = input;
  const titles = Object.entries(result.booths).map(([name, { title }]) => title ?? name);
  const figures = noFigures();
  const sections = [
    verdictSection(input),
    behindSection(input, figures),
    landlordSection(input),
    drawingsSection(input, figures),
    shoppingSection(input),
    cuttingSection(input),
    movingSection(input),
    cautionsSection(input),
    assumptionsSection(input),
    leavesOutSection(input),
    variantsSection(input),
    figuresSection(figures),
  ];
  return {
    title: titles.length > 0 ? titles.join(' and ') : result.file,
    subtitle: [`Prediction from ${result.file}`, ...(variant === undefined ? [] : [`variant ${variant}`])].join(', '),
    front: frontBlocks(input),
    sections: sections.filter((section) => section !== undefined && section.blocks.length > 0) as Report['sections'],
  };
}
