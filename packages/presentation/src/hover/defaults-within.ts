import type { DefaultUsed, TextRange } from '@boothwright/assessment';
import { defaultText } from '../numbers/default-text.js';
import { evidenceText } from './evidence-text.js';
import { bullets, code, escapeMarkdown } from './markdown.js';

/** The defaults that stand in a stretch of text. */
export function defaultsWithin(defaults: readonly DefaultUsed[], range: TextRange): readonly DefaultUsed[] {
  return defaults.filter(
    (used) => used.range.file === range.file && used.range.from >= range.from && used.range.to <= range.to,
  );
}

/** One line per default: what was assumed, its value, what it rests on. */
export function defaultLines(defaults: readonly DefaultUsed[]): string {
  return bullets(
    defaults.map(
      (used) =>
        `${code(used.name)} ${escapeMarkdown(defaultText(used))} (${evidenceText(used.evidence)}: ${escapeMarkdown(used.source)})`,
    ),
  );
}
