import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { totalsText } from '../numbers/level-words.js';
import { escapeMarkdown, paragraphs } from './markdown.js';
import { reflectionHover } from './mouth-hover.js';

/** What a thing inside does to the recording: what it is heard as, what it sends back. Undefined when it does neither. */
export function equipmentHover(name: string, booth: BoothResult, title = name): string | undefined {
  const sound = soundOf(name, booth);
  const reflection = reflectionHover(name, booth, title);
  if (sound === undefined && reflection === undefined && booth.reflections === null) return undefined;
  return paragraphs(
    sound ?? `**${escapeMarkdown(title)}**`,
    reflection ??
      (booth.reflections &&
        'No early reflection of it reaches the mic: it has no size, or does not stand where a mirror would have to'),
  );
}

function soundOf(name: string, booth: BoothResult): string | undefined {
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
