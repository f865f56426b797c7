import { section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/** What the short report leaves for the full one. */
export function moreSection(style: TextStyle): string | undefined {
  if (style.detail === 'full') return undefined;
  return section(
    'More',
    wrapText(
      '`--full` adds build-ups and bands, every path, the reasons and sources of findings and cautions, and what each assumption rests on; `--format json` holds every figure.',
      style.width,
      '  ',
      '  ',
    ),
    style,
  );
}
