import { askedSection } from './sections/asked.js';
import { lossSection } from './sections/loss.js';
import type { SheetInput } from './sheet-input.js';
import type { SheetSection } from './sheet-section.js';

/** From what is asked for down to what is bought. */
const sections: readonly ((input: SheetInput) => SheetSection | undefined)[] = [askedSection, lossSection];

/** The folds of the sheet, in order. */
export function sheetOf(input: SheetInput): readonly SheetSection[] {
  return sections.flatMap((section) => section(input) ?? []);
}
