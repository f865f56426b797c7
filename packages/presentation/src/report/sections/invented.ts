import { type Block, blocks, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';
import { ownSources } from './materials-used.js';

/** Words by which a text says that its figures are made up. */
const inventedWords = /\b(invented|fictitious|made[- ]up|demo data)\b/i;

/**
 * Marks a report of data that the text itself calls invented: in the comment at its head, or in the source of a material.
 * The words are those of the text, so that nobody takes a demonstration for a survey.
 */
export function inventedNotice({ spec, texts, result }: ReportInput): Block | undefined {
  const comment = leadComment(texts.get(result.file) ?? '');
  const said = comment.filter((line) => inventedWords.test(line));
  const sources = ownSources(spec).filter(({ source }) => inventedWords.test(source));
  if (said.length + sources.length === 0) return undefined;
  return {
    kind: 'notice',
    tone: 'care',
    title: 'Demo data: the text says that figures in it are invented',
    blocks: blocks(
      said.length > 0 && text(`In its head: ${said.join(' ')}`),
      sources.length > 0 &&
        text(`Source of a material: ${sources.map(({ name, source }) => `${name}, “${source}”`).join('; ')}.`),
    ),
  };
}

/** The comments before the first line that says something. */
function leadComment(source: string): string[] {
  const lines: string[] = [];
  for (const line of source.split(/\r\n|\n|\r/)) {
    const trimmed = line.trim();
    if (trimmed === '') continue;
    if (!trimmed.startsWith('#')) break;
    lines.push(trimmed.replace(/^#+\s*/, ''));
  }
  return lines;
}
