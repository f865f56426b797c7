import type { Material, Sourced } from '@boothwright/language';
import { escapeMarkdown, evidenceText, materialFigures } from '@boothwright/presentation';

/** Every figure of a material with what it rests on, as a list: the panel beside a completion list is narrow. */
export function materialAccount(material: Material): string {
  const lines = materialFigures(material).map(({ label, figure, text }) => `- ${label} **${text}**${backing(figure)}`);
  const source = material.source === undefined ? '' : `\n\nSource: ${escapeMarkdown(material.source.value)}`;
  return `${escapeMarkdown(material.title ?? material.name)}\n\n${lines.join('\n')}${source}`;
}

function backing({ origin }: Sourced<number>): string {
  return origin.kind === 'given' ? '' : ` (${evidenceText(origin.evidence)})`;
}
