import { airSection } from './sections/air.js';
import { askedSection } from './sections/asked.js';
import { decaySection } from './sections/decay.js';
import { lossSection } from './sections/loss.js';
import { massSection } from './sections/mass.js';
import { modesSection } from './sections/modes.js';
import { noiseSection } from './sections/noise.js';
import { sinceSection } from './sections/since.js';
import { waysSection } from './sections/ways.js';
import type { SheetInput } from './sheet-input.js';
import type { SheetSection } from './sheet-section.js';

/** From what is asked for down to what is bought. */
const sections: readonly ((input: SheetInput) => SheetSection | undefined)[] = [
  askedSection,
  ({ comparison }) => comparison && sinceSection(comparison),
  lossSection,
  waysSection,
  noiseSection,
  decaySection,
  modesSection,
  airSection,
  massSection,
];

/** The folds of the sheet, in order. */
export function sheetOf(input: SheetInput): readonly SheetSection[] {
  return sections.flatMap((section) => section(input) ?? []);
}
