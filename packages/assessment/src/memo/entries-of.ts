import type { BoothSpec } from '@boothwright/language';

/** What one build-up leaves in the memory: its curves with and without tolerances, and its absorption. */
const perAssembly = 2;
/** What one booth leaves: its parts, sheets, modes, air and the fixes that are tried; of a booth with all kinds of them. */
const perBooth = 120;
/** An edit back finds what was there before, and another text that is open its own. */
const texts = 2;

/** How many entries the memory should hold for a spec with its variants. */
export function entriesOf({ assemblies, booths, variants }: BoothSpec): number {
  return texts * (assemblies.size * perAssembly + booths.length * perBooth) * (1 + variants.length);
}
