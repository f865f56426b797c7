import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { totalsText } from '../numbers/level-words.js';
import { escapeMarkdown, paragraphs } from './markdown.js';

/** What a machine inside is heard as at the microphone. Undefined when it is not known to make a sound. */
export function equipmentHover(name: string, booth: BoothResult): string | undefined {
  const found = booth.noise.equipment.find((each) => each.name === name);
  if (found === undefined) {
    const missing = booth.noise.notPredicted.find((each) => each.name === name);
    return missing && paragraphs(`**${escapeMarkdown(name)}** not predicted`, escapeMarkdown(missing.why));
  }
  const where =
    found.distanceM === null
      ? 'anywhere inside, away from it'
      : `at the microphone, ${formatNumber(found.distanceM, 2)} m away`;
  return paragraphs(`**${escapeMarkdown(name)}** ${where}: ${totalsText(found.atMicrophone)}`);
}
