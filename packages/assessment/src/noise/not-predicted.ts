import type { Site } from '@boothwright/language';
import type { BoothResult } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';

/** Sources that are named but not predicted, each with what can be done about it. */
export function notPredicted(site: Site | undefined): BoothResult['noise']['notPredicted'] {
  return (site?.sources ?? []).flatMap((source) =>
    source.kind === 'impact'
      ? [
          {
            name: source.name,
            range: textRange(source.range),
            why: 'arrives through the floor and the structure, which is not predicted; record it at the place of the booth with the microphone on the floor, stand the booth on soft pads, keep it clear of walls, and measure again inside before you trust the quiet',
          },
        ]
      : [],
  );
}
